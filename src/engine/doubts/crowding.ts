import { cm, type Day, joinWords, type Problem, sayDay, sayQuantity } from "../../base/index.ts";
import { diagnostic, predecessorOf } from "../../garden/index.ts";
import type { Bed, Plan, Planting } from "../../garden/model/index.ts";
import { type Occupancy, occupancyIn, shareOn, spansOn } from "../beds/occupancy.ts";
import type { PlantingInYear } from "../year.ts";

/**
 * How much more than a whole bed its plantings may take before that is reported. Source: house rule; nobody measures
 * rows to a twentieth of a bed.
 */
const NEARLY = 0.05;

/**
 * The plantings in a bed on a day that are together more than it has room for: the one that came last, and the share
 * they need.
 */
type Crowd = {
  readonly bed: Bed;
  readonly day: Day;
  readonly last: Occupancy;
  readonly others: readonly Occupancy[];
  readonly share: number;
};

/**
 * `bed-crowded` at the planting that comes last into a bed where plantings at the same time need more than its width;
 * each planting once, on its first such day. Plantings that follow each other never do, nor do those that are gone
 * before their neighbours have grown. A planting that alone is more than its bed has room for is left to
 * `bed-too-full`.
 */
export function overlapDoubts(
  plans: readonly Plan[],
  plantings: readonly PlantingInYear[],
): readonly Problem[] {
  return bedsOf(plans).flatMap((bed) => {
    const crowds = new Map<Planting, Crowd>();
    const occupancies = occupancyIn(bed, plantings).filter(({ share }) => (share ?? 0) <= 1);
    for (const day of daysOfChange(occupancies)) {
      const crowd = crowdOn(bed, occupancies, { day, plans });
      if (crowd && !crowds.has(crowd.last.planting)) crowds.set(crowd.last.planting, crowd);
    }
    return [...crowds.values()].map((crowd) => doubtOf(crowd, plans));
  });
}

/** Every bed once, as its newest plan has it. */
function bedsOf(plans: readonly Plan[]): readonly Bed[] {
  const beds = [...plans].sort((a, b) => a.year - b.year).flatMap((plan) => plan.beds);
  return [...new Map(beds.map((bed) => [bed.key, bed])).values()];
}

function daysOfChange(occupancies: readonly Occupancy[]): readonly Day[] {
  const days = occupancies.flatMap(({ spans }) =>
    spans.flatMap(({ from, fullFrom }) => [from, fullFrom]),
  );
  return [...new Set(days)].sort((a, b) => a - b);
}

type CrowdInput = { readonly day: Day; readonly plans: readonly Plan[] };

function crowdOn(
  bed: Bed,
  occupancies: readonly Occupancy[],
  { day, plans }: CrowdInput,
): Crowd | null {
  const there = occupancies.filter((each) => (shareOn(each, day) ?? 0) > 0);
  const left = there.map(({ planting }) => predecessorOf(planting, plans)?.key);
  const here = there.filter(({ planting }) => !left.includes(planting.key));
  const share = here.reduce((sum, each) => sum + (shareOn(each, day) ?? 0), 0);
  const last = lastOf(here, day);
  if (!last || here.length < 2 || share <= 1 + NEARLY) return null;
  return { bed, day, last, others: here.filter((each) => each !== last), share };
}

/** The one whose first sowing of the day came last into the bed; of equals the later in the plan. */
function lastOf(here: readonly Occupancy[], day: Day): Occupancy | undefined {
  const came = (each: Occupancy) => Math.min(...spansOn(each, day).map(({ from }) => from));
  return [...here].sort((a, b) => came(a) - came(b)).at(-1);
}

function doubtOf({ bed, day, last, others, share }: Crowd, plans: readonly Plan[]): Problem {
  const { planting } = last;
  const names = joinWords(others.map((other) => nameOf(other.planting)));
  const goes = Math.max(...others.flatMap((each) => spansOn(each, day).map(({ ends }) => ends)));
  return diagnostic(
    "bed-crowded",
    planting.at,
    `${nameOf(planting)} and ${names} share ${bed.name} about ${sayDay(day)} and need ${needed(bed, share, plans)}`,
    `Give one of them less or another bed, or wait with ${nameOf(planting)} till about ${sayDay(goes as Day)}`,
  );
}

const nameOf = ({ name, written }: Planting): string => name ?? written;

/** `about 5.5 ft of its 4 ft across`; of bags a share, since they have no width. */
function needed({ widthCm }: Bed, share: number, plans: readonly Plan[]): string {
  const measures = plans.at(-1)?.measures ?? "metric";
  if (!widthCm) return "more bags than there are";
  const wanted = sayQuantity(cm(widthCm.si * share), measures);
  return `about ${wanted} of its ${sayQuantity(widthCm, measures)} across`;
}
