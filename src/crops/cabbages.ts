import type { Crop, Warmth } from "./facts.ts";
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
  NO_LIMITS,
  OUTDOORS_DEFAULTS,
  published,
  THINNED_AT,
} from "./figures.ts";
import { kindsOf } from "./kinds.ts";
import { CABBAGE_NET, HEAD_CARE } from "./raising.ts";
import { STORE_CABBAGES } from "./storing.ts";
import { winterLife } from "./winter-life.ts";

const BASE_40: Warmth = { ...COOL_WARMTH, baseC: published((40 - 32) / 1.8, CITE.peet) };

/** Cabbage: raised indoors, bought or sown in its place; one head a plant. */
export const CABBAGE: Crop = {
  ...CROP_DEFAULTS,
  key: "cabbage",
  one: "cabbage",
  many: "cabbages",
  alsoCalled: [
    "summer cabbage",
    "summer cabbages",
    "head cabbage",
    "red cabbage",
    "white cabbage",
    "savoy cabbage",
  ],
  kinds: kindsOf(["winter", "autumn", "storage", "pointed"], "cabbage", "cabbages"),
  family: "cabbage family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: { kind: "table", row: "cabbage", standsIn: null },
  indoors: {
    weeksToSettingOut: published([5, 7], CITE.colorado),
    soilTempC: commonPractice((65 - 32) / 1.8),
    depthCm: commonPractice(inchRange(0.25, 0.5)),
    potOnDaysAfterUp: null,
    hardenDays: commonPractice(7),
    nightFloorC: derived(
      (40 - 32) / 1.8,
      CITE.coloradoFrost,
      "the warmth from which its class grows there, 40 °F",
    ),
  },
  settingOut: {
    weeksFromLastFrost: published(-3, CITE.purdue),
    soilMinC: null,
    apartCm: published(18 * 2.54, CITE.colorado),
    rowsCm: published(24 * 2.54, CITE.missouri),
    things: ["collars of card", "a net, hoops and pegs", "a watering can"],
    how: "Plant up to the first leaves, firm hard so that a tug on a leaf does not lift them, and water in. Where cutworms bite stems off, push a ring of card into the soil round each.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.colorado),
    apartCm: commonPractice(inchRange(2, 3)),
    rowsCm: published(24 * 2.54, CITE.missouri),
    soilMinC: derived(
      (46 - 32) / 1.8,
      CITE.harrington,
      "27 in 100 come up at 41 °F and 78 at 50 °F; half at about 46 °F",
    ),
    weeksFromLastFrost: published(-3, CITE.purdue),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([18, 26]),
      heightCm: THINNED_AT,
      apartCm: derived(
        inchRange(12, 18),
        CITE.colorado,
        "18 inches given there, the 12 of Missouri's G6201 for small heads",
      ),
      how: "Leave the sturdiest. Lift the rest with a trowel: they will grow on where there is a gap.",
    },
  ],
  covers: [CABBAGE_NET],
  warmth: BASE_40,
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 7, days: 28 }) },
  winter: winterLife(-8, "after it", { weeks: [6, 13] }),
  care: [...HEAD_CARE, STORE_CABBAGES],
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: published([70, 80], CITE.missouri),
    kind: "once",
    holdsDays: commonPractice(14),
    verb: "Cut",
    sign: "The head is hard all over when you press it.",
    how: "Cut under the head with a strong knife. Heads that are ripe split after rain, so take those first.",
  },
};

