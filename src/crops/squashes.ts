import type { Care, Crop, SettingOut } from "./facts.ts";
import {
  CITE,
  CROP_DEFAULTS,
  commonPractice,
  derived,
  fromMemory,
  HARVEST_DEFAULTS,
  houseRule,
  inchRange,
  OUTDOORS_DEFAULTS,
  published,
  WARM_WARMTH,
} from "./figures.ts";
import { BEETLE_FABRIC, FEED_AT_FRUIT, GOURD_INDOORS, SQUASH_LOOK } from "./gourd-ways.ts";

const AS_CUCUMBER = {
  kind: "table",
  row: "cucumber",
  standsIn: houseRule(
    "cucumber",
    "near kin, sown into the same warm soil; both are up in about a week",
  ),
} as const satisfies Crop["comesUp"];

/** What every squash needs when it is set out. */
const OUT = {
  things: ["fabric, hoops and pegs", "a watering can"],
  how: "Slip them out whole, for their roots hate to be touched. Water in and cover at once.",
} as const satisfies Partial<SettingOut>;

const BITTER = "Don't eat a squash that tastes bitter: it can make you ill.";

/** A vine's last weeks should go into the fruits it has. */
const STOP_VINES: Care = {
  practice: "stop the tops",
  step: "1",
  from: "first frost",
  days: commonPractice([-49, -38]),
  verb: "Pinch the tips off",
  how: "Pinch out the tips of the vines and take off flowers and the smallest fruits.",
  sign: "Each vine has two or three fruits that swell.",
  why: "What sets from now on won't ripen before frost.",
  caution: null,
  harm: "when you can",
  minutes: 10,
  needs: [],
};

const CURE: Care = {
  practice: "cure and store",
  step: "1",
  from: "first harvest",
  days: commonPractice([0, 3]),
  verb: "Cure",
  how: [
    "Lay them ten days in a dry place of about ",
    { tempC: (80 - 32) / 1.8 },
    ". Then keep them on a shelf near ",
    { tempC: (55 - 32) / 1.8 },
    ", none touching. Eat bruised ones first.",
  ],
  sign: "A nail no longer marks the skin.",
  why: "A hard skin keeps them into winter.",
  caution: "Cook no squash that has soft spots or smells off.",
  harm: "when you can",
  minutes: 15,
  needs: ["a crate or shelf"],
};

/** Summer squash: bushes that bear in weeks, picked small and often. */
export const SUMMER_SQUASH: Crop = {
  ...CROP_DEFAULTS,
  key: "summer-squash",
  one: "summer squash",
  many: "summer squash",
  alsoCalled: [
    "summer squashes",
    "courgette",
    "courgettes",
    "zucchini",
    "zucchinis",
    "yellow squash",
    "crookneck squash",
    "pattypan",
    "pattypans",
    "pattypan squash",
    "patty pan squash",
    "marrow",
    "marrows",
    "vegetable marrow",
    "vegetable marrows",
  ],
  kinds: ["patty pan", "patty pans"],
  family: "gourd family",
  frost: published("warm loving", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: AS_CUCUMBER,
  indoors: GOURD_INDOORS,
  settingOut: {
    ...OUT,
    weeksFromLastFrost: published(1, CITE.purdue),
    soilMinC: derived((60 - 32) / 1.8, CITE.kansas, "given there for cucumber, its near kin"),
    apartCm: commonPractice(24 * 2.54),
    rowsCm: commonPractice(48 * 2.54),
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.5, 1)),
    apartCm: commonPractice(inchRange(24, 24)),
    rowsCm: commonPractice(48 * 2.54),
    soilMinC: derived((60 - 32) / 1.8, CITE.kansas, "given there for cucumber, its near kin"),
    weeksFromLastFrost: published(0, CITE.coloradoFrost),
    how: "Put two seeds at each place, a hand apart.",
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([10, 18]),
      heightCm: commonPractice(inchRange(3, 4)),
      apartCm: commonPractice(inchRange(24, 24)),
      how: "Keep the stronger one at each place and cut the other at the soil. Pulling would tear both.",
    },
  ],
  covers: [BEETLE_FABRIC],
  flowers: { daysBeforeHarvest: commonPractice([5, 10]), forBees: true },
  care: [FEED_AT_FRUIT, SQUASH_LOOK],
  warmth: WARM_WARMTH,
  eaten: "fruit",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: fromMemory([45, 55], CITE.missouri),
    kind: "again and again",
    bearsDays: commonPractice([56, 90]),
    holdsDays: commonPractice(2),
    verb: "Pick",
    sign: "As long as your hand, with skin that a nail goes through.",
    how: "Cut every day or two with a bit of stalk. One left to grow big stops the plant.",
    caution: BITTER,
  },
};

