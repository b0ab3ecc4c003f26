import type { Care, Crop } from "./facts.ts";
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
  SETS_BELOW,
  WARM_WARMTH,
} from "./figures.ts";
import { TENDER_NIGHT_C } from "./raising.ts";

const RAW = "Cook beans before you eat any: raw ones, dry ones above all, can make you ill.";

/** A look for bean beetles, while they are few. */
export const BEAN_LOOK: Care = {
  practice: "scout",
  step: "1",
  from: "up",
  days: commonPractice([14, 24]),
  verb: "Check",
  how: "Crush yellow eggs and spiny yellow grubs under the leaves. Go among them only when leaves are dry.",
  sign: "Leaves eaten to lace.",
  why: "Wet leaves pass on disease, and the first beetles bring the rest.",
  caution: "Sprays: read the label first, and follow it.",
  harm: "when you can",
  minutes: 10,
  needs: [],
  regions: ["north america"],
};

/** Poles, put up first. */
const POLES = {
  things: ["poles or a trellis taller than you"],
  how: "Put them up before the seed goes in, tied fast at the top. Late in summer they catch the wind.",
  first: null,
} as const satisfies Crop["support"];

/** Vines at the top of their poles. */
const STOP_VINES: Care = {
  practice: "stop the tops",
  step: "1",
  from: "up",
  days: commonPractice([40, 55]),
  verb: "Pinch the tips off",
  how: "Pinch out the tips where the vines have come to the top of their poles.",
  sign: "Tips wave above the poles.",
  why: "They branch and bear lower down, where you can reach.",
  caution: null,
  harm: "when you can",
  minutes: 10,
  needs: [],
};

const LEAD_UP: Care = {
  practice: "stake and train",
  step: "1",
  from: "up",
  days: commonPractice([12, 20]),
  verb: "Start … up their poles",
  how: "Wind each shoot once around its own pole, the way it turns by itself. Tie it if it falls.",
  sign: "Shoots feel about for something to hold.",
  why: "Shoots that catch each other make one tangle.",
  caution: null,
  harm: "when you can",
  minutes: 10,
  needs: ["soft string"],
};

/** Bush bean: tender, sown into warm soil, picked for three weeks. */
export const BEAN: Crop = {
  ...CROP_DEFAULTS,
  key: "bean",
  one: "bean",
  many: "beans",
  alsoCalled: [
    "bush bean",
    "bush beans",
    "snap bean",
    "snap beans",
    "green bean",
    "green beans",
    "french bean",
    "french beans",
    "dwarf bean",
    "dwarf beans",
    "dwarf french bean",
    "dwarf french beans",
  ],
  family: "pea family",
  frost: published("tender", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "bean_snap", standsIn: null },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: derived(
      inchRange(1, 1),
      CITE.idaho,
      "three times the seed's width, about a third of an inch",
    ),
    apartCm: published(inchRange(4, 4), CITE.coloradoBlocks),
    rowsCm: derived(18 * 2.54, CITE.coloradoBlocks, "12 inches given there, half again to pick by"),
    soilMinC: published((55 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(0, CITE.purdue),
    soilMaxC: derived(
      (85 - 32) / 1.8,
      CITE.harrington,
      "90 in 100 come up at 77 °F and 47 at 86 °F; half at about 85 °F",
    ),
  },
  care: [BEAN_LOOK],
  repeatEveryDays: fromMemory([10, 14], "usual extension succession lists"),
  warmth: { ...WARM_WARMTH, baseC: published((50 - 32) / 1.8, CITE.peet) },
  eaten: "fruit",
  setsBelow: SETS_BELOW,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([50, 60]),
    kind: "again and again",
    bearsDays: commonPractice([18, 28]),
    holdsDays: commonPractice(3),
    verb: "Pick",
    sign: "Pods are as thick as a pencil and snap, before the beans in them show.",
    how: "Pick every two or three days with both hands, so that the plants don't tear. Missed pods end the crop.",
    caution: RAW,
  },
};

