import { cm, latest, plus } from "../../base/index.ts";
import { type Bed, type Plan, seasonOf } from "../../garden/model/index.ts";
import { type Anchor, type Basis, combineBasis } from "../growth/anchors.ts";
import { hasCoolSeason } from "../growth/cool-season.ts";
import type { WholeGarden } from "./practice.ts";
import { caution, how, lengthRange, type Sentence, why } from "./sentence.ts";
import { type Window, window } from "./task.ts";

/** A job that a garden itself needs once a year, as `ready the garden` tells it. */
export type GardenJob = {
  readonly step: string;
  readonly window: Window;
  readonly verb: string;
  readonly object: string;
  readonly minutes: number;
  readonly indoors?: true;
  /** Left out: work of a session. */
  readonly rhythm?: "daily";
  readonly say: readonly Sentence[];
  readonly because: string;
  readonly basis: readonly Basis[];
};

/** An open bed and the act with which one of its plantings begins there. */
export type BegunBed = { readonly bed: Bed; readonly act: Anchor };

/** Days into a season after which what begins belongs to its second half. Source: house rule; past midsummer. */
const SECOND_HALF_DAYS = 200;

/** Days before the first thing goes into a bed by which it is ready. Source: house rule, as in spring. */
const AHEAD_DAYS = 10;

/** Beds once more before the second season; none where nothing begins in it. */
function bedsAgain(plan: Plan, began: readonly BegunBed[]): GardenJob | null {
  const half = plus(seasonOf(plan).from, SECOND_HALF_DAYS);
  const late = began
    .filter(({ act }) => act.day > half)
    .sort((a, b) => a.act.day - b.act.day || (a.bed.key < b.bed.key ? -1 : 1));
  const [first] = late;
  if (!first) return null;
  const due = plus(first.act.day, -AHEAD_DAYS);
  return {
    step: "beds-again",
    window: window(plus(due, -10), due, plus(first.act.day, -1)),
    verb: "Make … ready for autumn",
    object: "the beds",
    minutes: 60,
    say: [
      how(
        `Begin with ${first.bed.name}, sown or planted from about `,
        { day: first.act.day },
        "; the others a week before their turn. Clear what is over, soak dry soil, spread ",
        { quantity: cm(2.54) },
        " of compost, loosen with a fork and rake level.",
      ),
      why("The second season begins as the heat goes."),
    ],
    because: "Before the first thing goes into a bed after summer.",
    basis: combineBasis(...late.map(({ act }) => act.basis)),
  };
}

/** Mean air [°C] from which soil is mulched against the heat. Source: house rule; late spring, when soil is warm and still damp. */
const MULCH_C = 20;

/** How thick mulch lies in summer [cm]. Source: common practice, 2 to 3 inches. */
const MULCH_CM = [5, 8] as const;

/** Mulch on bare beds as summer comes. */
function mulch({ plan, climate }: WholeGarden): GardenJob | null {
  const bare = plan.beds.filter(({ kind, mulch: lies }) => kind === "bed" && lies === null);
  const { from, to } = seasonOf(plan);
  let due = from;
  while (due < to && climate.airAheadC(due) < MULCH_C) due = plus(due, 1);
  if (bare.length === 0 || due === to) return null;
  return {
    step: "mulch",
    window: window(latest(from, plus(due, -10)), due, plus(due, 28)),
    verb: "Mulch … before the heat",
    object: "the beds",
    minutes: 45,
    say: [
      how(
        "Water well, then lay straw or dry leaves ",
        lengthRange(MULCH_CM),
        " deep where crops stand, off their stems.",
      ),
      why("Under it soil stays cool and damp, and needs far less water."),
      caution("Buy straw without weedkiller in it, and ask where it grew."),
    ],
    because: "As summer's heat begins.",
    basis: ["time of year"],
  };
}

/** What a garden needs whose summer is too hot for cool crops and whose winter they grow in; nothing elsewhere. */
export function hotSummerJobs(
  garden: WholeGarden,
  began: readonly BegunBed[],
): readonly (GardenJob | null)[] {
  const open = garden.contexts.find(({ climate }) => !climate.underGlass);
  if (!open || !hasCoolSeason(open)) return [];
  return [mulch(garden), bedsAgain(garden.plan, began)];
}
