import type { CoverFacts, Crop, NumberRange, Outdoors, SettingOut, Thinning } from "./facts.ts";
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
import { CABBAGE_NET, COOL_SOIL_C, HEAD_CARE, RAISED_COOL, RAISED_SHORT } from "./raising.ts";
import { winterLife } from "./winter-life.ts";

/** Cabbage kin come up as cabbage does: they are one species or its sisters, with seed of one size. */
const AS_CABBAGE = {
  kind: "table",
  row: "cabbage",
  standsIn: commonPractice("cabbage"),
} as const;

/** What cabbages that are raised indoors have in common: heads and sprouts. */
const HEADED = {
  ...CROP_DEFAULTS,
  family: "cabbage family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: AS_CABBAGE,
  indoors: RAISED_COOL,
  covers: [CABBAGE_NET],
  warmth: COOL_WARMTH,
  care: HEAD_CARE,
} as const satisfies Partial<Crop>;

/** What is picked leaf by leaf is looked after as heads are, and is fed to go on. */
const LEAFY_CARE = HEAD_CARE.map((care) =>
  care.practice === "feed"
    ? { ...care, why: "It is picked for months, and makes new leaves as long as it is fed." }
    : care,
);

/** What is picked for months stays under its net until the butterflies are gone. */
const LONG_NET: CoverFacts = {
  ...CABBAGE_NET,
  off: "first frost",
  offDays: commonPractice<NumberRange>([-21, 0]),
  offSign: "Cold nights have come, and no white butterflies fly.",
};

type PlantSpacing = Pick<SettingOut, "apartCm" | "rowsCm">;

/** Where no root flies lay at the foot of a stem, card is for cutworms alone. */
const CUTWORM_RING =
  "Where cutworms bite stems off, push a ring of card into the soil round each. Water in";

/** Setting out with what every cabbage plant needs then, a number of weeks from the last frost. */
const collared = (frostWeeks: number, room: PlantSpacing): SettingOut => ({
  ...room,
  weeksFromLastFrost: published(frostWeeks, CITE.purdue),
  soilMinC: null,
  things: ["collars of card", "a net, hoops and pegs", "a watering can"],
  how: [
    "Plant up to the first leaves and firm hard. ",
    {
      regional: {
        australia: CUTWORM_RING,
        "new zealand": CUTWORM_RING,
        otherwise: "Lay a collar flat round each stem, water in,",
      },
    },
    " and close the net the same hour.",
  ],
});

/** The spacing of a big head, in rows so far apart [in]. */
const headRoom = (rowsIn: number): PlantSpacing => ({
  apartCm: published(18 * 2.54, CITE.colorado),
  rowsCm: published(rowsIn * 2.54, CITE.missouri),
});

/** Sown half an inch deep in its place, as early as the soil allows. */
const sown = (rowsIn: number, frostWeeks: number): Outdoors => ({
  ...OUTDOORS_DEFAULTS,
  depthCm: commonPractice(inchRange(0.25, 0.5)),
  apartCm: commonPractice(inchRange(2, 3)),
  rowsCm: published(rowsIn * 2.54, CITE.missouri),
  soilMinC: COOL_SOIL_C,
  weeksFromLastFrost: published(frostWeeks, CITE.purdue),
});

const thinned = (apart: Thinning["apartCm"]): readonly Thinning[] => [
  {
    step: "1",
    daysAfterUp: commonPractice([18, 26]),
    heightCm: THINNED_AT,
    apartCm: apart,
    how: "Leave the sturdiest, and lift the rest: they grow on in a gap, or go in a salad.",
  },
];

