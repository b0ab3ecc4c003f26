import { earliest, plus } from "../../base/index.ts";
import { cropFor, type Outdoors } from "../../crops/index.ts";
import { bedOf, type Plan, type Planting } from "../../garden/model/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import type { DateDecision } from "../growth/date-decision.ts";
import { observationsAbout } from "../growth/own-observations.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { plantingOutDay } from "../growth/starting.ts";
import { type SuccessionSowing, successionOf } from "../growth/successions.ts";
import { deed, PLANTED, SOWED, verb } from "./deeds.ts";
import { definePractice } from "./practice.ts";
import { why } from "./sentence.ts";
import { SOW_OUTDOORS, sowingSentences } from "./sow-outdoors.ts";
import { objectOf, plantingTask, type TaskOf, window } from "./task.ts";

/** The first sowing that the others are counted from: as the diary has it, else as it is reckoned. */
function firstSowing(context: SowingContext, facts: Outdoors): DateDecision {
  const decision = plantingOutDay(context, facts);
  const sown = context.observations.flatMap((observation) =>
    observation.kind === "done" && observation.practice === SOW_OUTDOORS.name
      ? [observation.day]
      : [],
  );
  return sown.length > 0 ? { ...decision, day: earliest(...sown), basis: ["seen"] } : decision;
}

/** Every sowing that a planting wants in its season, the first always among them; one where it is sown but once. */
export function sowingsOf(context: SowingContext, facts: Outdoors): readonly SuccessionSowing[] {
  return successionOf(context, firstSowing(context, facts).day);
}

/** Facts of sowing where it is sown again and again; null where it is not: plants and tubers go in once. */
function repeatFacts({ planting, crop }: SowingContext): Outdoors | null {
  return planting.repeat && planting.start === "seed outdoors" ? crop.outdoors : null;
}

/** Numbers of the sowings that a planting wants in its season, rising, the first always 1. */
export function sowingNumbers(context: SowingContext): readonly number[] {
  const facts = repeatFacts(context);
  if (!facts) return [1];
  return sowingsOf(context, facts).map(({ number }) => number);
}

/** What a garden's contexts share; `facts` are those of its whole diary. */
export type GardenState = Pick<
  SowingContext,
  "climate" | "anchors" | "observations" | "around" | "soFar"
>;

/** Each sowing of a planting in its plan's garden, the first first; none where the facts do not know the crop. */
export function sowingContextsOf(
  planting: Planting,
  plan: Plan,
  { climate, anchors, observations: facts, around, soFar }: GardenState,
): readonly SowingContext[] {
  const crop = cropFor(planting);
  if (!crop) return [];
  const bed = bedOf(plan, planting);
  const first: SowingContext = {
    plan,
    planting,
    crop,
    bed,
    sowing: 1,
    climate: climate.at(bed),
    anchors,
    observations: observationsAbout(facts, planting.key),
    around,
    soFar,
  };
  return sowingNumbers(first).map((sowing) => (sowing === 1 ? first : { ...first, sowing }));
}

function tasks(context: SowingContext): readonly TaskOf<"repeat">[] {
  const facts = repeatFacts(context);
  if (!facts || context.sowing > 1 || context.planting.inSince !== null) return [];
  return sowingsOf(context, facts).flatMap(({ number, day, ripe }, i, all) => {
    if (number === 1 || ripe === null) return [];
    const follows = all[i - 1]?.number === number - 1;
    return [again(context, facts, { number, day, ripe, follows })];
  });
}

/** `follows`: the sowing before it is not left out. */
type LaterSowing = SuccessionSowing & {
  readonly ripe: NonNullable<SuccessionSowing["ripe"]>;
  readonly follows: boolean;
};

function again(
  context: SowingContext,
  facts: Outdoors,
  { number, day: due, ripe, follows }: LaterSowing,
): TaskOf<"repeat"> {
  const { planting, crop } = context;
  const everyDays = planting.repeat?.everyDays ?? 0;
  const first = firstSowing(context, facts);
  const leeway = Math.floor(everyDays / 3);
  return plantingTask(context, "repeat", String(number), {
    window: window(plus(due, -leeway), due, plus(due, leeway), "earlier"),
    harm: "when you can",
    rhythm: "session",
    minutes: 15,
    title: { verb: "Sow more", object: objectOf(context), where: "bed" },
    say: [
      ...sowingSentences(context, facts, due),
      follows
        ? why(
            `Sown now it is ready ${everyDays} days after the one before, about `,
            { day: ripe },
            ".",
          )
        : why(
            "The sowings before this would have come to nothing. Ready about ",
            { day: ripe },
            ".",
          ),
    ],
    because: [
      follows
        ? [
            `Sowing ${number}: to be ready ${everyDays} days after the one before it, about `,
            { day: ripe },
            ".",
          ]
        : [`Sowing ${number}: the one before it is left out. Ready about `, { day: ripe }, "."],
      [
        "Counted from the first sowing, ",
        { day: first.day },
        ", by the usual warmth of this place.",
      ],
    ],
    basis: combineBasis(first.basis, crop.warmth ? ["warmth"] : ["age"]),
    needs: ["seed"],
    sets: { planting: planting.key, sowing: number, act: "start" },
  });
}

/** The sowings after the first, at even distances. */
export const REPEAT = definePractice({
  name: "repeat",
  past: { whole: "sown again" },
  words: ["repeats", "repeating", "sowing again"],
  begins: "again",
  deeds: [
    deed([...SOWED, ...PLANTED], { of: { repeated: true, laterSowing: true, isNew: true } }),
    deed(
      [
        ...verb("sowed again|sowed more|resowed", "sown again|sowed again|resown"),
        "sowed|sown … again",
      ],
      { of: { repeated: true } },
    ),
  ],
  answers: { done: "Sown today" },
  tasks: { start: tasks },
});
