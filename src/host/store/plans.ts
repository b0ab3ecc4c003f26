import type { Plan, WeatherService } from "../../app/index.ts";
import { parseStoredJson } from "./bytes.ts";
import { loadText, storeText } from "./pieces.ts";
import { gardenRecord, storeGardenRecord } from "./record.ts";
import { rowSum, seal, storedInstant, unseal } from "./sealed.ts";
import { firstRow, type SqlStore } from "./sql.ts";
import { thinVersions } from "./thinning.ts";

/** The texts of the files a plan names, by the name it gives them (`weather.yaml`). */
export type PlanFileTexts = Readonly<Record<string, string>>;

/** A person or a bed by key and name. */
export type Named = { readonly key: string; readonly name: string };

/** What pages show of a plan without reading it: its names, its clock and its measures. */
export type PlanSummary = {
  readonly name: string;
  readonly clock: string;
  readonly measures: Plan["measures"];
  readonly people: readonly Named[];
  readonly beds: readonly Named[];
  /** Who is asked for this year's weather, and of where [degrees]; null or left out: nobody. */
  readonly forecast?: WeatherAsked | null;
};

/** A service that is asked for the weather, and of where [degrees, south and west negative]. */
export type WeatherAsked = {
  readonly source: WeatherService;
  readonly latitude: number;
  readonly longitude: number;
};

/**
 * One year's plan in force, as pages need it. Versions count from 1. `published` is the print of the file it came from,
 * null where it was written elsewhere; `readBy` is the code that checked it; `savedAt` in ms since 1970 UTC.
 */
export type SavedPlan = {
  readonly year: number;
  readonly version: number;
  readonly file: string;
  readonly summary: PlanSummary;
  readonly readBy: string;
  readonly published: string | null;
  readonly savedAt: number;
};

/** A plan's text as it was saved, with the files beside it; `isWhole` false where their check sum says that they were damaged since. */
export type PlanTexts = {
  readonly text: string;
  readonly beside: PlanFileTexts;
  readonly isWhole?: boolean;
};

type PlanRow = Omit<SavedPlan, "summary"> & { readonly summary: string };

const COLUMNS = "year, version, file, summary, read_by AS readBy, published, saved_at AS savedAt";

/** A plan whose summary can't be read is to be read anew, by whichever code; till then its reading says the same. */
function planOf(sql: SqlStore, row: PlanRow): SavedPlan {
  const savedAt = storedInstant(row.savedAt);
  const summary = unseal<PlanSummary>(row.summary);
  if (summary !== null) return { ...row, savedAt, summary };
  const plan = loadReadPlan(sql, row.year);
  return { ...row, savedAt, summary: plan ? summaryOf(plan) : NO_SUMMARY, readBy: "" };
}

const NO_SUMMARY: PlanSummary = {
  ...{ name: "", clock: "UTC", measures: "metric", people: [], beds: [] },
};

/** The names, clock and measures of a plan, and who is asked for its weather. */
export function summaryOf({ name, site, measures, people, beds }: Plan): PlanSummary {
  const named = (all: readonly Named[]) => all.map(({ key, name }) => ({ key, name }));
  const { clock } = site;
  const names = { name, clock, measures, people: named(people), beds: named(beds) };
  const forecast = askedOf(site);
  return forecast === null ? names : { ...names, forecast };
}

function askedOf({ forecast, latitude, longitude }: Plan["site"]): WeatherAsked | null {
  if (!forecast || latitude === null || longitude === null) return null;
  return { source: forecast, latitude, longitude };
}

/** Every year's plan in force, in year order. However many versions are kept, one row a year is read. */
export function plansInForce(sql: SqlStore): readonly SavedPlan[] {
  return sql
    .rows<PlanRow>(`SELECT ${COLUMNS} FROM in_force ORDER BY year`)
    .map((row) => planOf(sql, row));
}

/** The plan in force for a year, with its texts; null where none was ever saved. */
export function savedPlan(sql: SqlStore, year: number): (SavedPlan & PlanTexts) | null {
  const row = firstRow<PlanRow & TextsRow>(
    sql,
    `SELECT ${COLUMNS}, ${TEXTS} FROM plans WHERE year = ?1 ORDER BY version DESC LIMIT 1`,
    year,
  );
  return row && { ...planOf(sql, row), ...textsOf(row) };
}

const TEXTS = "text, beside, sum";

type TextsRow = Pick<SavedPlan, "year" | "version"> & {
  readonly text: string;
  readonly beside: string;
  readonly sum: number | null;
};

