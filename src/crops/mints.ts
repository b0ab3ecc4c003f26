import type { Crop } from "./facts.ts";
import {
  CITE,
  CROP_DEFAULTS,
  commonPractice,
  derived,
  HARVEST_DEFAULTS,
  houseRule,
  inchRange,
  OUTDOORS_DEFAULTS,
  WARM_WARMTH,
} from "./figures.ts";
import { TENDER_NIGHT_C } from "./raising.ts";

/** Basil: no cold at all, black after one cool night; raised indoors, its tips cut again and again. */
export const BASIL: Crop = {
  ...CROP_DEFAULTS,
  key: "basil",
  one: "basil",
  many: "basil",
  alsoCalled: ["sweet basil", "genovese basil", "thai basil", "lemon basil"],
  family: "mint family",
  frost: commonPractice("warm loving"),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: {
    kind: "table",
    row: "tomato",
    standsIn: commonPractice("tomato"),
  },
  indoors: {
    weeksToSettingOut: derived([5, 7], CITE.virginia, "six weeks for most crops, one either way"),
    soilTempC: commonPractice(21),
    depthCm: commonPractice(inchRange(0.25, 0.25)),
    potOnDaysAfterUp: null,
    hardenDays: derived(10, CITE.maryland, "inside the one to two weeks given there"),
    nightFloorC: TENDER_NIGHT_C,
  },
  settingOut: {
    weeksFromLastFrost: commonPractice(2),
    soilMinC: commonPractice((60 - 32) / 1.8),
    apartCm: commonPractice(10 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can", "fabric for a cool night"],
    how: "Plant them as deep as they stood and water in. Keep fabric at hand: one cool night turns the leaves black.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.25, 0.25)),
    apartCm: commonPractice(inchRange(1, 2)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: commonPractice((60 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(1),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([18, 28]),
      heightCm: commonPractice(inchRange(2, 3)),
      apartCm: commonPractice(inchRange(8, 10)),
      how: "Snip the weaker ones off; they are good in the kitchen.",
    },
  ],
  repeatEveryDays: commonPractice([21, 28]),
  warmth: WARM_WARMTH,
  care: [
    {
      practice: "stop the tops",
      step: "1",
      from: "in place",
      days: commonPractice([10, 18]),
      verb: "Pinch out",
      how: ["Take the tip of every shoot off above the second pair of leaves."],
      sign: ["They stand ", { cm: inchRange(6, 8) }, " tall."],
      why: "They branch and make leaf instead of flowers.",
      caution: null,
      harm: "when you can",
      minutes: 5,
      needs: [],
    },
  ],
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([60, 70]),
    kind: "again and again",
    bearsDays: commonPractice([80, 120]),
    holdsDays: houseRule(5, "leaf is good for days; flowers end it"),
    verb: "Cut",
    sign: "The shoots have four pairs of leaves, and no flowers show.",
    how: "Cut tips above a pair of leaves, never down to bare stem. Take flower buds off as they come.",
  },
};

/** Summer savory: a small bush for the bean pot, sown in its place once the soil is mild. */
export const SAVORY: Crop = {
  ...CROP_DEFAULTS,
  key: "savory",
  one: "summer savory",
  many: "summer savory",
  alsoCalled: ["savory", "savoury", "summer savoury", "bean herb"],
  family: "mint family",
  frost: commonPractice("tender"),
  starts: ["seed outdoors", "plants"],
  comesUp: { kind: "table", row: "parsley", standsIn: commonPractice("parsley") },
  slow: true,
  settingOut: {
    weeksFromLastFrost: commonPractice(0),
    soilMinC: commonPractice((55 - 32) / 1.8),
    apartCm: commonPractice(6 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Plant them as deep as they stood, in sun, and water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.125, 0.125)),
    apartCm: commonPractice(inchRange(0.5, 1)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: commonPractice((55 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(0),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([21, 30]),
      heightCm: commonPractice(inchRange(2, 3)),
      apartCm: commonPractice(inchRange(5, 6)),
      how: "Snip the weaker ones off; they go in with the beans.",
    },
  ],
  warmth: WARM_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([60, 70]),
    kind: "again and again",
    bearsDays: commonPractice([40, 60]),
    holdsDays: commonPractice(10),
    verb: "Cut",
    sign: "It stands a hand high and bushy, and no flowers show.",
    how: "Cut tips down to the last good pair of leaves. For drying, cut whole plants as they begin to flower.",
  },
};

/** The mint family. */
export const MINT_FAMILY: readonly Crop[] = [BASIL, SAVORY];
