import type { Crop, Harvest } from "./facts.ts";
import { commonPractice } from "./figures.ts";

/** The part of its days to a whole plant after which leaves can first be cut. Source: common practice, leaves a hand high. */
const YOUNG_PART = 0.6;

/** How often, and how many times, young leaves grow again. Source: common practice. */
const CUTS: NonNullable<Harvest["cuts"]> = {
  everyDays: commonPractice([12, 18]),
  times: commonPractice([2, 4]),
};

/** Whether it can be cut young and grow again: crops that are grown for their leaves. */
export function canBeCutAgain({ eaten, hilling, perennial, overwinter }: Crop): boolean {
  return eaten === "leaf" && hilling === null && perennial === null && overwinter === null;
}

/**
 * A crop that is usually taken whole, as it is cut young, a few times; one that grows again anyway, or whose leaves are
 * not what is eaten, as it was.
 */
export function asCutAgain(crop: Crop): Crop {
  const { harvest } = crop;
  if (harvest.kind !== "once" || !canBeCutAgain(crop)) return crop;
  const [least, most] = harvest.days.value;
  const young = [Math.round(least * YOUNG_PART), Math.round(most * YOUNG_PART)] as const;
  return {
    ...crop,
    harvest: {
      ...harvest,
      days: { ...harvest.days, value: young },
      kind: "cut and come again",
      cuts: CUTS,
      verb: "Cut",
      sign: "The leaves stand a hand high.",
      how: "Cut the outer leaves a finger above the crown and leave the heart; it grows again.",
    },
  };
}
