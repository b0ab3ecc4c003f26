import type { Crop } from "./facts.ts";
import {
  COOL_WARMTH,
  common,
  inchRange,
  NO_LIMITS,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
} from "./figures.ts";

/** Corn salad: sown in late summer, cut in the cold when nothing else grows. */
export const CORN_SALAD: Crop = {
  ...PLAIN,
  key: "corn-salad",
  one: "corn salad",
  many: "corn salad",
  alsoCalled: ["lamb's lettuce", "lambs lettuce", "mache", "mâche"],
  family: "honeysuckle family",
  frost: common("very hardy"),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "parsley", standsIn: common("parsley") },
  slow: true,
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: common(inchRange(0.5, 0.5)),
    apartCm: common(inchRange(1, 2)),
    rowsCm: common(6 * 2.54),
    soilMinC: common((45 - 32) / 1.8),
    weeksFromLastFrost: common(-4),
    soilMaxC: common((72 - 32) / 1.8),
  },
  limits: { ...NO_LIMITS, heatC: common(20) },
  warmth: COOL_WARMTH,
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: common([45, 60]),
    kind: "cut and come again",
    cuts: { everyDays: common([14, 28]), times: common([2, 3]) },
    holdsDays: common(30),
    verb: "Cut",
    sign: "The rosettes are as wide as a hand.",
    how: "Cut whole rosettes just above the root, on a day without frost in the leaves.",
  },
};

/** The honeysuckle family. */
export const HONEYSUCKLE_FAMILY: readonly Crop[] = [CORN_SALAD];