/** Broccoli: a head, then side shoots for weeks. */
export const BROCCOLI: Crop = {
  ...HEADED,
  key: "broccoli",
  one: "broccoli",
  many: "broccoli",
  alsoCalled: ["calabrese", "heading broccoli"],
  settingOut: collared(-3, headRoom(30)),
  outdoors: sown(30, -3),
  thinnings: thinned(published(inchRange(18, 18), CITE.colorado)),
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 7, days: 28 }) },
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: published([70, 80], CITE.missouri),
    kind: "again and again",
    bearsDays: fromMemory([21, 35], "Virginia, Illinois and Minnesota harvest tables"),
    holdsDays: commonPractice(5),
    verb: "Cut",
    sign: "The head is full and its buds still tight, before any yellow shows.",
    how: "Cut the head with a hand of stalk; leave the plant, and cut side shoots twice a week.",
  },
};

/** Cauliflower: one white head, tied in its leaves, spoilt by any check. */
export const CAULIFLOWER: Crop = {
  ...HEADED,
  key: "cauliflower",
  one: "cauliflower",
  many: "cauliflowers",
  alsoCalled: ["caulis", "summer cauliflower"],
  kinds: ["romanesco", "romanescos"],
  comesUp: { kind: "table", row: "cauliflower", standsIn: null },
  settingOut: collared(-2, headRoom(24)),
  outdoors: {
    ...sown(24, -2),
    soilMinC: derived(
      (50 - 32) / 1.8,
      CITE.harrington,
      "none in 100 come up at 41 °F and 58 at 50 °F",
    ),
  },
  thinnings: thinned(published(inchRange(18, 18), CITE.colorado)),
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 7, days: 21 }) },
  care: [
    ...HEAD_CARE,
    {
      practice: "fill in and blanch",
      step: "1",
      from: "first harvest",
      days: commonPractice([-12, -7]),
      verb: "Tie leaves over",
      how: "Draw the big leaves up over the young head and tie them loosely; look under them every few days.",
      sign: "The white head is as big as an egg.",
      why: "Sun turns it yellow and strong.",
      caution: null,
      harm: "this week",
      minutes: 10,
      needs: ["string"],
    },
  ],
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: published([65, 75], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(5),
    verb: "Cut",
    sign: "The head is as wide as a hand, white and close.",
    how: "Cut with a few leaves on to guard it. One that begins to open won't wait.",
  },
};

/** Kale: leaves from below for months, sweeter after frost. */
export const KALE: Crop = {
  ...HEADED,
  covers: [LONG_NET],
  care: LEAFY_CARE,
  key: "kale",
  one: "kale",
  many: "kale",
  alsoCalled: ["curly kale", "borecole", "black kale", "lacinato kale"],
  kinds: ["cavolo nero", "tuscan kale", "red kale", "russian kale", "dinosaur kale"],
  frost: published("very hardy", CITE.purdue),
  indoors: RAISED_SHORT,
  settingOut: collared(-4, {
    apartCm: derived(
      12 * 2.54,
      CITE.missouri,
      "8 inches given there, half as much again to pick from for months",
    ),
    rowsCm: published(24 * 2.54, CITE.missouri),
  }),
  outdoors: sown(24, -4),
  thinnings: thinned(
    derived(inchRange(8, 12), CITE.missouri, "8 inches given there, up to half again"),
  ),
  winter: winterLife(-12, "through it", { weeks: [8, 16], inPlace: 26 }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([50, 65], CITE.missouri),
    kind: "again and again",
    bearsDays: commonPractice([70, 120]),
    holdsDays: commonPractice(14),
    verb: "Pick",
    sign: "The lower leaves are as long as a hand.",
    how: "Snap the lowest leaves off downwards and leave the crown. Frost sweetens it.",
  },
};

