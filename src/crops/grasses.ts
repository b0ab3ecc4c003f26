import type { Crop } from "./facts.ts";
import {
  CITE,
  common,
  derived,
  inchRange,
  memory,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
  WARM_WARMTH,
} from "./figures.ts";

/** Sweet corn: tender, sown in a block so that the wind finds every ear. */
export const CORN: Crop = {
  ...PLAIN,
  key: "corn",
  one: "sweet corn",
  many: "sweet corn",
  alsoCalled: ["sweetcorn", "corn on the cob", "maize", "sugar corn"],
  family: "grass family",
  frost: published("tender", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "corn_sweet", standsIn: null },
  outdoors: {
    ...PLAIN_OUTDOORS,
    how: "Sow in a block of four rows or more, not in one long row: the wind must carry pollen from plant to plant.",
    depthCm: derived(
      inchRange(1, 1),
      CITE.idaho,
      "three times the seed's width, about a third of an inch",
    ),
    apartCm: memory(inchRange(8, 10), CITE.missouri),
    rowsCm: common(30 * 2.54),
    soilMinC: published((55 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(0, CITE.purdue),
  },
  repeatEveryDays: memory([10, 14], "usual extension succession lists"),
  warmth: {
    ...WARM_WARMTH,
    baseC: published((50 - 32) / 1.8, CITE.peet),
    ceilingC: published((86 - 32) / 1.8, CITE.wisconsin),
  },
  eaten: "fruit",
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: derived(
      [87, 95],
      CITE.peet,
      "1,750 and 1,890 degree days above 50 °F, early and midseason, are 87 and 95 days at 70 °F",
    ),
    kind: "once",
    holdsDays: common(5),
    verb: "Pick",
    sign: "Silks are brown and dry, and a kernel that you press with a nail runs milky.",
    how: "Bend each ear down and twist it off. Cook it the same day; sweetness fades by the hour.",
  },
};

/** The grass family, for rotations and shared pests. */
export const GRASS_FAMILY: readonly Crop[] = [CORN];
