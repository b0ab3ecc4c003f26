import type { Crop } from "./facts.ts";
import {
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  houseRule,
  inchRange,
  OUTDOORS_DEFAULTS,
  WARM_WARMTH,
} from "./figures.ts";
import { RAISED_COOL, RAISED_WARM } from "./raising.ts";

/** Marigold, French or African: frost kills it; picked over, it flowers till then. */
export const MARIGOLD: Crop = {
  ...CROP_DEFAULTS,
  key: "marigold",
  one: "marigold",
  many: "marigolds",
  alsoCalled: ["french marigold", "french marigolds", "african marigold", "tagetes"],
  family: "daisy family",
  frost: commonPractice("tender"),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: {
    kind: "table",
    row: "tomato",
    standsIn: houseRule("tomato", "it wants the same warmth and is up in about a week"),
  },
  indoors: { ...RAISED_WARM, weeksToSettingOut: commonPractice([5, 7]), potOnDaysAfterUp: null },
  settingOut: {
    weeksFromLastFrost: commonPractice(0),
    soilMinC: null,
    apartCm: commonPractice(10 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Plant them as deep as they stood, pinch out the tip, and water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.25, 0.25)),
    apartCm: commonPractice(inchRange(8, 10)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: commonPractice((60 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(0),
  },
  warmth: WARM_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([55, 70]),
    kind: "again and again",
    holdsDays: commonPractice(14),
    verb: "Deadhead",
    sign: "The first flowers fade.",
    how: "Nip off faded flowers every week, and it flowers until the frost.",
  },
};

/** Sweet pea: climbs, is stopped once, and flowers as long as it is cut. */
export const SWEET_PEA: Crop = {
  ...CROP_DEFAULTS,
  key: "sweet-pea",
  one: "sweet pea",
  many: "sweet peas",
  alsoCalled: ["sweetpea", "sweetpeas"],
  family: "pea family",
  frost: commonPractice("frost tolerant"),
  starts: ["seed indoors", "seed outdoors", "plants", "winter-sown"],
  comesUp: {
    kind: "table",
    row: "pea",
    standsIn: houseRule("pea", "its kin, sown into the same cool soil, and as slow in the cold"),
  },
  indoors: {
    ...RAISED_COOL,
    weeksToSettingOut: commonPractice([6, 10]),
    depthCm: commonPractice(inchRange(0.5, 1)),
  },
  settingOut: {
    weeksFromLastFrost: commonPractice(-3),
    soilMinC: null,
    apartCm: commonPractice(8 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Plant two to a cane, water in, and tie them loosely until they hold on by themselves.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(1, 1)),
    apartCm: commonPractice(inchRange(3, 4)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: commonPractice((45 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(-4),
    how: "Set mouse traps or a net over the row: mice dig the seed out.",
  },
  flowers: { daysBeforeHarvest: commonPractice([0, 3]), forBees: false },
  support: {
    things: ["canes or netting taller than you"],
    how: "Put them up before the plants are in, and tie netting tight.",
    first: null,
  },
  care: [
    {
      practice: "stop the tops",
      step: "1",
      from: "up",
      days: commonPractice([25, 35]),
      verb: "Pinch out",
      how: "Nip out the tip above the third pair of leaves.",
      sign: "Three pairs of leaves are open.",
      why: "Side shoots follow, and they carry the flowers.",
      caution: null,
      harm: "when you can",
      minutes: 5,
      needs: [],
    },
  ],
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([90, 110]),
    kind: "again and again",
    bearsDays: commonPractice([45, 70]),
    holdsDays: commonPractice(4),
    verb: "Cut",
    sign: "The lowest flowers of a stem are open.",
    how: "Cut every other day, and never let a pod form: it stops flowering.",
    caution:
      "The seeds of sweet peas are poisonous; don't grow them where children pick garden peas.",
  },
};

/** Zinnia: wants warm soil, and flowers the more it is cut. */
export const ZINNIA: Crop = {
  ...MARIGOLD,
  key: "zinnia",
  one: "zinnia",
  many: "zinnias",
  alsoCalled: [],
  indoors: { ...RAISED_WARM, weeksToSettingOut: commonPractice([4, 5]), potOnDaysAfterUp: null },
  harvest: {
    ...MARIGOLD.harvest,
    days: commonPractice([60, 75]),
    verb: "Cut",
    sign: "The first flowers are open, and their stems no longer bend.",
    how: "Cut long stems above a pair of leaves; two shoots follow from there.",
  },
};

/** Cosmos: tall and airy, in flower until the frost where it is picked over. */
export const COSMOS: Crop = {
  ...ZINNIA,
  key: "cosmos",
  one: "cosmos",
  many: "cosmos",
  alsoCalled: [],
  settingOut: {
    weeksFromLastFrost: commonPractice(0),
    soilMinC: null,
    apartCm: commonPractice(14 * 2.54),
    rowsCm: commonPractice(14 * 2.54),
    things: ["a watering can", "sticks"],
    how: "Plant them as deep as they stood, pinch out the tip, water in, and give each a stick.",
  },
};

/** Borage: sown where it grows, for bees and for its blue flowers; it comes again by itself. */
export const BORAGE: Crop = {
  ...CROP_DEFAULTS,
  key: "borage",
  one: "borage",
  many: "borage",
  alsoCalled: ["starflower"],
  family: "borage family",
  frost: commonPractice("frost tolerant"),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "beet",
    standsIn: houseRule("beet", "seed as big, sown as early, and up in one to two weeks"),
  },
  indoors: { ...RAISED_COOL, weeksToSettingOut: commonPractice([3, 4]) },
  settingOut: {
    weeksFromLastFrost: commonPractice(-1),
    soilMinC: null,
    apartCm: commonPractice(15 * 2.54),
    rowsCm: commonPractice(15 * 2.54),
    things: ["a watering can"],
    how: "Plant it while young: its taproot does not like to be moved. Water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.5, 0.5)),
    apartCm: commonPractice(inchRange(12, 15)),
    rowsCm: commonPractice(18 * 2.54),
    soilMinC: commonPractice((50 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(-2),
  },
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([50, 65]),
    kind: "again and again",
    bearsDays: commonPractice([42, 63]),
    holdsDays: commonPractice(10),
    verb: "Pick",
    sign: "The first blue flowers are open.",
    how: "Pick flowers for the bowl, and leave the rest to the bees.",
    caution: "Eat little borage, and none when pregnant or with liver trouble: ask a doctor.",
  },
};

/** Flowers among the vegetables that are grown for themselves. */
export const FLOWERS: readonly Crop[] = [MARIGOLD, ZINNIA, COSMOS, BORAGE, SWEET_PEA];
