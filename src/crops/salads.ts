import type { Crop, FromSeed, Outdoors, SettingOut, Thinning } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  derived,
  fromMemory,
  HARVEST_DEFAULTS,
  inchRange,
  NO_LIMITS,
  OUTDOORS_DEFAULTS,
  published,
  THINNED_AT,
} from "./figures.ts";
import { RAISED_COOL, RAISED_SHORT } from "./raising.ts";

/** Lettuce kin come up as lettuce does: small flat seed that wants light and cool soil. */
export const AS_LETTUCE: FromSeed = {
  kind: "table",
  row: "lettuce",
  standsIn: commonPractice("lettuce"),
};

const BOLTS = derived(
  (70 - 32) / 1.8,
  CITE.coloradoFrost,
  "days of 80 °F, the upper end of the growth range given there for cool crops, with nights of 60 °F",
);

const salad = (apartIn: readonly [number, number]): Outdoors => ({
  ...OUTDOORS_DEFAULTS,
  depthCm: commonPractice(inchRange(0.25, 0.25)),
  apartCm: commonPractice(inchRange(...apartIn)),
  rowsCm: commonPractice(15 * 2.54),
  soilMinC: derived((45 - 32) / 1.8, CITE.kansas, "given there for lettuce"),
  weeksFromLastFrost: published(-4, CITE.purdue),
  soilMaxC: fromMemory((80 - 32) / 1.8, "extension advice on seed that sleeps in warm soil"),
});

/** Set out from their cells so far apart [in], four weeks before the last frost. */
export const fromCells = (apartIn: number): SettingOut => ({
  weeksFromLastFrost: published(-4, CITE.purdue),
  soilMinC: null,
  apartCm: commonPractice(apartIn * 2.54),
  rowsCm: commonPractice(15 * 2.54),
  things: ["a watering can"],
  how: "Plant no deeper than they stood in their cells, and water in.",
});

const heads = (apart: readonly [number, number]): readonly Thinning[] => [
  {
    step: "1",
    daysAfterUp: commonPractice([14, 22]),
    heightCm: THINNED_AT,
    apartCm: commonPractice(inchRange(...apart)),
    how: "Leave the best; the rest are salad, or go into a gap.",
  },
];

/** Head lettuce: one head a plant, quick to bolt in heat. */
export const HEAD_LETTUCE: Crop = {
  ...CROP_DEFAULTS,
  key: "head-lettuce",
  one: "head lettuce",
  many: "head lettuce",
  alsoCalled: [
    "butterhead",
    "butterhead lettuce",
    "crisphead lettuce",
    "iceberg lettuce",
    "romaine",
    "romaine lettuce",
    "cos",
    "cos lettuce",
    "little gem",
  ],
  family: "daisy family",
  frost: published("very hardy", CITE.purdue),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: AS_LETTUCE,
  indoors: {
    ...RAISED_COOL,
    weeksToSettingOut: fromMemory([3, 5], "Knott's Handbook for Vegetable Growers"),
  },
  settingOut: fromCells(10),
  outdoors: salad([0.5, 1]),
  thinnings: heads([8, 10]),
  covers: [
    {
      against: "birds",
      with: "net",
      on: "in place",
      off: "first harvest",
      offDays: commonPractice([-21, -14]),
      offSign: "The plants have begun to fold.",
    },
  ],
  limits: { ...NO_LIMITS, heatC: BOLTS },
  repeatEveryDays: fromMemory([14, 14], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([55, 80], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(7),
    verb: "Cut",
    sign: "The head gives a little when you press it, and its middle has not begun to rise.",
    how: "Cut at the soil in the cool of the morning.",
  },
};

/** Endive: bitter leaves, tied up to make the heart pale. */
export const ENDIVE: Crop = {
  ...CROP_DEFAULTS,
  key: "endive",
  one: "endive",
  many: "endive",
  alsoCalled: ["endives", "escarole", "frisee", "frisée", "curly endive"],
  family: "daisy family",
  frost: published("very hardy", CITE.purdue),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: AS_LETTUCE,
  indoors: RAISED_SHORT,
  settingOut: fromCells(12),
  outdoors: salad([1, 2]),
  thinnings: heads([10, 12]),
  care: [
    {
      practice: "fill in and blanch",
      step: "1",
      from: "first harvest",
      days: commonPractice([-14, -10]),
      verb: "Tie up",
      how: "On a dry day gather the leaves and tie them loosely, or lay a plate over the heart.",
      sign: "The plants are as wide as two hands.",
      why: "Ten days in the dark make the heart pale and mild; wet ones rot.",
      caution: null,
      harm: "when you can",
      minutes: 10,
      needs: ["string"],
    },
  ],
  limits: { heatC: BOLTS, longDays: null, coldYoung: commonPractice({ belowC: 7, days: 14 }) },
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([80, 95]),
    kind: "once",
    holdsDays: commonPractice(14),
    verb: "Cut",
    sign: "The heart is pale and full.",
    how: "Cut at the soil. Light frost does it no harm.",
  },
};

/** Radicchio: an autumn head, red once nights are cold. */
export const RADICCHIO: Crop = {
  ...CROP_DEFAULTS,
  key: "radicchio",
  one: "radicchio",
  many: "radicchio",
  alsoCalled: ["red chicory", "chicory"],
  family: "daisy family",
  frost: commonPractice("very hardy"),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: AS_LETTUCE,
  indoors: { ...RAISED_COOL, weeksToSettingOut: commonPractice([4, 6]) },
  settingOut: { ...fromCells(10), weeksFromLastFrost: commonPractice(-3) },
  outdoors: { ...salad([1, 2]), weeksFromLastFrost: commonPractice(-3) },
  thinnings: heads([8, 10]),
  limits: { heatC: BOLTS, longDays: null, coldYoung: commonPractice({ belowC: 7, days: 14 }) },
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([75, 90]),
    kind: "once",
    holdsDays: commonPractice(14),
    verb: "Cut",
    sign: "The head is hard when you press it.",
    how: "Cut at the soil, and strip the green leaves. Cold nights redden it.",
  },
};

/** The salads of the daisy family beside leaf lettuce. */
export const SALADS: readonly Crop[] = [HEAD_LETTUCE, ENDIVE, RADICCHIO];
