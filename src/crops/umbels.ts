import type { Crop, Indoors } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  fromMemory,
  HARVEST_DEFAULTS,
  inchRange,
  NO_LIMITS,
  OUTDOORS_DEFAULTS,
  published,
  THINNED_AT,
} from "./figures.ts";
import { RAISED_COOL } from "./raising.ts";
import { winterLife } from "./winter-life.ts";

/** Ten weeks and more, since the seed is dust and wants light; never cold while young, or it bolts. */
const RAISED_LONG: Indoors = {
  ...RAISED_COOL,
  weeksToSettingOut: fromMemory([10, 12], "Knott's Handbook for Vegetable Growers"),
  soilTempC: commonPractice(20),
  depthCm: commonPractice([0, 0]),
  potOnDaysAfterUp: commonPractice([21, 35]),
  nightFloorC: commonPractice(10),
};

const UMBEL_SETTING_OUT = {
  soilMinC: commonPractice(10),
  rowsCm: commonPractice(15 * 2.54),
  things: ["a watering can"],
} as const;

/** Celery: rich wet soil, never dry, never cold while young. */
export const CELERY: Crop = {
  ...CROP_DEFAULTS,
  key: "celery",
  one: "celery",
  many: "celery",
  alsoCalled: ["stalk celery", "self-blanching celery"],
  family: "carrot family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed indoors", "plants"],
  comesUp: { kind: "table", row: "celery", standsIn: null },
  indoors: RAISED_LONG,
  settingOut: {
    ...UMBEL_SETTING_OUT,
    weeksFromLastFrost: commonPractice(1),
    apartCm: commonPractice(9 * 2.54),
    how: "Plant in a block so that they shade each other. Water in, and never let them dry.",
  },
  care: [
    {
      practice: "feed",
      step: "1",
      from: "in place",
      days: commonPractice([28, 42]),
      verb: "Feed",
      how: "Compost or plant food between the plants, and a deep watering.",
      sign: null,
      why: "It is the hungriest and thirstiest of all.",
      caution: "Plant food: as much as the label says, no more.",
      harm: "when you can",
      minutes: 10,
      needs: ["compost or plant food"],
    },
    {
      practice: "fill in and blanch",
      step: "1",
      from: "first harvest",
      days: commonPractice([-21, -14]),
      verb: "Wrap",
      how: "Tie the stalks together and wrap them in card, leaves free.",
      sign: "They stand as high as your forearm is long.",
      why: "Two or three weeks in the dark make the stalks mild.",
      caution: null,
      harm: "when you can",
      minutes: 15,
      needs: ["card and string"],
    },
  ],
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 13, days: 12 }) },
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: commonPractice([85, 110]),
    kind: "once",
    holdsDays: commonPractice(21),
    verb: "Cut",
    sign: "The outer stalks are as thick as a thumb.",
    how: "Take outer stalks as you need them, or cut it whole before hard frost.",
  },
};

/** Celeriac: celery for its root, lifted after the first light frosts. */
export const CELERIAC: Crop = {
  ...CROP_DEFAULTS,
  key: "celeriac",
  one: "celeriac",
  many: "celeriac",
  alsoCalled: ["celery root", "turnip-rooted celery"],
  family: "carrot family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed indoors", "plants"],
  comesUp: { kind: "table", row: "celery", standsIn: commonPractice("celery") },
  indoors: RAISED_LONG,
  settingOut: {
    ...UMBEL_SETTING_OUT,
    weeksFromLastFrost: commonPractice(1),
    apartCm: commonPractice(12 * 2.54),
    how: "Set them no deeper than they stood: the root wants to sit on the soil. Water in.",
  },
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 13, days: 12 }) },
  warmth: COOL_WARMTH,
  eaten: "root",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: commonPractice([100, 120]),
    kind: "once",
    holdsDays: commonPractice(30),
    verb: "Lift",
    sign: "The root is as big as a fist or bigger.",
    how: "Lift before hard frost, trim leaves and roots, and keep it cold and damp.",
  },
};

