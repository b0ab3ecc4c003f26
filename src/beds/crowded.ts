import { type Day, sayDay } from "../days/day.ts";
import { tell } from "../plan/codes.ts";
import type { Bed, Plan } from "../plan/plan.ts";
import type { Problem } from "../problems/problem.ts";
import { type Grown, grownOf, type Season } from "./lives.ts";
import { type Standing, standingIn, standsOn, takenCm } from "./taken.ts";

/** Rows may stand so much nearer before a bed is called too full. Source: house rule; spacings of tables differ by more than a quarter. */
const ALLOWED = 1.25;

/**
 * `bed-crowded` for each bed of the season's plans whose plantings, as they are placed, take more width together than it
 * has, once a bed, on the first such day, at the planting that comes last. One planting that alone is too much is told by
 * the plan. What follows another in its place does not crowd it.
 */
export function crowdedDoubts(season: Season): readonly Problem[] {
  const grown = grownOf(season);
  return season.plans.flatMap((plan) => plan.beds.flatMap((bed) => crowdedBed(plan, bed, grown)));
}

function crowdedBed(plan: Plan, bed: Bed, grown: readonly Grown[]): readonly Problem[] {
  const width = bed.widthCm?.si ?? null;
  if (width === null) return [];
  const standing = standingIn(grown, bed);
  const mine = new Set(plan.plantings.map(({ key }) => key));
  const days = standing
    .filter(({ planting }) => mine.has(planting.key))
    .map(({ life }) => life.out ?? life.starts)
    .sort((a, b) => a - b);
  for (const day of days) {
    const there = inOne(standing.filter((each) => standsOn(each, day) && each.widthCm !== null));
    if (there.length > 1 && takenCm(there, day) > width * ALLOWED)
      return [crowded(bed, there, day)];
  }
  return [];
}

/** A planting's sowings as one: the first of them. */
function inOne(standing: readonly Standing[]): readonly Standing[] {
  return [...new Map(standing.map((each) => [each.planting.key, each])).values()];
}

function crowded(bed: Bed, there: readonly Standing[], day: Day): Problem {
  const last = there.reduce((a, b) => (from(b) >= from(a) ? b : a));
  const names = there.map(({ planting }) => planting.name ?? planting.written).join(", ");
  const share = Math.round((takenCm(there, day) / (bed.widthCm?.si ?? 1)) * 10) / 10;
  return tell(
    "bed-crowded",
    last.planting.at,
    `About ${sayDay(day)} ${bed.name} holds ${names}: about ${share} times its width`,
    "Sow less, move one to another bed, or let one follow another with after",
  );
}

const from = ({ life }: Standing) => life.out ?? life.starts;
