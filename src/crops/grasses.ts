import type { Crop } from "./facts.ts";
import {
  CITE,
  common,
  derived,
  inchRange,
  memory,
  NO_LIMITS,
  published,
  WARM_WARMTH,
} from "./figures.ts";

/** Sweet corn: tender, sown in a block so that the wind finds every ear. */
export const CORN: Crop = {
  key: "corn",
  one: "sweet corn",
  many: "sweet corn",
  alsoCalled: ["sweetcorn", "corn on the cob", "maize", "sugar corn"],
  family: "grass family",
  frost: published("tender", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "corn_sweet", standsIn: null },
  slow: false,
  indoors: null,
  settingOut: null,
  outdoors: {
    depthCm: derived(
      inchRange(1, 1),
      CITE.idaho,
      "three times the seed's width, about a third of an inch",
    ),
    apartCm: memory(inchRange(8, 10), CITE.missouri),
    rowsCm: common(30 * 2.54),
    soilMinC: published((55 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(0, CITE.purdue),
    soilMaxC: null,
  },
  thinnings: [],
  hilling: null,
  cover: null,
  repeatEveryDays: memory([10, 14], "usual extension succession lists"),
  overwinter: null,
  warmth: {
    ...WARM_WARMTH,
    baseC: published((50 - 32) / 1.8, CITE.peet),
    ceilingC: published((86 - 32) / 1.8, CITE.wisconsin),
  },
  limits: NO_LIMITS,
  harvest: {
    from: "sowing",
    days: derived(
      [87, 95],
      CITE.peet,
      "1,750 and 1,890 degree days above 50 °F, early and midseason, are 87 and 95 days at 70 °F",
    ),
    kind: "once",
    cuts: null,
    bearsDays: null,
    holdsDays: common(5),
    verb: "Pick",
    sign: "Silks are brown and dry, and a kernel that you press with a nail runs milky.",
    how: "Bend each ear down and twist it off. Cook it the same day; sweetness fades by the hour.",
    caution: null,
  },
};

/** The grass family, for rotations and shared pests. */
export const GRASS_FAMILY: readonly Crop[] = [CORN];