/** Pole bean: the bush bean's tall sister, on poles, picked for twice as long. */
export const POLE_BEAN: Crop = {
  ...BEAN,
  key: "pole-bean",
  one: "pole bean",
  many: "pole beans",
  alsoCalled: [
    "climbing bean",
    "climbing beans",
    "climbing french bean",
    "climbing french beans",
    "vining bean",
    "vining beans",
  ],
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: derived(
      inchRange(1, 1),
      CITE.idaho,
      "three times the seed's width, about a third of an inch",
    ),
    apartCm: commonPractice(inchRange(6, 6)),
    rowsCm: commonPractice(36 * 2.54),
    soilMinC: published((55 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(0, CITE.purdue),
    soilMaxC: derived(
      (85 - 32) / 1.8,
      CITE.harrington,
      "90 in 100 come up at 77 °F and 47 at 86 °F; half at about 85 °F",
    ),
    how: "Sow at the foot of each pole, in a ring or along the trellis.",
  },
  support: POLES,
  care: [LEAD_UP, BEAN_LOOK, STOP_VINES],
  repeatEveryDays: null,
  harvest: {
    ...BEAN.harvest,
    days: fromMemory([60, 70], CITE.missouri),
    bearsDays: commonPractice([42, 63]),
    how: "Pick every two or three days, high and low, with both hands. Missed pods end the crop.",
  },
};

/** Runner bean: red flowers on tall poles, fond of damp and of bees; tender, but it grows and sets in summers too cool for its kin. */
export const RUNNER_BEAN: Crop = {
  ...CROP_DEFAULTS,
  key: "runner-bean",
  one: "runner bean",
  many: "runner beans",
  alsoCalled: [
    "runner",
    "runners",
    "scarlet runner",
    "scarlet runners",
    "scarlet runner bean",
    "scarlet runner beans",
  ],
  family: "pea family",
  frost: derived("tender", CITE.purdue, "the class of snap bean there, its near kin"),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "bean_snap",
    standsIn: houseRule(
      "bean_snap",
      "near kin, of the same warm soil; both are up in one to two weeks",
    ),
  },
  indoors: {
    weeksToSettingOut: commonPractice([3, 4]),
    soilTempC: commonPractice((65 - 32) / 1.8),
    depthCm: commonPractice(inchRange(1, 2)),
    potOnDaysAfterUp: null,
    hardenDays: derived(7, CITE.maryland, "the shorter of the one to two weeks given there"),
    nightFloorC: TENDER_NIGHT_C,
  },
  settingOut: {
    weeksFromLastFrost: commonPractice(1),
    soilMinC: derived((55 - 32) / 1.8, CITE.kansas, "given there for snap bean, its near kin"),
    apartCm: commonPractice(8 * 2.54),
    rowsCm: commonPractice(36 * 2.54),
    things: ["a watering can"],
    how: "Put up the poles first, and plant one at the foot of each. Water in well.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(2, 2)),
    apartCm: commonPractice(inchRange(8, 8)),
    rowsCm: commonPractice(36 * 2.54),
    soilMinC: derived((55 - 32) / 1.8, CITE.kansas, "given there for snap bean, its near kin"),
    weeksFromLastFrost: derived(0, CITE.purdue, "given there for snap bean, its near kin"),
    how: "Sow at the foot of each pole, with a few to spare at the row's end.",
  },
  flowers: { daysBeforeHarvest: commonPractice([18, 24]), forBees: true },
  support: POLES,
  care: [LEAD_UP, BEAN_LOOK, STOP_VINES],
  warmth: COOL_WARMTH,
  eaten: "fruit",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([75, 90]),
    kind: "again and again",
    bearsDays: commonPractice([42, 63]),
    holdsDays: commonPractice(3),
    verb: "Pick",
    sign: "Pods snap clean and no beans swell in them yet.",
    how: "Pick every two or three days and take off old pods too, for one with ripe beans stops the rest.",
    caution: "Never eat runner beans raw, dry ones least of all: boil them well.",
  },
};

/** The beans of warm soil whose pods are eaten, by name. */
export const BEANS: readonly Crop[] = [BEAN, POLE_BEAN, RUNNER_BEAN];
