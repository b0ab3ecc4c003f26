import type { Crop } from "./facts.ts";
import {
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  inchRange,
  NO_LIMITS,
  OUTDOORS_DEFAULTS,
} from "./figures.ts";
import { winterLife } from "./winter-life.ts";

/** Corn salad: sown in late summer, cut in the cold when nothing else grows. */
export const CORN_SALAD: Crop = {
  ...CROP_DEFAULTS,
  key: "corn-salad",
  one: "corn salad",
  many: "corn salad",
  alsoCalled: ["lamb's lettuce", "lambs lettuce", "mache", "mâche"],
  family: "honeysuckle family",
  frost: commonPractice("very hardy"),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "parsley", standsIn: commonPractice("parsley") },
  slow: true,
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.5, 0.5)),
    apartCm: commonPractice(inchRange(1, 2)),
    rowsCm: commonPractice(6 * 2.54),
    soilMinC: commonPractice((45 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(-4),
    soilMaxC: commonPractice((72 - 32) / 1.8),
  },
  limits: { ...NO_LIMITS, heatC: commonPractice(20) },
  warmth: COOL_WARMTH,
  winter: winterLife(-15, "through it if sown for it", { weeks: [6, 14] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([45, 60]),
    kind: "cut and come again",
    cuts: { everyDays: commonPractice([14, 28]), times: commonPractice([2, 3]) },
    holdsDays: commonPractice(30),
    verb: "Cut",
    sign: "The rosettes are as wide as a hand.",
    how: "Cut whole rosettes just above the root, on a day without frost in the leaves.",
  },
};

/** The honeysuckle family. */
export const HONEYSUCKLE_FAMILY: readonly Crop[] = [CORN_SALAD];
