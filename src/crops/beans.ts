import type { Crop, Outdoors } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  common,
  derived,
  inchRange,
  memory,
  NO_LIMITS,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
  WARM_WARMTH,
} from "./figures.ts";

/** What the tender beans have in common: warm soil, two seeds to a place, no frost. */
const TENDER = {
  ...PLAIN,
  family: "pea family",
  frost: published("tender", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "bean_snap", standsIn: common("bean_snap") },
  warmth: { ...WARM_WARMTH, baseC: published((50 - 32) / 1.8, CITE.peet) },
  eaten: "fruit",
} as const satisfies Partial<Crop>;

const sown = (apartIn: number, rowsIn: number): Outdoors => ({
  ...PLAIN_OUTDOORS,
  depthCm: derived(
    inchRange(1, 1),
    CITE.idaho,
    "three times the seed's width, about a third of an inch",
  ),
  apartCm: common(inchRange(apartIn, apartIn)),
  rowsCm: common(rowsIn * 2.54),
  soilMinC: published((55 - 32) / 1.8, CITE.kansas),
  weeksFromLastFrost: published(0, CITE.purdue),
});

const POLES = {
  things: ["poles 7 ft high and string"],
  how: "Set the poles before you sow, a foot deep, and tie them at the top.",
} as const;

/** Pole bean: climbs, and bears till frost where bush beans tire. */
export const POLE_BEAN: Crop = {
  ...TENDER,
  key: "pole-bean",
  one: "pole bean",
  many: "pole beans",
  alsoCalled: ["climbing bean", "climbing beans", "climbing french bean", "climbing french beans"],
  outdoors: sown(6, 36),
  support: POLES,
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: memory([60, 70], CITE.missouri),
    kind: "again and again",
    bearsDays: common([35, 56]),
    holdsDays: common(3),
    verb: "Pick",
    sign: "Pods snap, before the beans in them show.",
    how: "Pick every two or three days, high and low. Missed pods end the crop.",
    caution: "Cook the beans well; raw dry kidney beans make ill.",
  },
};

/** Runner bean: red flowers for bees, pods from late summer, cool nights. */
export const RUNNER_BEAN: Crop = {
  ...TENDER,
  key: "runner-bean",
  one: "runner bean",
  many: "runner beans",
  alsoCalled: ["scarlet runner", "scarlet runners", "scarlet runner bean", "scarlet runner beans"],
  frost: common("tender"),
  outdoors: sown(8, 36),
  support: POLES,
  flowers: { daysBeforeHarvest: common([14, 21]), forBees: true },
  care: [
    {
      practice: "stop the tops",
      step: "1",
      from: "up",
      days: common([45, 60]),
      verb: "Pinch tips of",
      how: "Pinch the tips out when they reach the top of the poles.",
      sign: "Shoots wave above the poles.",
      why: "They branch below, where you can pick.",
      caution: null,
      harm: "when you can",
      minutes: 10,
      needs: [],
    },
  ],
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: common([70, 85]),
    kind: "again and again",
    bearsDays: common([35, 56]),
    holdsDays: common(3),
    verb: "Pick",
    sign: "Pods are flat and snap without a string.",
    how: "Pick every other day; old pods are all string and end the crop.",
    caution: "Cook them: raw runner beans make ill.",
  },
};

/** Edamame: soy picked green, all the plant at once. */
export const EDAMAME: Crop = {
  ...TENDER,
  key: "edamame",
  one: "edamame",
  many: "edamame",
  alsoCalled: ["soybean", "soybeans", "soya bean", "soya beans", "vegetable soybean"],
  frost: common("tender"),
  outdoors: sown(4, 24),
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: common([80, 95]),
    kind: "once",
    holdsDays: common(6),
    verb: "Pick",
    sign: "Pods are plump and still bright green.",
    how: "Cut the whole plant and pick it sitting down. Cook the pods.",
  },
};

/** Broad bean: the hardy one, sown in cold soil and over when summer is hot. */
export const BROAD_BEAN: Crop = {
  ...PLAIN,
  key: "broad-bean",
  one: "broad bean",
  many: "broad beans",
  alsoCalled: ["fava", "favas", "fava bean", "fava beans", "field bean", "field beans"],
  family: "pea family",
  frost: common("very hardy"),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "pea", standsIn: common("pea") },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: common(inchRange(2, 2)),
    apartCm: common(inchRange(6, 8)),
    rowsCm: common(18 * 2.54),
    soilMinC: derived((40 - 32) / 1.8, CITE.kansas, "as pea, which goes in with it"),
    weeksFromLastFrost: common(-5),
    soakHours: common([8, 12]),
  },
  support: {
    things: ["stakes and string"],
    how: "Stakes at the corners and string round the row keep tall ones up.",
  },
  flowers: { daysBeforeHarvest: common([25, 35]), forBees: true },
  care: [
    {
      practice: "stop the tops",
      step: "1",
      from: "flower",
      days: common([7, 18]),
      verb: "Pinch tips of",
      how: "Pinch out the top hand of each plant; it is good to eat.",
      sign: "The lowest pods are as long as a finger.",
      why: "Blackfly gather on the tips, and the pods fill sooner.",
      caution: null,
      harm: "this week",
      minutes: 10,
      needs: [],
    },
  ],
  limits: { ...NO_LIMITS, heatC: common(22) },
  warmth: COOL_WARMTH,
  eaten: "fruit",
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: common([75, 90]),
    kind: "again and again",
    bearsDays: common([14, 21]),
    holdsDays: common(4),
    verb: "Pick",
    sign: "Pods are plump and the scar on the bean still green.",
    how: "Pick from the bottom up.",
    caution: "A few people fall ill from broad beans (favism): those ask a doctor first.",
  },
};

/** Beans beside the bush bean; one family with the pea. */
export const BEANS: readonly Crop[] = [POLE_BEAN, RUNNER_BEAN, EDAMAME, BROAD_BEAN];
