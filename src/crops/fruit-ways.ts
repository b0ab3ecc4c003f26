import type { Care, Crop, NumberRange } from "./facts.ts";
import {
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  inchRange,
} from "./figures.ts";

/** What fruit trees and bushes have in common: hardy, planted once, picked after some years. */
export const FRUIT = {
  ...CROP_DEFAULTS,
  family: "rose family",
  frost: commonPractice("very hardy"),
  starts: ["plants"],
  comesUp: { kind: "days", days: commonPractice([14, 28]) },
  warmth: COOL_WARMTH,
  eaten: "fruit",
} as const satisfies Partial<Crop>;

/** Planted while bare of leaves, so far apart [ft], before spring grows. */
export const plantedBare = (apartFt: number, rowsFt: number, how: string): Crop["settingOut"] => ({
  weeksFromLastFrost: commonPractice(-5),
  soilMinC: null,
  apartCm: commonPractice(apartFt * 30.48),
  rowsCm: commonPractice(rowsFt * 30.48),
  things: ["compost", "a watering can"],
  how,
});

/** When it bears: the summer of its first fruit, and the harvest in days from the usual last frost and in weeks. */
export const bearing = (
  firstYear: number,
  harvest: { readonly days: NumberRange; readonly weeks: NumberRange; readonly years: NumberRange },
): Crop["perennial"] => ({
  firstHarvestYear: commonPractice(firstYear),
  harvestDaysAfterLastFrost: commonPractice(harvest.days),
  harvestWeeks: commonPractice(harvest.weeks),
  standsYears: commonPractice(harvest.years),
  ends: "clear",
});

/** Picked as it ripens; `years` from planting to the first fruit. */
export const picked = (
  years: number,
  {
    sign,
    how,
    holdsDays,
  }: { readonly sign: string; readonly how: string; readonly holdsDays: number },
): Crop["harvest"] => ({
  ...HARVEST_DEFAULTS,
  from: "setting out",
  days: commonPractice([365 * (years - 1), 365 * years]),
  kind: "again and again",
  bearsDays: commonPractice([14, 28]),
  holdsDays: commonPractice(holdsDays),
  verb: "Pick",
  sign,
  how,
});

type JobWords = Pick<Care, "verb" | "how" | "sign" | "why">;

/** A job of every year, so many days from the usual last frost. */
export const yearlyJob = (
  step: string,
  days: NumberRange,
  words: JobWords & Partial<Pick<Care, "caution" | "minutes" | "needs" | "harm" | "from" | "only">>,
): Care => ({
  practice: "yearly",
  step,
  from: "last frost",
  days: commonPractice(days),
  caution: null,
  harm: "when you can",
  minutes: 30,
  needs: [],
  ...words,
});

/** Pruning while it is bare and the hardest cold is over. */
export const prunedInWinter = (how: string, why: string): Care =>
  yearlyJob("prune", [-75, -40], {
    verb: "Prune",
    how,
    sign: "It is bare, the hardest cold is over, and the buds have not broken.",
    why,
    minutes: 45,
    needs: ["clean sharp secateurs"],
  });

/** Food and a mulch as growth begins. */
export const FED_IN_SPRING: Care = yearlyJob("feed", [-35, -14], {
  verb: "Feed and mulch",
  how: [
    "Pull the weeds, scatter plant food over the roots, and lay ",
    { cm: inchRange(2, 3) },
    " of compost or bark round it, clear of the stems.",
  ],
  sign: "The buds swell.",
  why: "It fruits on what it grew the year before, and weeds and dry soil take from both.",
  caution: "Plant food: as much as the label says, no more.",
  minutes: 20,
  needs: ["compost or bark", "plant food"],
});

/** A net against birds as fruit colours, so many days from the usual last frost. */
export const nettedInFruit = (days: NumberRange): Care =>
  yearlyJob("net", days, {
    verb: "Net over",
    how: "Hang a fine net clear of the fruit and close it at the ground, so that no bird is caught in it. It comes off after the last picking.",
    sign: "The first fruit turns colour.",
    why: "Birds take the crop in a morning.",
    only: ["bearing"],
    harm: "this week",
    minutes: 20,
    needs: ["a fruit net and pegs"],
  });