function textsOf(row: TextsRow): PlanTexts {
  const isWhole = row.sum === null || row.sum === textsSum(row);
  return { text: row.text, beside: parseStoredJson(row.beside) ?? {}, isWhole };
}

const textsSum = ({ year, version, text, beside }: Omit<TextsRow, "sum">) =>
  rowSum([year, version, text, beside]);

/** A checked plan to be saved over version `base` (0: there is none yet). */
export type PlanToStore = PlanTexts & {
  readonly garden: string;
  readonly year: number;
  readonly base: number;
  /** Whether it is to be the garden's very first plan, and is not saved where there is any. */
  readonly first: boolean;
  readonly file: string;
  readonly plan: Plan;
  readonly readBy: string;
  readonly published: string | null;
  readonly savedAt: number;
  /** The address it came to. */
  readonly origin: string;
};

/**
 * Saves a plan as the version after `base` and gives that version, or null when another was in force or the garden was
 * deleted for good: then nothing is stored. The garden is made where there is none, so who may make one must be settled
 * before.
 */
export function savePlan(sql: SqlStore, wanted: PlanToStore): number | null {
  return sql.transaction(() => {
    if (!maySave(sql, wanted)) return null;
    const { garden, origin, savedAt, base } = wanted;
    const record = gardenRecord(sql) ?? { id: garden, uids: garden, owner: 1 };
    storeGardenRecord(sql, { ...record, origin }, savedAt);
    insertVersion(sql, { ...wanted, version: base + 1 });
    thinVersions(sql, wanted.year);
    return base + 1;
  });
}

function maySave(sql: SqlStore, { year, base, first }: PlanToStore): boolean {
  type Row = { readonly gone: number; readonly any: number; readonly version: number };
  const row = firstRow<Row>(
    sql,
    `SELECT EXISTS (SELECT 1 FROM gone) AS gone, EXISTS (SELECT 1 FROM plans) AS any,
      (SELECT coalesce(max(version), 0) FROM plans WHERE year = ?1) AS version`,
    year,
  );
  return row !== null && row.gone === 0 && row.version === base && !(first && row.any === 1);
}

/** A version of a year's plan as it is stored; `plan` null where its reading is not at hand. */
export type PlanVersion = PlanTexts &
  Pick<SavedPlan, "year" | "version" | "file" | "readBy" | "published" | "savedAt"> & {
    readonly plan: Plan | null;
  };

/** Stores a version, which then is in force if it is the newest of its year. */
export function insertVersion(sql: SqlStore, saved: PlanVersion): void {
  const { year, version, text, beside, file, plan, readBy, published, savedAt } = saved;
  const summary = seal(plan === null ? null : summaryOf(plan));
  const files = JSON.stringify(beside);
  const sum = textsSum({ year, version, text, beside: files });
  sql.rows(
    `INSERT INTO plans (year, version, text, beside, file, summary, read_by, published, saved_at, sum, place)
      VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)`,
    ...[year, version, text, files, file, summary, readBy, published, savedAt, sum],
    placeOf(saved),
  );
  if (plan) storeReadPlan(sql, year, plan);
}

function storeReadPlan(sql: SqlStore, year: number, plan: Plan): void {
  storeText(sql, readingOf(year), JSON.stringify(plan));
  for (const { key } of plan.people)
    sql.rows("INSERT INTO people (key) VALUES (?1) ON CONFLICT DO NOTHING", key);
}

/** Where a year's plan lies as it was read. */
const readingOf = (year: number) => `reading/${year}`;

/** A year's plan in force as it was read; null where that can't be read, as when it was cut short. */
export function loadReadPlan(sql: SqlStore, year: number): Plan | null {
  const text = loadText(sql, readingOf(year));
  return parseStoredJson(text);
}

/** Puts a newer code's reading of the same text in place of the old. The garden's revision rises. */
export function storeReading(
  sql: SqlStore,
  { year, version }: Pick<SavedPlan, "year" | "version">,
  { plan, readBy }: { readonly plan: Plan; readonly readBy: string },
): void {
  sql.rows(
    "UPDATE plans SET summary = ?3, read_by = ?4 WHERE year = ?1 AND version = ?2",
    ...[year, version, seal(summaryOf(plan)), readBy],
  );
  storeReadPlan(sql, year, plan);
}

/** A version of a year's plan, without its text: its number and when it was saved [ms since 1970 UTC]. */
export type Version = Pick<SavedPlan, "version" | "savedAt">;

