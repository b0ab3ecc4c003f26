import type { CoverFacts, Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  derived,
  fromMemory,
  HARVEST_DEFAULTS,
  houseRule,
  inchRange,
  OUTDOORS_DEFAULTS,
  published,
  THINNED_AT,
} from "./figures.ts";
import { kindsOf } from "./kinds.ts";
import { COOL_SOIL_C } from "./raising.ts";
import { STORE_CARROTS } from "./storing.ts";
import { winterLife } from "./winter-life.ts";

/** From when it is up till it is pulled, for two generations fly from late in April to September. Source: common practice; in hot summers it hardly flies. */
const CARROT_FLY_NET: CoverFacts = {
  against: "carrot fly",
  in: ["british isles", "nordic countries", "mainland europe", "new zealand"],
  with: "net",
  on: "up",
  off: "first harvest",
  offDays: commonPractice([30, 45]),
  offSign: "The last of the row is pulled.",
  offWhy: "Till then the fly comes to whatever stands in the soil.",
};

/** Carrot: slow seed, best under a board; thinned twice. */
export const CARROT: Crop = {
  ...CROP_DEFAULTS,
  key: "carrot",
  one: "carrot",
  many: "carrots",
  alsoCalled: [],
  kinds: kindsOf(["early", "maincrop", "storage"], "carrot", "carrots"),
  family: "carrot family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "carrot", standsIn: null },
  slow: true,
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: commonPractice(inchRange(0.5, 0.5)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: published(-3, CITE.purdue),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([17, 25]),
      heightCm: THINNED_AT,
      apartCm: published(inchRange(1, 1), CITE.northDakota),
      how: [
        {
          regional: {
            australia: "Snip or pull them when the soil is damp, and firm it back round the rest.",
            otherwise:
              "Snip or pull on a still evening and carry the thinnings away; their smell draws the carrot fly.",
          },
        },
      ],
    },
    {
      step: "2",
      daysAfterUp: commonPractice([38, 48]),
      heightCm: commonPractice(inchRange(4, 5)),
      apartCm: published(inchRange(2, 3), CITE.colorado),
      how: "These thinnings are good to eat. Firm the soil back and water.",
    },
  ],
  covers: [CARROT_FLY_NET],
  repeatEveryDays: fromMemory([21, 28], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  care: [STORE_CARROTS],
  eaten: "root",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: derived([65, 75], CITE.colorado, "70 days given there, five either way"),
    kind: "once",
    holdsDays: commonPractice(45),
    verb: "Pull",
    sign: "Shoulders as thick as your thumb stand in the soil's surface.",
    how: "Loosen with a fork and pull; the rest can stand and be pulled as you need them.",
  },
};