/** Winter squash: long vines, cut once before frost with a hard skin, cured and kept. */
export const WINTER_SQUASH: Crop = {
  ...CROP_DEFAULTS,
  key: "winter-squash",
  one: "winter squash",
  many: "winter squash",
  alsoCalled: [
    "winter squashes",
    "butternut",
    "butternuts",
    "butternut squash",
    "butternut squashes",
    "acorn squash",
    "acorn squashes",
    "hubbard squash",
    "buttercup squash",
    "kabocha",
    "kabocha squash",
    "delicata",
    "delicata squash",
    "spaghetti squash",
    "onion squash",
  ],
  family: "gourd family",
  frost: published("warm loving", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: AS_CUCUMBER,
  indoors: GOURD_INDOORS,
  settingOut: {
    ...OUT,
    weeksFromLastFrost: published(1, CITE.purdue),
    soilMinC: derived((60 - 32) / 1.8, CITE.kansas, "given there for cucumber, its near kin"),
    apartCm: published(60 * 2.54, CITE.missouri),
    rowsCm: published(48 * 2.54, CITE.missouri),
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: derived(
      inchRange(0.5, 1),
      CITE.missouri,
      "half an inch there, an inch in soil that dries",
    ),
    apartCm: published(inchRange(60, 60), CITE.missouri),
    rowsCm: published(48 * 2.54, CITE.missouri),
    soilMinC: derived((60 - 32) / 1.8, CITE.kansas, "given there for cucumber, its near kin"),
    weeksFromLastFrost: published(1, CITE.purdue),
    how: "Put two seeds at each place, a hand apart.",
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([10, 18]),
      heightCm: commonPractice(inchRange(3, 4)),
      apartCm: published(inchRange(60, 60), CITE.missouri),
      how: "Keep the stronger one at each place and cut the other at the soil. Pulling would tear both.",
    },
  ],
  covers: [BEETLE_FABRIC],
  flowers: { daysBeforeHarvest: commonPractice([45, 55]), forBees: true },
  care: [FEED_AT_FRUIT, SQUASH_LOOK, STOP_VINES, CURE],
  warmth: WARM_WARMTH,
  eaten: "fruit",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([100, 100], CITE.missouri),
    kind: "once",
    holdsDays: houseRule(21, "ripe ones stand on the vine until frost, and only frost spoils them"),
    verb: "Cut",
    sign: "A nail doesn't mark the skin, and the stalk is dry and corky.",
    how: "Cut them all before frost, each with a finger of stalk. Never lift one by its stalk.",
    caution: BITTER,
  },
};

/** Pumpkin: the longest vines of all, cut once when coloured, cured and kept. */
export const PUMPKIN: Crop = {
  ...WINTER_SQUASH,
  key: "pumpkin",
  one: "pumpkin",
  many: "pumpkins",
  alsoCalled: [
    "pie pumpkin",
    "pie pumpkins",
    "sugar pumpkin",
    "sugar pumpkins",
    "carving pumpkin",
    "carving pumpkins",
  ],
  settingOut: {
    ...OUT,
    weeksFromLastFrost: published(1, CITE.purdue),
    soilMinC: published((60 - 32) / 1.8, CITE.texas),
    apartCm: derived(60 * 2.54, CITE.missouri, "given there for winter squash, its near kin"),
    rowsCm: commonPractice(60 * 2.54),
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(1, 1)),
    apartCm: derived(
      inchRange(60, 60),
      CITE.missouri,
      "given there for winter squash, its near kin",
    ),
    rowsCm: commonPractice(60 * 2.54),
    soilMinC: published((60 - 32) / 1.8, CITE.texas),
    weeksFromLastFrost: published(1, CITE.purdue),
    how: "Put two seeds at each place, a hand apart.",
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([10, 18]),
      heightCm: commonPractice(inchRange(3, 4)),
      apartCm: derived(
        inchRange(60, 60),
        CITE.missouri,
        "given there for winter squash, its near kin",
      ),
      how: "Keep the stronger one at each place and cut the other at the soil. Pulling would tear both.",
    },
  ],
  harvest: {
    ...WINTER_SQUASH.harvest,
    days: fromMemory([95, 120], CITE.missouri),
    sign: "Coloured all over, a nail doesn't mark the skin, and the stalk has dried.",
    how: "Cut them before frost, each with a hand's length of stalk. Never lift one by its stalk.",
  },
};

/** The squashes of the gourd family, by name. */
export const SQUASHES: readonly Crop[] = [PUMPKIN, SUMMER_SQUASH, WINTER_SQUASH];
