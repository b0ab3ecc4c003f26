import type { Crop } from "./facts.ts";
import {
  common,
  house,
  inchRange,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  WARM_WARMTH,
} from "./figures.ts";
import { GOURD_INDOORS } from "./gourd-ways.ts";

/** Nasturtium: flowers and leaves for the salad, set among cabbages and squash. */
export const NASTURTIUM: Crop = {
  ...PLAIN,
  key: "nasturtium",
  one: "nasturtium",
  many: "nasturtiums",
  alsoCalled: ["indian cress", "garden nasturtium", "garden nasturtiums"],
  family: "nasturtium family",
  frost: common("tender"),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "beet",
    standsIn: house("beet", "a big corky seed too, up in ten days or so in mild soil"),
  },
  indoors: GOURD_INDOORS,
  settingOut: {
    weeksFromLastFrost: common(1),
    soilMinC: null,
    apartCm: common(12 * 2.54),
    rowsCm: common(12 * 2.54),
    things: ["a watering can"],
    how: "Set them at the edge of the bed, where they can run over it. Water in.",
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: common(inchRange(0.5, 1)),
    apartCm: common(inchRange(10, 12)),
    rowsCm: common(12 * 2.54),
    soilMinC: common((50 - 32) / 1.8),
    weeksFromLastFrost: common(0),
    soakHours: common([8, 12]),
  },
  warmth: WARM_WARMTH,
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: common([50, 65]),
    kind: "again and again",
    holdsDays: common(4),
    verb: "Pick",
    sign: "The first flowers open.",
    how: "Pick flowers and young leaves for the salad. Aphids gather here before they find the beans.",
  },
};

/** The nasturtium family. */
export const NASTURTIUM_FAMILY: readonly Crop[] = [NASTURTIUM];
