import type { Crop, NumberRange } from "./facts.ts";
import {
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  inchRange,
  OUTDOORS_DEFAULTS,
  WARM_WARMTH,
} from "./figures.ts";
import { winterLife } from "./winter-life.ts";

/** Sown broadcast to feed the soil: cut down before it sets seed and dug in, and the bed rests before the next crop. */
const GREEN = {
  ...CROP_DEFAULTS,
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "radish", standsIn: commonPractice("radish") },
  digInDays: commonPractice([14, 21]),
  warmth: COOL_WARMTH,
} as const satisfies Partial<Crop>;

const broadcast = (weeksFromLastFrost: number, soilF: number): Crop["outdoors"] => ({
  ...OUTDOORS_DEFAULTS,
  depthCm: commonPractice(inchRange(0.25, 0.5)),
  apartCm: commonPractice(inchRange(0.5, 1)),
  rowsCm: commonPractice(6 * 2.54),
  soilMinC: commonPractice((soilF - 32) / 1.8),
  weeksFromLastFrost: commonPractice(weeksFromLastFrost),
  how: "Scatter the seed over raked soil, rake it in, and tread or tamp it down.",
});

const cutDown = (days: NumberRange, sign: string, holdsDays = 10): Crop["harvest"] => ({
  ...HARVEST_DEFAULTS,
  from: "sowing",
  days: commonPractice(days),
  kind: "once",
  holdsDays: commonPractice(holdsDays),
  verb: "Cut down",
  sign,
  how: "Cut it before it sets seed, let it wilt a few days, and dig it in a spade's depth, or leave it as a mulch. The next crop waits two to three weeks.",
});

/** Phacelia: quick, of no vegetable's family, and loved by bees. */
export const PHACELIA: Crop = {
  ...GREEN,
  key: "phacelia",
  one: "phacelia",
  many: "phacelia",
  alsoCalled: ["green manure", "cover crop", "lacy phacelia", "tansy phacelia"],
  family: "borage family",
  frost: commonPractice("frost tolerant"),
  outdoors: broadcast(-2, 45),
  harvest: cutDown([50, 65], "The first flowers open; leave a corner for the bees."),
};

/** White mustard: the quickest, and of the cabbage family, which its rotation counts. */
export const MANURE_MUSTARD: Crop = {
  ...GREEN,
  key: "white-mustard",
  one: "white mustard",
  many: "white mustard",
  alsoCalled: [
    "green manure mustard",
    "mustard green manure",
    "field mustard",
    "cover crop mustard",
  ],
  family: "cabbage family",
  frost: commonPractice("frost tolerant"),
  outdoors: broadcast(-3, 45),
  harvest: cutDown([35, 50], "It is knee-high, and the first flower buds show."),
};

/** Buckwheat: for a summer gap of six weeks; the first frost kills it. */
export const BUCKWHEAT: Crop = {
  ...GREEN,
  key: "buckwheat",
  one: "buckwheat",
  many: "buckwheat",
  alsoCalled: [],
  family: "knotweed family",
  frost: commonPractice("tender"),
  outdoors: broadcast(1, 55),
  warmth: WARM_WARMTH,
  harvest: cutDown([35, 42], "It has flowered for a week, and no seed is brown.", 7),
};

/** Clover: feeds the soil with nitrogen of its own for a season or a winter. */
export const CLOVER: Crop = {
  ...GREEN,
  key: "clover",
  one: "clover",
  many: "clover",
  alsoCalled: ["crimson clover", "red clover", "white clover", "clovers"],
  family: "pea family",
  frost: commonPractice("very hardy"),
  outdoors: broadcast(-3, 45),
  winter: winterLife(-12, "after it", { weeks: [6, 12] }),
  harvest: cutDown([70, 90], "The first flower heads open.", 14),
};

/** Rye: sown as beds come free, it holds the soil through winter and is cut in spring. */
export const RYE: Crop = {
  ...GREEN,
  key: "rye",
  one: "rye",
  many: "rye",
  alsoCalled: ["winter rye", "cereal rye", "grazing rye", "forage rye"],
  family: "grass family",
  frost: commonPractice("very hardy"),
  outdoors: broadcast(18, 40),
  winter: winterLife(-25, "after it", { weeks: [0, 12] }),
  warmth: null,
  harvest: cutDown([200, 225], "It is knee-high, and no ear shows yet.", 14),
};

/** What is sown to feed and hold the soil. */
export const GREEN_MANURES: readonly Crop[] = [PHACELIA, MANURE_MUSTARD, BUCKWHEAT, CLOVER, RYE];