/** Every version of a year's plan, newest first. */
export function planVersions(sql: SqlStore, year: number): readonly Version[] {
  return sql
    .rows<Version>(
      "SELECT version, saved_at AS savedAt FROM plans WHERE year = ?1 ORDER BY version DESC",
      year,
    )
    .map(({ version, savedAt }) => ({ version, savedAt: storedInstant(savedAt) }));
}

/** The text of one version and of the files beside it; null where there is no such version. */
export function planVersion(
  sql: SqlStore,
  { year, version }: { readonly year: number; readonly version: number },
): PlanTexts | null {
  const row = firstRow<TextsRow>(
    sql,
    `SELECT year, version, ${TEXTS} FROM plans WHERE year = ?1 AND version = ?2`,
    ...[year, version],
  );
  return row && textsOf(row);
}

/** A version as it was saved, without what was read of it. */
export type SavedVersion = Omit<PlanVersion, "plan" | "readBy" | "isWhole">;

/** Every version of every year's plan with its texts, oldest first. */
export function allVersions(sql: SqlStore): readonly SavedVersion[] {
  type Row = Omit<SavedVersion, "beside"> & { readonly beside: string };
  return sql
    .rows<Row>(
      "SELECT year, version, file, published, saved_at AS savedAt, text, beside FROM plans ORDER BY year, version",
    )
    .map((row) => ({ ...row, beside: parseStoredJson<PlanFileTexts>(row.beside) ?? {} }));
}

/** Every version whose text, or a file beside it, is not what was saved. */
export function damagedVersions(sql: SqlStore): readonly Pick<SavedPlan, "year" | "version">[] {
  return sql
    .rows<TextsRow>(`SELECT year, version, ${TEXTS} FROM plans ORDER BY year, version`)
    .filter((row) => textsOf(row).isWhole === false);
}

/** The newest version of a year before that one whose texts are what was saved; null where there is none. */
export function wholeVersionBefore(
  sql: SqlStore,
  { year, version }: Pick<SavedPlan, "year" | "version">,
): PlanTexts | null {
  const rows = sql.rows<TextsRow>(
    `SELECT year, version, ${TEXTS} FROM plans WHERE year = ?1 AND version < ?2 ORDER BY version DESC`,
    ...[year, version],
  );
  return rows.map(textsOf).find(({ isWhole }) => isWhole) ?? null;
}

/** A version's year and number once more, so that damage to one of them is known and put right. */
const placeOf = ({ year, version }: Pick<SavedPlan, "year" | "version">) => `${year}/${version}`;

/** Puts versions back in their places by their check sums, which say which of the two that are stored is right; gives how many were not. */
export function mendPlaces(sql: SqlStore): number {
  const bad = sql
    .rows<TextsRow & { readonly place: string | null }>(
      `SELECT year, version, place, ${TEXTS} FROM plans WHERE place IS NOT NULL`,
    )
    .filter((row) => row.place !== placeOf(row));
  for (const row of bad) {
    const [year = 0, version = 0] = (row.place ?? "").split("/").map(Number);
    const isRight = row.sum === textsSum({ ...row, year, version });
    const is = "year = ?1 AND version = ?2";
    const isFree = firstRow(sql, `SELECT 1 FROM plans WHERE ${is}`, year, version) === null;
    if (isRight && isFree)
      sql.rows(
        `UPDATE plans SET year = ?3, version = ?4 WHERE ${is}`,
        row.year,
        row.version,
        year,
        version,
      );
    else if (isRight) sql.rows(`DELETE FROM plans WHERE ${is}`, row.year, row.version);
    else sql.rows(`UPDATE plans SET place = ?3 WHERE ${is}`, row.year, row.version, placeOf(row));
  }
  return bad.length;
}

const IN_FORCE = "year, version, file, summary, read_by, published, saved_at";

/** Makes the list of plans in force that of the newest versions again, where it is another; gives how many of its rows were. */
export function mendInForce(sql: SqlStore): number {
  const newest = `SELECT ${IN_FORCE} FROM plans AS p
    WHERE version = (SELECT max(version) FROM plans WHERE year = p.year)`;
  const listed = `SELECT ${IN_FORCE} FROM in_force`;
  const bad = sql.rows(`SELECT year FROM (${newest} EXCEPT ${listed})
    UNION SELECT year FROM (${listed} EXCEPT ${newest})`).length;
  if (bad === 0) return 0;
  sql.rows("DELETE FROM in_force");
  sql.rows(`INSERT INTO in_force (${IN_FORCE}) ${newest}`);
  return bad;
}
