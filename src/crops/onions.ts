import type { Crop } from "./facts.ts";
import {
  CITE,
  common,
  derived,
  house,
  inchRange,
  memory,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
} from "./figures.ts";

/** Garlic: cloves set in autumn, lifted the summer after. */
export const GARLIC: Crop = {
  ...PLAIN,
  key: "garlic",
  one: "garlic",
  many: "garlic",
  alsoCalled: ["garlics", "hardneck garlic", "softneck garlic"],
  family: "onion family",
  frost: house("very hardy", "stands the winter in the ground under a mulch"),
  starts: ["cloves"],
  comesUp: { kind: "days", days: common([160, 200]) },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: published(inchRange(3, 3), CITE.otterTail),
    apartCm: published(inchRange(6, 6), CITE.otterTail),
    rowsCm: common(8 * 2.54),
    soilMinC: common(0),
  },
  overwinter: {
    plantDaysAfterKillingFrost: published([7, 14], CITE.minnesotaGarlic),
    mulchCm: published(inchRange(4, 6), CITE.otterTail),
    mulchDaysAfterKillingFrost: common([35, 49]),
    harvestDaysAfterLastFrost: derived(
      [65, 90],
      CITE.minnesotaGarlic,
      "late June to late July in Minnesota, counted from Minneapolis' usual last freeze of 25 April (NOAA 1981-2010)",
    ),
    cutStalksDaysAfterLastFrost: derived(
      [40, 60],
      CITE.otterTail,
      "June in Minnesota, counted from Minneapolis' usual last freeze of 25 April (NOAA 1981-2010)",
    ),
    cureWeeks: memory([2, 4], "Cornell, Minnesota and New Hampshire extension advice"),
  },
  eaten: "root",
  harvest: {
    ...PLAIN_HARVEST,
    from: "planting",
    days: published(
      [240, 270],
      "Anoka County Master Gardeners, University of Minnesota Extension, Growing garlic",
    ),
    kind: "once",
    holdsDays: common(10),
    verb: "Lift",
    sign: "The lower third of the leaves is brown and five or six are still green.",
    how: "Fork under them and lift whole; don't pull by the stalk. Keep them out of the sun.",
  },
};

/** The onion family, for rotations and shared pests. */
export const ONION_FAMILY: readonly Crop[] = [GARLIC];
