import type { Standing } from "../schedule/placed.ts";
import { type PlanRow, planOf, plansInForce, type SavedPlan } from "./plans.ts";

/**
 * A garden's record with its plans in force, in year order. `revision` rises with every change of plans or diary,
 * `changedAt` [ms since 1970 UTC] is the newest of them; `standing` is what each task was last told as.
 */
export type StoredGarden = {
  readonly id: string;
  readonly revision: number;
  readonly changedAt: number;
  readonly origin: string;
  readonly standing: Standing;
  readonly standingVersion: number;
  readonly plans: readonly SavedPlan[];
};

type GardenRow = Omit<StoredGarden, "standing" | "plans"> & { readonly standing: string };

/** The two statements that `gardenFrom` reads, to be run with others in one look at the store. */
export function gardenStatements(db: D1Database, garden: string): readonly D1PreparedStatement[] {
  const record = db
    .prepare(
      `SELECT id, revision, changed_at AS changedAt, origin, standing, standing_version AS standingVersion
        FROM gardens WHERE id = ?1`,
    )
    .bind(garden);
  return [record, plansInForce(db, garden)];
}

/** The garden from those statements' results; null where there is none, or it has no plan. */
export function gardenFrom(results: readonly D1Result<unknown>[]): StoredGarden | null {
  const record = results[0]?.results[0] as GardenRow | undefined;
  const rows = (results[1]?.results ?? []) as PlanRow[];
  if (!record || rows.length === 0) return null;
  return { ...record, standing: JSON.parse(record.standing), plans: rows.map(planOf) };
}

/** A garden and every link of it that was revoked, or null where there is no such garden. */
export async function openGarden(
  db: D1Database,
  garden: string,
): Promise<{ readonly stored: StoredGarden; readonly revoked: readonly string[] } | null> {
  const revoked = db.prepare("SELECT link FROM revoked WHERE garden = ?1").bind(garden);
  const results = await db.batch<unknown>([...gardenStatements(db, garden), revoked]);
  const stored = gardenFrom(results);
  const rows = (results[2]?.results ?? []) as { readonly link: string }[];
  return stored && { stored, revoked: rows.map((row) => row.link) };
}

/**
 * Keeps what was told as the garden's standing and says true; false where plans, diary or standing have changed since
 * the record was read, so that what was told is out of date. An equal standing is not written again.
 */
export async function keepStanding(
  db: D1Database,
  garden: StoredGarden,
  standing: Standing,
): Promise<boolean> {
  const text = JSON.stringify(standing);
  if (text === JSON.stringify(garden.standing)) return true;
  const done = await db
    .prepare(
      `UPDATE gardens SET standing = ?2, standing_version = standing_version + 1
        WHERE id = ?1 AND standing_version = ?3 AND revision = ?4`,
    )
    .bind(garden.id, text, garden.standingVersion, garden.revision)
    .run();
  return done.meta.changes > 0;
}

/** Revokes one link, given as its part of the path (`helper-imre-1`). Again is no mistake. */
export async function revoke(
  db: D1Database,
  garden: string,
  link: string,
  at: number,
): Promise<void> {
  await db
    .prepare(
      "INSERT INTO revoked (garden, link, revoked_at) VALUES (?1, ?2, ?3) ON CONFLICT DO NOTHING",
    )
    .bind(garden, link, at)
    .run();
}

/** Whether the garden exists and the link was not revoked. One query. */
export async function isOpen(db: D1Database, garden: string, link: string): Promise<boolean> {
  const row = await db
    .prepare(
      `SELECT id FROM gardens WHERE id = ?1
        AND NOT EXISTS (SELECT 1 FROM revoked WHERE garden = ?1 AND link = ?2)`,
    )
    .bind(garden, link)
    .first<{ readonly id: string }>();
  return row !== null;
}