/** Parsley: slow to come up; leaves from summer into winter. */
export const PARSLEY: Crop = {
  ...CROP_DEFAULTS,
  key: "parsley",
  one: "parsley",
  many: "parsley",
  alsoCalled: ["parsleys", "flat-leaf parsley", "italian parsley", "curly parsley", "leaf parsley"],
  family: "carrot family",
  frost: derived(
    "frost tolerant",
    CITE.coloradoFrost,
    "semi-hardy there, a class with beet and carrot",
  ),
  starts: ["seed outdoors", "seed indoors"],
  comesUp: { kind: "table", row: "parsley", standsIn: null },
  slow: true,
  indoors: {
    weeksToSettingOut: fromMemory([8, 10], "Knott's Handbook for Vegetable Growers"),
    soilTempC: commonPractice(20),
    depthCm: commonPractice(inchRange(0.25, 0.5)),
    potOnDaysAfterUp: null,
    hardenDays: commonPractice(7),
    nightFloorC: derived(
      (40 - 32) / 1.8,
      CITE.coloradoFrost,
      "the lower end of the warmth from which its class grows there, 40 °F",
    ),
  },
  settingOut: {
    weeksFromLastFrost: published(-2, CITE.coloradoFrost),
    soilMinC: null,
    apartCm: fromMemory(6 * 2.54, "usual advice of extension crop sheets"),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Keep the soil round the roots, plant no deeper than they stood, and water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.harrington),
    apartCm: commonPractice(inchRange(0.5, 1)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: derived(
      (50 - 32) / 1.8,
      CITE.harrington,
      "63 in 100 come up at 50 °F and none at 41 °F",
    ),
    weeksFromLastFrost: published(-2, CITE.coloradoFrost),
    soilMaxC: derived(
      (86 - 32) / 1.8,
      CITE.harrington,
      "50 in 100 come up at 86 °F, none at 95 °F",
    ),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([20, 30]),
      heightCm: THINNED_AT,
      apartCm: fromMemory(inchRange(6, 8), "usual advice of extension crop sheets"),
      how: "Snip at ground level; the thinnings are good to eat.",
    },
  ],
  warmth: COOL_WARMTH,
  winter: winterLife(-10, "through it", { weeks: [10, 16] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([70, 90]),
    kind: "again and again",
    holdsDays: commonPractice(30),
    verb: "Cut",
    sign: "Stalks have three leaflets and stand a hand high.",
    how: "Cut the outer stalks at the base, a few from each plant, as you need them; the heart grows on.",
  },
};

/** Parsnip: fresh seed, slow to come up, in the ground until it freezes and after. */
export const PARSNIP: Crop = {
  ...CROP_DEFAULTS,
  key: "parsnip",
  one: "parsnip",
  many: "parsnips",
  alsoCalled: [],
  family: "carrot family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "parsnip", standsIn: null },
  slow: true,
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.colorado),
    apartCm: commonPractice(inchRange(1, 1)),
    rowsCm: commonPractice(15 * 2.54),
    soilMinC: published((45 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(-3, CITE.purdue),
    soilMaxC: published((90 - 32) / 1.8, CITE.colorado),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([20, 30]),
      heightCm: THINNED_AT,
      apartCm: derived(
        inchRange(4, 5),
        CITE.colorado,
        "5 to 6 inches given there, an inch closer for roots of kitchen size",
      ),
      how: "Snip the weakest at ground level, so that the roots beside them are not stirred.",
    },
  ],
  warmth: COOL_WARMTH,
  eaten: "root",
  winter: winterLife(-18, "through it", { sweetened: true }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: fromMemory([100, 120], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(60),
    verb: "Dig",
    sign: "Shoulders are two fingers thick; a few frosts make the roots sweeter still.",
    how: "Loosen with a fork and lift; the rest can stand and be dug as you need them.",
    caution: "Sap of parsnip leaves burns skin in the sun: wear sleeves and gloves.",
  },
};

/** Hamburg parsley: parsley grown for its root, as parsnips are. */
export const HAMBURG_PARSLEY: Crop = {
  ...PARSNIP,
  key: "hamburg-parsley",
  one: "Hamburg parsley",
  many: "Hamburg parsley",
  alsoCalled: ["hamburg parsley", "root parsley", "parsley root", "turnip-rooted parsley"],
  frost: commonPractice("frost tolerant"),
  comesUp: { kind: "table", row: "parsley", standsIn: houseRule("parsley", "it is a parsley") },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.25, 0.5)),
    apartCm: commonPractice(inchRange(1, 1)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: commonPractice((45 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(-3),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([20, 30]),
      heightCm: THINNED_AT,
      apartCm: commonPractice(inchRange(3, 5)),
      how: "Snip the weakest at ground level; the leaves are good to eat.",
    },
  ],
  harvest: {
    ...PARSNIP.harvest,
    days: commonPractice([90, 110]),
    sign: "The roots' shoulders are a thumb thick.",
    caution: null,
  },
};

/** The carrot family, for rotations and shared pests. */
export const CARROT_FAMILY: readonly Crop[] = [CARROT, HAMBURG_PARSLEY, PARSLEY, PARSNIP];
