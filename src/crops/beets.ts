import type { Crop } from "./facts.ts";
import { CITE, COOL_WARMTH, common, inchRange, memory, NO_LIMITS, published } from "./figures.ts";

/** Beet: clusters of seed, thinned once. */
export const BEET: Crop = {
  key: "beet",
  one: "beet",
  many: "beets",
  alsoCalled: ["beetroot", "beetroots", "beet root", "table beet", "table beets"],
  family: "beet family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "beet", standsIn: null },
  slow: false,
  indoors: null,
  settingOut: null,
  outdoors: {
    depthCm: published(inchRange(0.5, 0.5), CITE.missouri),
    apartCm: common(inchRange(1, 2)),
    rowsCm: published(18 * 2.54, CITE.missouri),
    soilMinC: published((45 - 32) / 1.8, CITE.nebraska),
    weeksFromLastFrost: published(-3, CITE.purdue),
    soilMaxC: null,
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: common([16, 24]),
      heightCm: memory(inchRange(3, 4), "usual advice of extension crop sheets"),
      apartCm: published(inchRange(3, 4), CITE.missouri),
      how: "Each seed is a cluster: leave the strongest and pinch off the rest. The tops are good to eat.",
    },
  ],
  hilling: null,
  cover: {
    against: "birds",
    onDaysAfterUp: common(0),
    offDaysAfterUp: common([22, 30]),
    offSign: "The plants have five or six leaves and stand a hand high.",
  },
  repeatEveryDays: memory([14, 21], "usual extension succession lists"),
  overwinter: null,
  warmth: COOL_WARMTH,
  limits: NO_LIMITS,
  harvest: {
    from: "sowing",
    days: published([55, 65], CITE.missouri),
    kind: "once",
    cuts: null,
    bearsDays: null,
    holdsDays: common(30),
    verb: "Pull",
    sign: "Roots as big as a golf ball show above the soil.",
    how: "Pull the biggest first, and twist the tops off.",
    caution: null,
  },
};

/** The beet family, for rotations and shared pests. */
export const BEET_FAMILY: readonly Crop[] = [BEET];
