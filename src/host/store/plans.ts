import type { Plan } from "../../garden/model/plan.ts";

/** The texts of the files a plan names, by the name it gives them (`weather.yaml`). */
export type PlanFileTexts = Readonly<Record<string, string>>;

/**
 * One year's plan in force. Versions count from 1. `published` is the print of the file it came from, null where
 * it was written elsewhere; `readBy` is the code that checked it; `savedAt` in ms since 1970 UTC.
 */
export type SavedPlan = {
  readonly year: number;
  readonly version: number;
  readonly text: string;
  readonly beside: PlanFileTexts;
  readonly file: string;
  readonly plan: Plan;
  readonly readBy: string;
  readonly published: string | null;
  readonly savedAt: number;
};

/** A plan as a row of the store: the same, with what is not text as JSON. */
export type PlanRow = Omit<SavedPlan, "beside" | "plan"> & {
  readonly beside: string;
  readonly plan: string;
};

const COLUMNS =
  "year, version, text, beside, file, plan, read_by AS readBy, published, saved_at AS savedAt";

/** The row, read. */
export function planOf(row: PlanRow): SavedPlan {
  return { ...row, beside: JSON.parse(row.beside), plan: JSON.parse(row.plan) };
}

/** The plan in force for a garden's year, or null where none was ever saved. */
export async function savedPlan(
  db: D1Database,
  garden: string,
  year: number,
): Promise<SavedPlan | null> {
  const row = await db
    .prepare(
      `SELECT ${COLUMNS} FROM plans WHERE garden = ?1 AND year = ?2 ORDER BY version DESC LIMIT 1`,
    )
    .bind(garden, year)
    .first<PlanRow>();
  return row && planOf(row);
}

/** Every year's plan in force, in year order; to be run with other statements in one look at the store. */
export function plansInForce(db: D1Database, garden: string): D1PreparedStatement {
  return db
    .prepare(
      `SELECT ${COLUMNS} FROM plans AS p WHERE garden = ?1 AND version =
        (SELECT max(version) FROM plans WHERE garden = p.garden AND year = p.year) ORDER BY year`,
    )
    .bind(garden);
}

/** A plan to be saved over version `base` (0: there is none yet). */
export type Saving = Omit<SavedPlan, "version"> & {
  readonly garden: string;
  readonly base: number;
  /** Whether it is to be the garden's very first plan, and is not saved where there is any. */
  readonly first: boolean;
  /** The address it came to. */
  readonly origin: string;
};

/**
 * Saves a plan as the version after `base` and gives that version, or null when another was in force or the garden was
 * deleted for good: then nothing is stored. The garden is made where there is none, so who may make one must be settled
 * before.
 */
export async function savePlan(db: D1Database, saving: Saving): Promise<number | null> {
  const { garden, year, origin, savedAt, base, first } = saving;
  const done = await db.batch([
    db
      .prepare(
        `INSERT INTO gardens (id, changed_at, origin) SELECT ?1, ?2, ?3 WHERE ${MAY_SAVE}
          ON CONFLICT (id) DO UPDATE SET origin = excluded.origin`,
      )
      .bind(garden, savedAt, origin, year, base, Number(first)),
    insertion(db, saving),
  ]);
  return (done[1]?.meta.changes ?? 0) > 0 ? base + 1 : null;
}

/**
 * Whether a garden (`?1`) may have a version after that one (`?5`) of that year (`?4`): it was not deleted for good, no other
 * version is in force, and where it is to be its very first plan (`?6`) there is none at all.
 */
const MAY_SAVE = `NOT EXISTS (SELECT 1 FROM gone WHERE garden = ?1)
  AND ?5 = (SELECT coalesce(max(version), 0) FROM plans WHERE garden = ?1 AND year = ?4)
  AND (?6 = 0 OR NOT EXISTS (SELECT 1 FROM plans WHERE garden = ?1))`;

function insertion(db: D1Database, saving: Saving): D1PreparedStatement {
  const { garden, year, base, text, beside, file, plan, readBy, published, savedAt, first } =
    saving;
  return db
    .prepare(
      `INSERT INTO plans (garden, year, version, text, beside, file, plan, read_by, published, saved_at)
        SELECT ?1, ?4, ?5 + 1, ?2, ?3, ?7, ?8, ?9, ?10, ?11 WHERE ${MAY_SAVE}`,
    )
    .bind(
      ...[garden, text, JSON.stringify(beside), year, base, Number(first)],
      ...[file, JSON.stringify(plan), readBy, published, savedAt],
    );
}

/** A version of a year's plan, without its text: its number and when it was saved [ms since 1970 UTC]. */
export type Version = Pick<SavedPlan, "version" | "savedAt">;

/** Every version of a year's plan, newest first. */
export async function planVersions(
  db: D1Database,
  garden: string,
  year: number,
): Promise<readonly Version[]> {
  const found = await db
    .prepare(
      `SELECT version, saved_at AS savedAt FROM plans WHERE garden = ?1 AND year = ?2 ORDER BY version DESC`,
    )
    .bind(garden, year)
    .all<Version>();
  return found.results;
}

/** Every version of every year's plan with its text, oldest first. */
export async function allVersions(
  db: D1Database,
  garden: string,
): Promise<readonly Pick<SavedPlan, "year" | "version" | "text">[]> {
  const found = await db
    .prepare("SELECT year, version, text FROM plans WHERE garden = ?1 ORDER BY year, version")
    .bind(garden)
    .all<Pick<SavedPlan, "year" | "version" | "text">>();
  return found.results;
}

/** The text of one version and of the files beside it; null where there is no such version. */
export async function planVersion(
  db: D1Database,
  { garden, year, version }: { garden: string; year: number; version: number },
): Promise<Pick<SavedPlan, "text" | "beside"> | null> {
  const row = await db
    .prepare("SELECT text, beside FROM plans WHERE garden = ?1 AND year = ?2 AND version = ?3")
    .bind(garden, year, version)
    .first<Pick<PlanRow, "text" | "beside">>();
  return row && { text: row.text, beside: JSON.parse(row.beside) };
}

/** Puts a newer code's reading of the same text in place of the old. The garden's revision rises. */
export async function storeReading(
  db: D1Database,
  garden: string,
  { year, version, plan, readBy }: Pick<SavedPlan, "year" | "version" | "plan" | "readBy">,
): Promise<void> {
  await db
    .prepare(
      "UPDATE plans SET plan = ?4, read_by = ?5 WHERE garden = ?1 AND year = ?2 AND version = ?3",
    )
    .bind(garden, year, version, JSON.stringify(plan), readBy)
    .run();
}
