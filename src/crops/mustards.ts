import type { CoverFacts, Crop, Outdoors, Thinning } from "./facts.ts";
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
import { CABBAGE_NET, COOL_SOIL_C, RAISED_COOL } from "./raising.ts";
import { winterLife } from "./winter-life.ts";

/** A net over quick greens from the day they are sown: small beetles riddle the first leaves. */
const BEETLE_NET: CoverFacts = {
  against: "flea beetles",
  with: "net",
  on: "in place",
  off: "first harvest",
  offDays: commonPractice([0, 14]),
  offSign: "You cut the last of it.",
};

/** What the greens of the family have in common: sown in their place, and up as quickly as radish. */
export const GREENS = {
  ...CROP_DEFAULTS,
  family: "cabbage family",
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "radish",
    standsIn: commonPractice("radish"),
  },
  indoors: { ...RAISED_COOL, weeksToSettingOut: commonPractice([3, 5]) },
  covers: [BEETLE_NET],
  warmth: COOL_WARMTH,
} as const satisfies Partial<Crop>;

/** How greens are sown, seed so far apart [in], and from which week on from the last frost. */
export const sown = (
  apartIn: readonly [number, number],
  frostWeeks: Outdoors["weeksFromLastFrost"],
): Outdoors => ({
  ...OUTDOORS_DEFAULTS,
  depthCm: derived(
    inchRange(0.25, 0.25),
    CITE.missouri,
    "given there for mustard greens and Chinese cabbage",
  ),
  apartCm: commonPractice(inchRange(...apartIn)),
  rowsCm: commonPractice(12 * 2.54),
  soilMinC: COOL_SOIL_C,
  weeksFromLastFrost: frostWeeks,
});

/** Thinned once, to so much apart [cm]. */
export const thinned = (apart: Thinning["apartCm"]): readonly Thinning[] => [
  {
    step: "1",
    daysAfterUp: commonPractice([10, 18]),
    heightCm: THINNED_AT,
    apartCm: apart,
    how: "Pull the weakest on a damp day; the thinnings are good to eat.",
  },
];

/** Bok choy: bolts if it is cold while young, so sown in milder soil or for autumn. */
export const BOK_CHOY: Crop = {
  ...GREENS,
  key: "bok-choy",
  one: "bok choy",
  many: "bok choy",
  alsoCalled: ["pak choi", "pak choy", "pac choi", "tatsoi"],
  frost: commonPractice("frost tolerant"),
  settingOut: {
    weeksFromLastFrost: commonPractice(-1),
    soilMinC: null,
    apartCm: commonPractice(8 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a net, hoops and pegs", "a watering can"],
    how: "Plant as deep as they stood, water in, and close the net the same hour.",
  },
  outdoors: sown([1, 2], commonPractice(0)),
  thinnings: thinned(commonPractice(inchRange(6, 8))),
  limits: {
    heatC: null,
    longDays: commonPractice({ hours: 14, aboveC: 18 }),
    coldYoung: commonPractice({ belowC: 10, days: 10 }),
  },
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([45, 55]),
    kind: "once",
    holdsDays: commonPractice(7),
    verb: "Cut",
    sign: "The stalks stand thick and close, and no flower bud shows in the middle.",
    how: "Cut whole at the soil, or take outer leaves first.",
  },
};

/** Chinese cabbage: an autumn crop; cold while young and long days both make it bolt. */
export const CHINESE_CABBAGE: Crop = {
  ...GREENS,
  key: "chinese-cabbage",
  one: "Chinese cabbage",
  many: "Chinese cabbages",
  alsoCalled: ["chinese cabbage", "chinese cabbages", "napa cabbage", "napa", "chinese leaf"],
  frost: published("frost tolerant", CITE.purdue),
  covers: [CABBAGE_NET],
  settingOut: {
    weeksFromLastFrost: commonPractice(-1),
    soilMinC: null,
    apartCm: commonPractice(12 * 2.54),
    rowsCm: published(24 * 2.54, CITE.missouri),
    things: ["collars of card", "a net, hoops and pegs", "a watering can"],
    how: "Set them out without hurting the roots. Collar, water, and close the net the same hour.",
  },
  outdoors: sown([2, 3], published(-2, CITE.purdue)),
  thinnings: thinned(
    derived(
      inchRange(10, 12),
      CITE.missouri,
      "6 inches given there for small heads, twice that for full ones",
    ),
  ),
  limits: {
    heatC: null,
    longDays: commonPractice({ hours: 14, aboveC: 16 }),
    coldYoung: commonPractice({ belowC: 10, days: 14 }),
  },
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([75, 80], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(10),
    verb: "Cut",
    sign: "The head is firm when you press it.",
    how: "Cut at the soil and strip the outer leaves. It keeps for weeks in the cold.",
  },
};