/** Collards: kale's flat-leaved sister, good in heat and in frost. */
export const COLLARDS: Crop = {
  ...HEADED,
  covers: [LONG_NET],
  care: LEAFY_CARE,
  key: "collards",
  one: "collards",
  many: "collards",
  alsoCalled: ["collard", "collard greens"],
  frost: published("very hardy", CITE.purdue),
  indoors: RAISED_SHORT,
  settingOut: collared(-4, {
    apartCm: published(12 * 2.54, CITE.missouri),
    rowsCm: published(24 * 2.54, CITE.missouri),
  }),
  outdoors: sown(24, -4),
  thinnings: thinned(published(inchRange(12, 12), CITE.missouri)),
  winter: winterLife(-10, "through it", { weeks: [8, 16] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([85, 95], CITE.missouri),
    kind: "again and again",
    bearsDays: commonPractice([60, 100]),
    holdsDays: commonPractice(14),
    verb: "Pick",
    sign: "The lower leaves are as big as a hand spread out.",
    how: "Pick from the bottom up and leave the crown to grow on.",
  },
};

/** Brussels sprouts: a long season, sprouts from the bottom up after the first frosts. */
export const BRUSSELS_SPROUTS: Crop = {
  ...HEADED,
  key: "brussels-sprouts",
  one: "Brussels sprouts",
  many: "Brussels sprouts",
  alsoCalled: ["brussels sprouts", "brussels sprout", "brussel sprouts", "sprouts"],
  indoors: RAISED_SHORT,
  settingOut: collared(-3, {
    apartCm: commonPractice(24 * 2.54),
    rowsCm: commonPractice(30 * 2.54),
  }),
  outdoors: null,
  starts: ["seed indoors", "plants"],
  care: [
    ...HEAD_CARE,
    {
      practice: "stake and train",
      step: "1",
      from: "in place",
      days: commonPractice([42, 63]),
      verb: "Stake",
      how: "Drive a stake beside each plant, clear of the stem, and tie it once.",
      sign: "They stand knee high.",
      why: "Tall stems full of sprouts lean over in autumn wind.",
      caution: null,
      harm: "when you can",
      minutes: 15,
      needs: ["stakes and ties"],
    },
    {
      practice: "stop the tops",
      step: "1",
      from: "first frost",
      days: commonPractice([-28, -14]),
      verb: "Take the tops off",
      how: "Cut the small head of leaves at the top; it is good to eat.",
      sign: "The lowest sprouts are as big as a thumbnail.",
      why: "The sprouts below then fill together before the cold.",
      caution: null,
      harm: "when you can",
      minutes: 10,
      needs: ["a knife"],
    },
  ],
  winter: winterLife(-10, "through it", { sweetened: true, inPlace: 26 }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: commonPractice([90, 110]),
    kind: "again and again",
    bearsDays: commonPractice([28, 56]),
    holdsDays: commonPractice(21),
    verb: "Pick",
    sign: "The lowest sprouts are hard and as big as a walnut.",
    how: "Snap them off from the bottom up. A frost or two makes them sweet.",
  },
};

/** Kohlrabi: a swollen stem in eight weeks, pulled before it turns to wood. */
export const KOHLRABI: Crop = {
  ...HEADED,
  key: "kohlrabi",
  one: "kohlrabi",
  many: "kohlrabi",
  alsoCalled: ["kohlrabis", "turnip cabbage"],
  frost: published("very hardy", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  care: [],
  indoors: RAISED_SHORT,
  settingOut: collared(-4, {
    apartCm: published(8 * 2.54, CITE.colorado),
    rowsCm: commonPractice(12 * 2.54),
  }),
  outdoors: {
    ...sown(24, -4),
    apartCm: commonPractice(inchRange(1, 2)),
    rowsCm: commonPractice(12 * 2.54),
  },
  thinnings: thinned(
    derived(inchRange(4, 6), CITE.missouri, "4 inches given there, up to half again"),
  ),
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 7, days: 28 }) },
  repeatEveryDays: fromMemory([14, 14], "usual extension succession lists"),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([55, 65], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(10),
    verb: "Cut",
    sign: "The round stem is between a golf ball and a tennis ball.",
    how: "Cut under the ball, the biggest first. Old ones are woody.",
  },
};

/** The cabbages with heads, sprouts and stems; one family with the greens and roots. */
export const BRASSICAS: readonly Crop[] = [
  BROCCOLI,
  CAULIFLOWER,
  KALE,
  COLLARDS,
  BRUSSELS_SPROUTS,
  KOHLRABI,
];
