import {
  type Crop,
  cropFor,
  type Family,
  type Figure,
  houseRule,
  published,
} from "../../crops/index.ts";
import type { Bed, Plan, Planting } from "../../garden/model/index.ts";

const CONNECTICUT =
  "University of Connecticut IPM, Having problems controlling vegetable crop diseases? Try rotation, table of rotation periods";

/**
 * The years for families that the table has no number for. Source: house rule: its few years, and what a dozen beds can
 * spare.
 */
const USUALLY = houseRule(2, "the table's few years, and what a dozen beds can spare");

/** Whole years without a family in a bed, by family. */
const YEARS_AWAY: Readonly<Partial<Record<Family, Figure<number>>>> = {
  "nightshade family": published(3, `${CONNECTICUT}: fruit rots of eggplant`),
  "cabbage family": published(3, `${CONNECTICUT}: blackleg, three to four years`),
  "beet family": published(3, `${CONNECTICUT}: leaf spot of beets`),
  "daisy family": published(3, `${CONNECTICUT}: bottom rot and drop of lettuce`),
  "pea family": published(2, `${CONNECTICUT}: anthracnose and blight of beans`),
  "gourd family": published(2, `${CONNECTICUT}: scab and leaf spot of cucumber`),
};

/**
 * How many whole years a bed should be without a family: with 2, what was there in 2024 may come again in 2027.
 * Source: University of Connecticut IPM's table of rotation periods; where it gives no number, house rule, two years.
 */
export function yearsAway(family: Family): Figure<number> {
  return YEARS_AWAY[family] ?? USUALLY;
}

/** A planting of an earlier year with its plan. */
export type EarlierPlanting = { readonly planting: Planting; readonly plan: Plan };

/**
 * The newest planting of a crop's family in a bed, fewer years before than the family should be away; null where there
 * is none, and for bags, which get new soil.
 */
export function familyBefore(
  { family }: Crop,
  bed: Bed,
  { year, before }: { readonly year: number; readonly before: readonly Plan[] },
): EarlierPlanting | null {
  if (bed.kind === "bags") return null;
  const away = yearsAway(family).value;
  const near = before.filter((plan) => plan.year < year && plan.year >= year - away);
  for (const plan of [...near].sort((a, b) => b.year - a.year)) {
    const planting = plan.plantings.find(
      (other) => other.bed === bed.key && cropFor(other)?.family === family,
    );
    if (planting) return { planting, plan };
  }
  return null;
}
