import { latest, plus } from "../../base/index.ts";
import { combineBasis } from "../growth/anchors.ts";
import type { ReachedMilestone } from "../growth/milestones.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import type { WinterEnd } from "../growth/through-winter.ts";
import { how, sign, why } from "./sentence.ts";
import { objectOf, plantingTask, type TaskOf, taskIdBefore, window } from "./task.ts";

/** How what was picked through the winter ends, by what ends it. */
const LAST_OF_WINTER: Readonly<
  Record<WinterEnd["by"], { readonly how: string; readonly sign: string; readonly why: string }>
> = {
  cold: {
    how: "Take all that is sound, and clear the row.",
    sign: "The forecast names nights of hard frost.",
    why: "From about then nights are too cold for it.",
  },
  "frozen soil": {
    how: "Dig what is left, and store it in damp sand somewhere cold and free of frost.",
    sign: "The soil stays hard under your heel in the morning.",
    why: "From about then the soil is frozen too hard to dig.",
  },
  spring: {
    how: "Take what is left and clear the row; the place is free.",
    sign: "A stalk rises in the middle of the plant.",
    why: "It runs to flower as the days grow warm.",
  },
};

/** Days before hard frost or frozen soil by which the last is brought in, and in spring after it has begun to flower. */
const LAST_DAYS = { before: 7, after: 10 } as const;

/** The first harvest, the end of the winter's, and the step of the harvest before the last. */
type LastOfWinter = {
  readonly ripe: ReachedMilestone;
  readonly winter: WinterEnd;
  readonly after: string;
};

/** Spring begins with the last frost, or by the time of year where there is none. */
const springBasis = ({ plan }: SowingContext) =>
  plan.site.lastFrost ? "last frost" : "time of year";

/** The last of what is harvested through the winter: it frees its place. */
export function lastOfTheWinter(
  context: SowingContext,
  { ripe, winter, after }: LastOfWinter,
): TaskOf<"harvest"> {
  const { day, by } = winter;
  const wait = by === "spring" ? LAST_DAYS.after : 0;
  const due = latest(ripe.usual, by === "spring" ? day : plus(day, -LAST_DAYS.before));
  const text = LAST_OF_WINTER[by];
  return plantingTask(context, "harvest", "last", {
    window: window(plus(due, -LAST_DAYS.before), due, latest(due, plus(day, wait)), "earlier"),
    harm: by === "spring" ? "when you can" : "this week",
    rhythm: "session",
    minutes: 20,
    title: {
      verb: `${context.crop.harvest.verb} the last`,
      object: objectOf(context),
      where: "bed",
    },
    say: [how(text.how), sign(text.sign), why(text.why)],
    because: [
      by === "spring"
        ? ["Counted from when spring begins, to about ", { day }, "."]
        : ["By the usual cold of this place, about ", { day }, "."],
    ],
    basis: combineBasis(ripe.basis, [by === "spring" ? springBasis(context) : "cold"]),
    after: taskIdBefore(context, "harvest", after),
    hangsOn: taskIdBefore(context, "harvest", after),
    sets: { planting: context.planting.key, sowing: context.sowing, act: "end" },
  });
}
