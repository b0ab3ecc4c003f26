import type { Plan } from "../../app/index.ts";
import { diaryLines, type StoredLine, withDiary } from "./diary.ts";
import { loadReadPlan, plansInForce, type SavedPlan } from "./plans.ts";
import { type GardenRecord, gardenRecord } from "./record.ts";
import type { SqlStore } from "./sql.ts";

export { type GardenRecord, gardenRecord } from "./record.ts";

/** A garden's record with its plans in force, in year order, at least one. */
export type StoredGarden = GardenRecord & { readonly plans: readonly SavedPlan[] };

/** The garden with what pages show of its plans; null where there is none, or it has no plan. */
export function loadGarden(sql: SqlStore): StoredGarden | null {
  const record = gardenRecord(sql);
  const plans = record === null ? [] : plansInForce(sql);
  return record === null || plans.length === 0 ? null : { ...record, plans };
}

/** The zone of the newest plan, by which a garden's days turn. */
export function zoneOf({ plans }: StoredGarden): string {
  return plans.at(-1)?.summary.clock ?? "UTC";
}

/** The plans in force of every other year than that one, as they were read; one that can't be read is left out. */
export function otherPlans(
  sql: SqlStore,
  { plans }: Pick<StoredGarden, "plans">,
  year: number,
): readonly Plan[] {
  return plans
    .filter((saved) => saved.year !== year)
    .flatMap((saved) => loadReadPlan(sql, saved.year) ?? []);
}

/** What the engine builds from: every year's plan, the newest one's diary with what was said over links, and those lines. */
export type FullPlans = { readonly plans: readonly Plan[]; readonly lines: readonly StoredLine[] };

/** The plans in force as they were read, with the diary. Throws where one can't be read, which a new reading mends. */
export function loadFullPlans(sql: SqlStore, { plans }: StoredGarden): FullPlans {
  const read = plans.map(({ year }) => {
    const plan = loadReadPlan(sql, year);
    if (plan === null) throw new Error(`the plan of ${year} can't be read`);
    return plan;
  });
  const lines = diaryLines(sql);
  return { plans: withDiary(read, lines), lines };
}
