import type { Crop } from "./facts.ts";
import {
  CITE,
  common,
  house,
  inchRange,
  memory,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
  WARM_WARMTH,
} from "./figures.ts";
import { RAISED_WARM } from "./raising.ts";

/** Okra: heat, and picked every other day while small. */
export const OKRA: Crop = {
  ...PLAIN,
  key: "okra",
  one: "okra",
  many: "okra",
  alsoCalled: ["lady's fingers", "ladies fingers", "gumbo"],
  family: "mallow family",
  frost: published("warm loving", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "watermelon",
    standsIn: house(
      "watermelon",
      "the days table's other seed of hot soil; of both most come up from 68 °F on",
    ),
  },
  indoors: {
    ...RAISED_WARM,
    weeksToSettingOut: memory([4, 6], "Knott's Handbook for Vegetable Growers"),
  },
  settingOut: {
    weeksFromLastFrost: published(1, CITE.purdue),
    soilMinC: common((65 - 32) / 1.8),
    apartCm: common(15 * 2.54),
    rowsCm: common(30 * 2.54),
    things: ["a watering can"],
    how: "Don't break the root ball. Water in.",
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: common(inchRange(0.5, 1)),
    apartCm: common(inchRange(6, 6)),
    rowsCm: common(30 * 2.54),
    soilMinC: common((65 - 32) / 1.8),
    weeksFromLastFrost: published(1, CITE.purdue),
    soakHours: common([8, 12]),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: common([14, 21]),
      heightCm: common(inchRange(3, 4)),
      apartCm: common(inchRange(12, 15)),
      how: "Cut the weaker ones at the soil.",
    },
  ],
  warmth: WARM_WARMTH,
  eaten: "fruit",
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: memory([50, 60], CITE.missouri),
    kind: "again and again",
    bearsDays: common([40, 70]),
    holdsDays: common(2),
    verb: "Cut",
    sign: "Pods are as long as a finger, and snap.",
    how: "Cut every other day. Left longer they are wood and stop the plant.",
    caution: "The hairs itch: wear gloves and sleeves.",
  },
};

/** The mallow family. */
export const MALLOW_FAMILY: readonly Crop[] = [OKRA];
