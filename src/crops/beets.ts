import type { Crop } from "./facts.ts";
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
import { kindsOf } from "./kinds.ts";
import { COOL_SOIL_C, LEAF_MINER_NET, RAISED_COOL } from "./raising.ts";
import { STORE_BEETS } from "./storing.ts";
import { winterLife } from "./winter-life.ts";

/** Beet: clusters of seed, thinned once. */
export const BEET: Crop = {
  ...CROP_DEFAULTS,
  key: "beet",
  one: "beet",
  many: "beets",
  alsoCalled: ["beetroot", "beetroots", "beet root", "table beet", "table beets"],
  kinds: kindsOf(["red", "golden"], "beet", "beets"),
  family: "beet family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "beet", standsIn: null },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.missouri),
    apartCm: commonPractice(inchRange(1, 2)),
    rowsCm: published(18 * 2.54, CITE.missouri),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: published(-3, CITE.purdue),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([16, 24]),
      heightCm: fromMemory(inchRange(3, 4), "usual advice of extension crop sheets"),
      apartCm: derived(
        inchRange(3, 4),
        CITE.missouri,
        "3 inches given there, 4 where Colorado's table begins",
      ),
      how: "Each seed is a cluster: leave the strongest and pinch off the rest. The tops are good to eat.",
    },
  ],
  covers: [
    {
      against: "leaf miners",
      with: "net",
      on: "up",
      off: "up",
      offDays: commonPractice([22, 30]),
      offSign: "The plants have five or six leaves and stand a hand high.",
    },
  ],
  repeatEveryDays: fromMemory([14, 21], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  care: [STORE_BEETS],
  eaten: "root",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([55, 65], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(30),
    verb: "Pull",
    sign: "Roots as big as a golf ball show above the soil.",
    how: "Pull the biggest first, and twist the tops off.",
  },
};

/** Spinach: cool soil and short days; it bolts when days grow long. */
export const SPINACH: Crop = {
  ...CROP_DEFAULTS,
  key: "spinach",
  one: "spinach",
  many: "spinach",
  alsoCalled: ["spinaches", "true spinach", "leaf spinach", "baby spinach"],
  kinds: ["winter spinach", "summer spinach"],
  family: "beet family",
  frost: published("very hardy", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "spinach", standsIn: null },
  settingOut: {
    weeksFromLastFrost: published(-4, CITE.purdue),
    soilMinC: null,
    apartCm: commonPractice(5 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Plant them young, before the roots fill their box, and water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.harrington),
    apartCm: commonPractice(inchRange(1, 1)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: published((45 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(-4, CITE.purdue),
    soilMaxC: derived(
      (68 - 32) / 1.8,
      CITE.harrington,
      "52 in 100 come up at 68 °F and 28 at 77 °F",
    ),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([12, 18]),
      heightCm: THINNED_AT,
      apartCm: derived(
        inchRange(3, 4),
        CITE.missouri,
        "3 inches given there for its kin chard, up to an inch more",
      ),
      how: "Snip at ground level; the thinnings are good in a salad.",
    },
  ],
  repeatEveryDays: fromMemory([7, 14], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  limits: { ...NO_LIMITS, longDays: commonPractice({ hours: 14, aboveC: 16 }) },
  winter: winterLife(-10, "through it if sown for it", { weeks: [6, 12] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: fromMemory([40, 50], CITE.colorado),
    kind: "once",
    holdsDays: commonPractice(10),
    verb: "Cut",
    sign: "Five or six leaves are as long as your hand.",
    how: "Pick the outer leaves as you need them, or cut whole plants. Take all at the first sign of a stalk.",
  },
};

/** Chard: stalks and leaves from one sowing until hard frost. */
export const CHARD: Crop = {
  ...CROP_DEFAULTS,
  key: "chard",
  one: "chard",
  many: "chard",
  alsoCalled: ["swiss chard", "leaf beet", "silverbeet", "perpetual spinach"],
  family: "beet family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "beet",
    standsIn: commonPractice("beet"),
  },
  indoors: RAISED_COOL,
  settingOut: {
    weeksFromLastFrost: published(-2, CITE.purdue),
    soilMinC: null,
    apartCm: commonPractice(9 * 2.54),
    rowsCm: published(18 * 2.54, CITE.missouri),
    things: ["a net, hoops and pegs", "a watering can"],
    how: "Plant as deep as they stood, and water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.missouri),
    apartCm: commonPractice(inchRange(2, 3)),
    rowsCm: published(18 * 2.54, CITE.missouri),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: published(-3, CITE.purdue),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([16, 24]),
      heightCm: THINNED_AT,
      apartCm: commonPractice(inchRange(6, 8)),
      how: "Each seed is a cluster: leave the strongest. The thinnings are salad.",
    },
  ],
  covers: [LEAF_MINER_NET],
  warmth: COOL_WARMTH,
  winter: winterLife(-6, "through it", { weeks: [10, 14] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([55, 65], CITE.missouri),
    kind: "again and again",
    bearsDays: commonPractice([80, 120]),
    holdsDays: commonPractice(14),
    verb: "Pick",
    sign: "The outer stalks are as long as a hand.",
    how: "Twist outer stalks off at the base, and leave the heart to grow.",
  },
};

/** The beet family, for rotations and shared pests. */
export const BEET_FAMILY: readonly Crop[] = [BEET, SPINACH, CHARD];
