import type { Baseline, Garden } from "../../app/build.ts";
import type { PublishedState } from "../../engine/schedule/scheduled-task.ts";
import type { Event } from "../../views/events/event.ts";
import { type FormerTasks, updateFormerTasks } from "../../views/events/former-tasks.ts";
import { parseStoredJson } from "./bytes.ts";
import { type DiaryRow, diaryLines, lineOf, type StoredLine, withDiary } from "./diary.ts";
import { type PlanRow, planOf, plansInForce, type SavedPlan } from "./plans.ts";

/** What something was made from: the garden's revision, the code, and the instant [ms] its horizon ends. */
export type MadeFrom = { readonly revision: number; readonly code: string; readonly until: number };

/**
 * A garden's record with its plans in force, in year order. `revision` rises with every change of plans or diary,
 * `changedAt` [ms since 1970 UTC] is the newest of them; `standing` is what each task was last told as; `told` are
 * the events last made, as JSON, null where none ever were; `usual` is null where it was never
 * reckoned from the plans now in force. Of what was reckoned, what can't be read counts as never kept.
 */
export type StoredGarden = {
  readonly id: string;
  readonly revision: number;
  readonly changedAt: number;
  readonly origin: string;
  readonly standing: PublishedState;
  readonly standingVersion: number;
  readonly usual: Baseline | null;
  /** The serial that opens as the owner, and the one shown to take its place; null: none was. */
  readonly owner: number;
  readonly ownerNext: number | null;
  readonly schedule: (MadeFrom & { readonly events: string }) | null;
  /** What events were told with before. */
  readonly before: FormerTasks;
  readonly plans: readonly SavedPlan[];
  /** What was said over the garden's links, in the order it was said. */
  readonly lines: readonly StoredLine[];
};

type GardenRow = Omit<
  StoredGarden,
  "standing" | "usual" | "told" | "before" | "plans" | "lines"
> & {
  readonly usual: string | null;
  readonly usualOf: string | null;
  readonly standing: string;
  readonly events: string | null;
  readonly before: string | null;
  readonly madeRevision: number;
  readonly madeCode: string;
  readonly madeUntil: number;
};

/** The statements that `gardenFrom` reads, GARDEN_STATEMENTS of them, to be run before others in one look at the store. */
export function gardenStatements(db: D1Database, garden: string): readonly D1PreparedStatement[] {
  const record = db
    .prepare(
      `SELECT id, revision, changed_at AS changedAt, origin, standing, standing_version AS standingVersion,
          usual, usual_of AS usualOf, before, owner, owner_next AS ownerNext,
          events, events_revision AS madeRevision, events_code AS madeCode, events_until AS madeUntil
        FROM gardens WHERE id = ?1`,
    )
    .bind(garden);
  return [record, plansInForce(db, garden), diaryLines(db, garden)];
}

/** How many statements a garden's record takes; the results of others stand behind theirs. */
export const GARDEN_STATEMENTS = 3;

/** The garden from those statements' results; null where there is none, or it has no plan. */
export function gardenFrom(results: readonly D1Result<unknown>[]): StoredGarden | null {
  const record = results[0]?.results[0] as GardenRow | undefined;
  const rows = (results[1]?.results ?? []) as PlanRow[];
  if (!record || rows.length === 0) return null;
  const {
    events,
    madeRevision,
    madeCode,
    madeUntil,
    standing: publishedState,
    usual: baseline,
    usualOf,
    ...rest
  } = record;
  const plans = rows.map(planOf);
  const holds = baseline !== null && usualOf === readingsOf(plans);
  const made = { revision: madeRevision, code: madeCode, until: madeUntil };
  const schedule = events === null ? null : { ...made, events };
  const lines = ((results[2]?.results ?? []) as DiaryRow[]).map(lineOf);
  const known = {
    standing: parseStoredJson<PublishedState>(publishedState) ?? {},
    usual: holds ? parseStoredJson<Baseline>(baseline) : null,
    before: parseStoredJson<FormerTasks>(rest.before ?? "") ?? {},
  };
  return { ...rest, ...known, schedule, plans, lines };
}

/** Which readings of which plans: what the usual days hang on and nothing else. */
function readingsOf(plans: readonly SavedPlan[]): string {
  return plans.map(({ year, version, readBy }) => `${year}.${version} ${readBy}`).join(", ");
}

/** Keeps the usual days reckoned from the garden's plans; of no account once another plan is in force. */
export async function storeBaseline(
  db: D1Database,
  garden: StoredGarden,
  baseline: Baseline,
): Promise<void> {
  await db
    .prepare("UPDATE gardens SET usual = ?2, usual_of = ?3 WHERE id = ?1")
    .bind(garden.id, JSON.stringify(baseline), readingsOf(garden.plans))
    .run();
}

/** The garden as the core takes it, its diary that of its plans and what was said over its links. */
export function gardenIn({ id, plans, usual: baseline, lines }: StoredGarden): Garden {
  const known = plans.map(({ plan }) => plan);
  const garden = { id, plans: withDiary(known, lines) };
  return baseline === null ? garden : { ...garden, baseline: baseline };
}

/** The garden's events as they were last told; null where none ever were, or they can't be read. */
export function eventsIn({ schedule }: StoredGarden): readonly Event[] | null {
  return schedule && parseStoredJson<readonly Event[]>(schedule.events);
}

/** The zone of the newest plan, by which a garden's days turn. */
export function zoneOf({ plans }: StoredGarden): string {
  return plans.at(-1)?.plan.site.clock ?? "UTC";
}

/** A garden and every link of it that was revoked, or null where there is no such garden. */
export async function loadStoredGarden(
  db: D1Database,
  garden: string,
): Promise<{ readonly stored: StoredGarden; readonly revoked: readonly string[] } | null> {
  const revoked = db.prepare("SELECT link FROM revoked WHERE garden = ?1").bind(garden);
  const results = await db.batch<unknown>([...gardenStatements(db, garden), revoked]);
  const stored = gardenFrom(results);
  const rows = (results[GARDEN_STATEMENTS]?.results ?? []) as { readonly link: string }[];
  return stored && { stored, revoked: rows.map((row) => row.link) };
}

/** A garden's telling: its events, what each task was told as, the code and horizon it was told by, and when [ms]. */
export type ScheduleToStore = {
  readonly now: number;
  readonly events: readonly Event[];
  readonly publishedState: PublishedState;
  readonly code: string;
  readonly until: number;
};

/**
 * Keeps what was told, events and standing together, and says true; false where plans, diary or standing have changed
 * since the record was read, so that what was told is out of date.
 */
export async function storeSchedule(
  db: D1Database,
  garden: StoredGarden,
  { events, publishedState, code, until, now }: ScheduleToStore,
): Promise<boolean> {
  const text = JSON.stringify(publishedState);
  const raise = text === JSON.stringify(garden.standing) ? 0 : 1;
  const done = await db
    .prepare(
      `UPDATE gardens SET standing = ?2, standing_version = standing_version + ?5,
          events = ?6, events_revision = ?4, events_code = ?7, events_until = ?8, before = ?9
        WHERE id = ?1 AND standing_version = ?3 AND revision = ?4`,
    )
    .bind(
      ...[garden.id, text, garden.standingVersion, garden.revision],
      ...[raise, JSON.stringify(events), code, until],
      JSON.stringify(
        updateFormerTasks(garden.before, { was: eventsIn(garden) ?? [], is: events, now }),
      ),
    )
    .run();
  return done.meta.changes > 0;
}
