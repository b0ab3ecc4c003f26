import type { Plan } from "../../app/index.ts";
import { dayFromIso, sayProblem } from "../../base/index.ts";
import type { Engine } from "../edge/engine.ts";
import { writeSegment } from "../links/segment.ts";
import { storeLine } from "../store/diary.ts";
import { storeFormerTasks } from "../store/events.ts";
import { restoreRevisions } from "../store/feeds.ts";
import { clearForRestoring, isGone } from "../store/leaving.ts";
import { storeRevoked } from "../store/links.ts";
import { insertVersion } from "../store/plans.ts";
import { gardenRecord, storeGardenRecord } from "../store/record.ts";
import type { SqlStore } from "../store/sql.ts";
import { storeTasks } from "../store/tasks.ts";
import { storeWeather } from "../store/weather.ts";
import type { ArchivedGarden, ArchivedVersion } from "./read-archive.ts";
import type { Snapshot } from "./snapshot.ts";

/** Where an archive goes: the garden's id here, the address it came to, the instant [ms since 1970 UTC] and the code that reads it. */
export type RestoreTarget = {
  readonly garden: string;
  readonly origin: string;
  readonly now: number;
  readonly code: string;
  /** Whether it may take the place of a garden that is there. */
  readonly over: boolean;
};

/** The plans of an archive as they are read now, by year; or the problems that keep them from being read, each with its place. */
export type ArchivedPlans =
  | { readonly plans: ReadonlyMap<number, Plan>; readonly problems: null }
  | { readonly plans: null; readonly problems: readonly string[] };

/** Reads the newest version of each year of an archive. */
export function readPlans(
  { versions }: ArchivedGarden,
  garden: string,
  { checkPlan }: Pick<Engine, "checkPlan">,
): ArchivedPlans {
  const plans = new Map<number, Plan>();
  const problems: string[] = [];
  for (const { year, text, file, beside } of newestOf(versions)) {
    const read = checkPlan({ text, garden, file, beside }, [...plans.values()], []);
    const wrong = read.problems.filter(({ weight }) => weight === "problem").map(sayProblem);
    if (read.plan?.year === year && wrong.length === 0) plans.set(year, read.plan);
    else problems.push(...(wrong.length > 0 ? wrong : [`${file}:1:1: it is no plan for ${year}.`]));
  }
  return problems.length > 0 ? { plans: null, problems } : { plans, problems: null };
}

function newestOf(versions: readonly ArchivedVersion[]): readonly ArchivedVersion[] {
  return [...new Map(versions.map((version) => [version.year, version])).values()];
}

/**
 * Makes the garden anew from an archive, whole or not at all. It tells the same events: how tasks were published is kept, UIDs are made
 * from the id they were made from before, and whatever a feed tells next counts as newer than all it told. Under its own id links that were
 * revoked stay so; under another all links are new. In place of a garden that is there, that one's links stay as they are. Says
 * what kept it from being stored: a garden that is there, or that was deleted for good under that id; null: it is stored.
 */
export function restoreGarden(
  sql: SqlStore,
  { snapshot, versions }: ArchivedGarden,
  { plans, target }: { readonly plans: PlansByYear; readonly target: RestoreTarget },
): "gone" | "not empty" | null {
  return sql.transaction(() => {
    if (isGone(sql)) return "gone";
    const stood = gardenRecord(sql) !== null;
    if (stood && !target.over) return "not empty";
    if (stood) clearForRestoring(sql);
    storeRecord(sql, snapshot, target);
    const newest = new Set(newestOf(versions));
    for (const version of versions)
      storeVersion(sql, version, newest.has(version) ? plans : NONE, target);
    storeSaid(sql, snapshot, target.now);
    if (!stood) storeLinks(sql, snapshot, target);
    storeShown(sql, snapshot, target.now);
    return null;
  });
}

/** What is changed now is the newest reason for a change, whenever the plans were saved. */
function storeRecord(sql: SqlStore, snapshot: Snapshot, { garden, origin, now }: RestoreTarget) {
  const made = { origin, owner: snapshot.garden === garden ? snapshot.owner : 1 };
  const record = { ...made, ...gardenRecord(sql), id: garden, uids: snapshot.uids };
  storeGardenRecord(sql, record, now);
  sql.rows("UPDATE garden SET changed_at = ?1", now);
}

type PlansByYear = ReadonlyMap<number, Plan>;

const NONE: PlansByYear = new Map();

function storeVersion(
  sql: SqlStore,
  version: ArchivedVersion,
  plans: PlansByYear,
  { code, now }: RestoreTarget,
): void {
  const plan = plans.get(version.year) ?? null;
  const savedAt = Math.min(version.savedAt, now);
  insertVersion(sql, { ...version, savedAt, plan, readBy: code });
}

function storeSaid(sql: SqlStore, { diary, takenBack, people }: Snapshot, now: number): void {
  for (const { day: iso, ...line } of diary) {
    const day = dayFromIso(iso);
    if (day !== null) storeLine(sql, { ...line, day, saidAt: Math.min(line.saidAt, now) });
  }
  for (const { person, first, last, at } of takenBack)
    sql.rows(
      "INSERT INTO taken_back (person, first, last, at) VALUES (?1, ?2, ?3, ?4)",
      ...[person, first, last, Math.min(at, now)],
    );
  for (const key of people)
    sql.rows("INSERT INTO people (key) VALUES (?1) ON CONFLICT DO NOTHING", key);
}

function storeLinks(sql: SqlStore, { revoked, garden }: Snapshot, target: RestoreTarget): void {
  if (garden !== target.garden) return;
  for (const { at, ...link } of revoked) storeRevoked(sql, writeSegment(link), at);
}

/** What calendars were last told, and what was known of the weather. */
function storeShown(sql: SqlStore, { tasks, former, feeds, weather }: Snapshot, now: number): void {
  const rest = { event: null, card: null, baseline: null };
  storeTasks(
    sql,
    Object.entries(tasks).map(([id, published]) => ({ id, published, ...rest })),
  );
  storeFormerTasks(sql, former);
  for (const { feed, lastModified, events, ...link } of feeds)
    restoreRevisions(sql, { link: writeSegment(link), feed }, { lastModified, events });
  if (weather) {
    const record = { cell: weather.cell, fetchedAt: null, nextAt: 0, fault: null };
    storeWeather(sql, record, { weather: weather.known, now });
  }
}
