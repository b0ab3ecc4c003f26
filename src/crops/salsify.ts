import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  houseRule,
  inchRange,
  OUTDOORS_DEFAULTS,
  published,
  THINNED_AT,
} from "./figures.ts";
import { winterLife } from "./winter-life.ts";

const SOWN = {
  ...OUTDOORS_DEFAULTS,
  depthCm: commonPractice(inchRange(0.5, 0.5)),
  apartCm: commonPractice(inchRange(1, 1)),
  rowsCm: commonPractice(15 * 2.54),
  soilMinC: commonPractice((45 - 32) / 1.8),
  how: "Use fresh seed: last year's hardly comes up.",
};

/** Salsify: a long thin root that wants deep soil and a whole season, and stands the winter. */
export const SALSIFY: Crop = {
  ...CROP_DEFAULTS,
  key: "salsify",
  one: "salsify",
  many: "salsify",
  alsoCalled: ["oyster plant", "vegetable oyster", "white salsify"],
  family: "daisy family",
  frost: published("very hardy", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: {
    kind: "table",
    row: "parsnip",
    standsIn: houseRule("parsnip", "long seed that is as slow, and short-lived as well"),
  },
  slow: true,
  outdoors: { ...SOWN, weeksFromLastFrost: published(-4, CITE.purdue) },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([20, 30]),
      heightCm: THINNED_AT,
      apartCm: commonPractice(inchRange(3, 4)),
      how: "Snip the weakest at ground level: its seedlings look like grass.",
    },
  ],
  warmth: COOL_WARMTH,
  eaten: "root",
  winter: winterLife(-18, "through it", { sweetened: true }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([110, 130]),
    kind: "once",
    holdsDays: commonPractice(60),
    verb: "Dig",
    sign: "The tops begin to yellow, and a root you try is as thick as a finger.",
    how: "Dig beside the row and lift the roots whole; the rest can stand and be dug as you need them.",
  },
};

/** Scorzonera: its black-skinned kin, which may stay a second summer if roots are thin. */
export const SCORZONERA: Crop = {
  ...SALSIFY,
  key: "scorzonera",
  one: "scorzonera",
  many: "scorzonera",
  alsoCalled: ["black salsify", "viper's grass"],
  frost: commonPractice("very hardy"),
  outdoors: {
    ...SOWN,
    weeksFromLastFrost: commonPractice(-4),
  },
};

/** Long roots of the daisy family. */
export const LONG_ROOTS: readonly Crop[] = [SALSIFY, SCORZONERA];
