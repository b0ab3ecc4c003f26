import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  inchRange,
  OUTDOORS_DEFAULTS,
  published,
} from "./figures.ts";

/** Asparagus: crowns in a trench, left alone two summers, then cut for some weeks each spring for fifteen years. */
export const ASPARAGUS: Crop = {
  ...CROP_DEFAULTS,
  key: "asparagus",
  one: "asparagus",
  many: "asparagus",
  alsoCalled: ["asparagus crowns"],
  family: "asparagus family",
  frost: published("very hardy", CITE.purdue),
  starts: ["crowns"],
  comesUp: { kind: "days", days: commonPractice([14, 28]) },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(6, 8)),
    apartCm: published(inchRange(18, 18), CITE.missouri),
    rowsCm: published(48 * 2.54, CITE.missouri),
    soilMinC: commonPractice((50 - 32) / 1.8),
    weeksFromLastFrost: published(-4, CITE.purdue),
    how: "Spread the roots over a low ridge in the trench, buds up. Cover lightly now, and fill the trench as the shoots grow.",
  },
  perennial: {
    firstHarvestYear: published(3, CITE.missouri),
    harvestDaysAfterLastFrost: published([-10, 10], CITE.virginiaDates),
    harvestWeeks: commonPractice([6, 8]),
    standsYears: commonPractice([12, 20]),
  },
  care: [
    {
      practice: "yearly",
      step: "fern",
      from: "first frost",
      days: commonPractice([14, 42]),
      verb: "Cut down",
      how: [
        "Cut the yellow fern to ",
        { cm: inchRange(2, 2) },
        ", clear it away, and mulch with compost.",
      ],
      sign: "The fern has turned yellow all over.",
      why: "Green fern still feeds the roots; old fern shelters beetles.",
      caution: null,
      harm: "when you can",
      minutes: 30,
      needs: ["compost"],
    },
    {
      practice: "feed",
      step: "spring",
      from: "last frost",
      days: commonPractice([-40, -20]),
      verb: "Feed",
      how: "Spread compost over the row before the spears come, and pull the first weeds by hand.",
      sign: null,
      why: "Spears break easily once they show.",
      caution: "No fresh manure on a bed that is cut this spring.",
      harm: "when you can",
      minutes: 20,
      needs: ["compost"],
    },
  ],
  warmth: COOL_WARMTH,
  eaten: "leaf",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "planting",
    days: published([1095, 1095], CITE.missouri),
    kind: "again and again",
    bearsDays: commonPractice([42, 56]),
    holdsDays: commonPractice(2),
    verb: "Cut",
    sign: "Spears are a hand long and their tips still tight.",
    how: "Cut or snap every two or three days, just under the soil.",
  },
};

/** The asparagus family. */
export const ASPARAGUS_FAMILY: readonly Crop[] = [ASPARAGUS];
