import type { Crop } from "./facts.ts";
import {
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  inchRange,
} from "./figures.ts";
import { AS_ONION } from "./onion-ways.ts";
import { RAISED_COOL } from "./raising.ts";

/** Chives: a clump for years, cut down after its flowers and divided when it is crowded. */
export const CHIVES: Crop = {
  ...CROP_DEFAULTS,
  key: "chives",
  one: "chives",
  many: "chives",
  alsoCalled: ["chive", "garlic chives", "garlic chive", "chinese chives"],
  family: "onion family",
  frost: commonPractice("very hardy"),
  starts: ["plants", "seed indoors"],
  comesUp: AS_ONION,
  indoors: {
    ...RAISED_COOL,
    weeksToSettingOut: commonPractice([6, 8]),
  },
  settingOut: {
    weeksFromLastFrost: commonPractice(-4),
    soilMinC: null,
    apartCm: commonPractice(10 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Plant them in clumps as deep as they stood, and water in.",
  },
  perennial: {
    firstHarvestYear: commonPractice(1),
    harvestDaysAfterLastFrost: commonPractice([-28, -7]),
    harvestWeeks: commonPractice([20, 26]),
    standsYears: commonPractice([5, 10]),
    ends: null,
  },
  care: [
    {
      practice: "yearly",
      step: "flowers",
      from: "last frost",
      days: commonPractice([28, 50]),
      verb: "Cut down",
      how: ["Cut the whole clump to ", { cm: inchRange(1, 2) }, ", and water it."],
      sign: "The flowers fade.",
      why: "Fresh tender leaves follow within weeks, and no seedlings.",
      caution: null,
      harm: "when you can",
      minutes: 10,
      needs: ["shears"],
    },
  ],
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: commonPractice([40, 60]),
    kind: "again and again",
    holdsDays: commonPractice(30),
    verb: "Cut",
    sign: "The leaves are a hand high.",
    how: "Cut leaves two fingers above the soil, round the outside of the clump first.",
  },
};