/** Mustard greens: quick leaves for spring and autumn, hot in summer's heat. */
export const MUSTARD: Crop = {
  ...GREENS,
  key: "mustard",
  one: "mustard",
  many: "mustard",
  alsoCalled: ["mustard greens", "leaf mustard", "mizuna"],
  frost: published("very hardy", CITE.purdue),
  starts: ["seed outdoors"],
  indoors: null,
  outdoors: sown([1, 2], published(-4, CITE.purdue)),
  thinnings: thinned(published(inchRange(3, 3), CITE.missouri)),
  limits: { ...NO_LIMITS, longDays: commonPractice({ hours: 14, aboveC: 18 }) },
  repeatEveryDays: fromMemory([14, 14], "usual extension succession lists"),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([30, 40], CITE.missouri),
    kind: "cut and come again",
    cuts: { everyDays: commonPractice([12, 18]), times: commonPractice([2, 3]) },
    holdsDays: commonPractice(7),
    verb: "Cut",
    sign: "The leaves are a hand long.",
    how: "Take outer leaves and leave the heart, or cut all of it two fingers up.",
  },
};

/** Arugula: salad in five weeks, again and again but in heat. */
export const ARUGULA: Crop = {
  ...GREENS,
  key: "arugula",
  one: "arugula",
  many: "arugula",
  alsoCalled: ["rocket", "salad rocket", "roquette", "rucola"],
  kinds: ["wild rocket", "wild arugula"],
  frost: commonPractice("very hardy"),
  starts: ["seed outdoors"],
  indoors: null,
  outdoors: sown([0.5, 1], commonPractice(-4)),
  thinnings: [],
  limits: { ...NO_LIMITS, longDays: commonPractice({ hours: 14, aboveC: 18 }) },
  repeatEveryDays: fromMemory([14, 21], "usual extension succession lists"),
  winter: winterLife(-6, "through it if sown for it", { weeks: [6, 10] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([35, 45]),
    kind: "cut and come again",
    cuts: { everyDays: commonPractice([12, 18]), times: commonPractice([2, 3]) },
    holdsDays: commonPractice(7),
    verb: "Cut",
    sign: "The leaves are as long as a finger.",
    how: "Cut two fingers above the soil, and water: it grows again.",
  },
};

/** Rutabaga: sown in early summer for roots that frost makes sweet. */
export const RUTABAGA: Crop = {
  ...GREENS,
  key: "rutabaga",
  one: "rutabaga",
  many: "rutabagas",
  alsoCalled: ["swede", "swedes", "swede turnip", "yellow turnip"],
  frost: published("very hardy", CITE.purdue),
  starts: ["seed outdoors"],
  indoors: null,
  covers: [CABBAGE_NET],
  outdoors: {
    ...sown([2, 3], published(-4, CITE.purdue)),
    depthCm: commonPractice(inchRange(0.25, 0.5)),
    rowsCm: commonPractice(18 * 2.54),
  },
  thinnings: thinned(commonPractice(inchRange(6, 8))),
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 7, days: 21 }) },
  eaten: "root",
  winter: winterLife(-10, "through it", { sweetened: true, inPlace: 24 }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: fromMemory([85, 95], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(42),
    verb: "Lift",
    sign: "Roots are as big as a grapefruit.",
    how: "Lift after a frost or two, twist the tops off, and keep them cold and damp.",
  },
};

/** The greens and the yellow root of the cabbage family. */
export const MUSTARDS: readonly Crop[] = [BOK_CHOY, CHINESE_CABBAGE, MUSTARD, ARUGULA, RUTABAGA];