/** Fennel: a bulb for autumn; long days and any check make it bolt. */
export const FENNEL: Crop = {
  ...CROP_DEFAULTS,
  key: "fennel",
  one: "fennel",
  many: "fennel",
  alsoCalled: ["florence fennel", "bulb fennel", "finocchio"],
  family: "carrot family",
  frost: commonPractice("frost tolerant"),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: { kind: "table", row: "parsley", standsIn: commonPractice("parsley") },
  indoors: { ...RAISED_COOL, weeksToSettingOut: commonPractice([3, 5]) },
  settingOut: {
    ...UMBEL_SETTING_OUT,
    weeksFromLastFrost: commonPractice(1),
    apartCm: commonPractice(9 * 2.54),
    how: "Don't touch the roots: it bolts when they are hurt. Water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.25, 0.5)),
    apartCm: commonPractice(inchRange(2, 3)),
    rowsCm: commonPractice(15 * 2.54),
    soilMinC: commonPractice((55 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(1),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([18, 28]),
      heightCm: commonPractice(inchRange(3, 4)),
      apartCm: commonPractice(inchRange(8, 10)),
      how: "Leave the sturdiest; the thinnings taste of it too.",
    },
  ],
  limits: { ...NO_LIMITS, longDays: commonPractice({ hours: 15, aboveC: 16 }) },
  care: [
    {
      practice: "fill in and blanch",
      step: "1",
      from: "first harvest",
      days: commonPractice([-21, -14]),
      verb: "Earth up",
      how: "Draw a little soil up to the bulbs.",
      sign: "The bulb is as big as an egg.",
      why: "It keeps them white and steady.",
      caution: null,
      harm: "when you can",
      minutes: 10,
      needs: ["a hoe"],
    },
  ],
  warmth: COOL_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([75, 90]),
    kind: "once",
    holdsDays: commonPractice(10),
    verb: "Cut",
    sign: "The bulb is as big as a fist.",
    how: "Cut above the root: small shoots follow.",
  },
};

const HERB_ROWS = {
  ...OUTDOORS_DEFAULTS,
  depthCm: commonPractice(inchRange(0.25, 0.5)),
  apartCm: commonPractice(inchRange(1, 2)),
  rowsCm: commonPractice(12 * 2.54),
  soilMinC: commonPractice((50 - 32) / 1.8),
  weeksFromLastFrost: commonPractice(-2),
} as const;

/** Cilantro: leaf in six weeks, seed head soon after; sown again and again. */
export const CILANTRO: Crop = {
  ...CROP_DEFAULTS,
  key: "cilantro",
  one: "cilantro",
  many: "cilantro",
  alsoCalled: ["coriander", "leaf coriander"],
  family: "carrot family",
  frost: commonPractice("frost tolerant"),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "parsley", standsIn: commonPractice("parsley") },
  outdoors: HERB_ROWS,
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([12, 20]),
      heightCm: THINNED_AT,
      apartCm: commonPractice(inchRange(3, 4)),
      how: "The thinnings go in the kitchen.",
    },
  ],
  limits: { ...NO_LIMITS, longDays: commonPractice({ hours: 14, aboveC: 20 }) },
  repeatEveryDays: fromMemory([14, 21], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  winter: winterLife(-6, "through it if sown for it", { weeks: [6, 10] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([45, 60]),
    kind: "cut and come again",
    cuts: { everyDays: commonPractice([14, 18]), times: commonPractice([2, 3]) },
    holdsDays: commonPractice(7),
    verb: "Cut",
    sign: "The plants stand a hand high and leaves are still broad.",
    how: "Cut outer leaves low down. Feathery leaves mean it is going to seed.",
  },
};

/** Dill: sown in its place, for leaf, then flower heads for pickles. */
export const DILL: Crop = {
  ...CILANTRO,
  key: "dill",
  winter: null,
  one: "dill",
  many: "dill",
  alsoCalled: ["dill weed"],
  comesUp: { kind: "table", row: "parsley", standsIn: commonPractice("parsley") },
  limits: NO_LIMITS,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([45, 60]),
    kind: "cut and come again",
    cuts: { everyDays: commonPractice([12, 18]), times: commonPractice([2, 3]) },
    holdsDays: commonPractice(10),
    verb: "Cut",
    sign: "The plants stand a hand high.",
    how: "Cut leaf as you need it, and leave some to flower for pickles and hoverflies.",
  },
};

/** Chervil: like cilantro, but it wants it cool and half shaded. */
export const CHERVIL: Crop = {
  ...CILANTRO,
  key: "chervil",
  one: "chervil",
  many: "chervil",
  alsoCalled: ["leaf chervil", "garden chervil"],
  limits: { ...NO_LIMITS, longDays: commonPractice({ hours: 14, aboveC: 17 }) },
  repeatEveryDays: commonPractice([14, 28]),
  harvest: {
    ...CILANTRO.harvest,
    days: commonPractice([40, 55]),
    sign: "The plants stand a hand high.",
    how: "Cut outer leaves low down, before any flower stalk shows.",
  },
};

/** Celery and its kin, and the herbs of the family. */
export const UMBELS: readonly Crop[] = [CELERY, CELERIAC, FENNEL, CILANTRO, CHERVIL, DILL];
