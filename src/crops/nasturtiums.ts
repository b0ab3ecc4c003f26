import type { Crop } from "./facts.ts";
import {
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  houseRule,
  inchRange,
  OUTDOORS_DEFAULTS,
  WARM_WARMTH,
} from "./figures.ts";
import { GOURD_INDOORS } from "./gourd-ways.ts";

/** Nasturtium: flowers and leaves for the salad, set among cabbages and squash. */
export const NASTURTIUM: Crop = {
  ...CROP_DEFAULTS,
  key: "nasturtium",
  one: "nasturtium",
  many: "nasturtiums",
  alsoCalled: ["indian cress", "garden nasturtium", "garden nasturtiums"],
  family: "nasturtium family",
  frost: commonPractice("tender"),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "beet",
    standsIn: houseRule("beet", "a big corky seed too, up in ten days or so in mild soil"),
  },
  indoors: GOURD_INDOORS,
  settingOut: {
    weeksFromLastFrost: commonPractice(1),
    soilMinC: null,
    apartCm: commonPractice(12 * 2.54),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Set them at the edge of the bed, where they can run over it. Water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(0.5, 1)),
    apartCm: commonPractice(inchRange(10, 12)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: commonPractice((50 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(0),
    soakHours: commonPractice([8, 12]),
  },
  warmth: WARM_WARMTH,
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([50, 65]),
    kind: "again and again",
    holdsDays: commonPractice(4),
    verb: "Pick",
    sign: "The first flowers open.",
    how: "Pick flowers and young leaves for the salad. Aphids gather here before they find the beans.",
  },
};

/** The nasturtium family. */
export const NASTURTIUM_FAMILY: readonly Crop[] = [NASTURTIUM];