/** Radish: three or four weeks from seed to salad, sown little and often. */
export const RADISH: Crop = {
  ...CROP_DEFAULTS,
  key: "radish",
  one: "radish",
  many: "radishes",
  alsoCalled: ["spring radish", "spring radishes", "salad radish", "salad radishes"],
  family: "cabbage family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "radish", standsIn: null },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.harrington),
    apartCm: commonPractice(inchRange(0.5, 1)),
    rowsCm: commonPractice(9 * 2.54),
    soilMinC: published((45 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(-3, CITE.purdue),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([6, 10]),
      heightCm: THINNED_AT,
      apartCm: derived(
        inchRange(1, 2),
        CITE.northDakota,
        "an inch given there, up to one more for bigger roots",
      ),
      how: "Crowded radishes make leaf and no root. The thinnings are good in a salad.",
    },
  ],
  repeatEveryDays: fromMemory([7, 10], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  eaten: "root",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([25, 35]),
    kind: "once",
    holdsDays: commonPractice(8),
    verb: "Pull",
    sign: "Roots as wide as a thumbnail show at the soil.",
    how: "Pull the biggest first and all within a week or so; left longer they turn hollow and hot.",
  },
};

/** Winter radish, daikon and black radish: sown as summer goes for big roots that keep; in spring it runs to seed. */
export const WINTER_RADISH: Crop = {
  ...RADISH,
  key: "winter-radish",
  one: "winter radish",
  many: "winter radishes",
  alsoCalled: [
    "daikon",
    "daikons",
    "daikon radish",
    "mooli",
    "moolis",
    "black radish",
    "black radishes",
  ],
  frost: commonPractice("frost tolerant"),
  comesUp: {
    kind: "table",
    row: "radish",
    standsIn: houseRule("radish", "the same kind of plant and seed, grown for longer"),
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.5, 1)),
    apartCm: commonPractice(inchRange(1, 2)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: commonPractice((45 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(-2),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([10, 16]),
      heightCm: THINNED_AT,
      apartCm: commonPractice(inchRange(4, 6)),
      how: "Pull the weakest on a damp day; the thinnings are good to eat.",
    },
  ],
  repeatEveryDays: null,
  limits: {
    ...NO_LIMITS,
    longDays: commonPractice({ hours: 13.5, aboveC: 12 }),
    coldYoung: commonPractice({ belowC: 8, days: 14 }),
  },
  forAutumn: true,
  winter: winterLife(-4, "through it"),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([55, 70]),
    kind: "once",
    holdsDays: commonPractice(28),
    verb: "Lift",
    sign: "The root's shoulder stands out of the soil, as thick as its kind grows.",
    how: "Loosen long roots with a fork before you pull, twist the tops off, and keep them cold and damp.",
  },
};

/** Turnip: thinned once, pulled young. */
export const TURNIP: Crop = {
  ...CROP_DEFAULTS,
  key: "turnip",
  one: "turnip",
  many: "turnips",
  alsoCalled: ["summer turnip", "summer turnips", "white turnip", "white turnips"],
  family: "cabbage family",
  frost: published("very hardy", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "turnip", standsIn: null },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.5, 0.5), CITE.harrington),
    apartCm: commonPractice(inchRange(1, 1)),
    rowsCm: derived(18 * 2.54, CITE.missouri, "the rows of turnip greens given there"),
    soilMinC: published((50 - 32) / 1.8, CITE.texas),
    weeksFromLastFrost: published(-4, CITE.purdue),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([12, 18]),
      heightCm: THINNED_AT,
      apartCm: derived(
        inchRange(3, 4),
        CITE.missouri,
        "3 inches given there for turnip greens, up to an inch more for roots",
      ),
      how: "Pull the weakest on a damp day and firm the soil back. The tops are good to eat.",
    },
  ],
  warmth: BASE_40,
  limits: { ...NO_LIMITS, coldYoung: commonPractice({ belowC: 7, days: 21 }) },
  eaten: "root",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: derived(
      [49, 59],
      CITE.missouri,
      "35 to 45 days given there for turnip greens, two weeks more for roots",
    ),
    kind: "once",
    holdsDays: commonPractice(14),
    verb: "Pull",
    sign: "Roots between a golf ball and a tennis ball stand half out of the soil.",
    how: "Pull them young, the biggest first, and twist the tops off; old ones turn woody.",
  },
};

/** The cabbage family, for rotations and shared pests. */
export const CABBAGE_FAMILY: readonly Crop[] = [CABBAGE, RADISH, WINTER_RADISH, TURNIP];
