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

/** Rhubarb: a crown in rich soil for ten years; the stalks are eaten, the leaves are poisonous. */
export const RHUBARB: Crop = {
  ...CROP_DEFAULTS,
  key: "rhubarb",
  one: "rhubarb",
  many: "rhubarb",
  alsoCalled: ["rhubarb crowns", "pie plant"],
  family: "knotweed family",
  frost: published("very hardy", CITE.purdue),
  starts: ["crowns", "plants"],
  comesUp: { kind: "days", days: commonPractice([14, 28]) },
  settingOut: {
    weeksFromLastFrost: published(-4, CITE.purdue),
    soilMinC: null,
    apartCm: commonPractice(36 * 2.54),
    rowsCm: commonPractice(36 * 2.54),
    things: ["compost", "a watering can"],
    how: "Dig compost in, and set the plant so that the buds lie just under the soil. Water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(1, 2)),
    apartCm: commonPractice(inchRange(36, 48)),
    rowsCm: commonPractice(48 * 2.54),
    soilMinC: commonPractice((45 - 32) / 1.8),
    weeksFromLastFrost: published(-4, CITE.purdue),
    how: "Set the crown with its buds just under the soil, and firm it well.",
  },
  perennial: {
    firstHarvestYear: commonPractice(2),
    harvestDaysAfterLastFrost: commonPractice([-7, 14]),
    harvestWeeks: commonPractice([6, 10]),
    standsYears: commonPractice([8, 12]),
  },
  care: [
    {
      practice: "yearly",
      step: "flowers",
      from: "last frost",
      days: commonPractice([7, 35]),
      verb: "Twist out flowers:",
      how: "Twist the flower stalks off at the base as soon as they show.",
      sign: "A thick stalk with a round bud stands among the leaves.",
      why: "Seed takes from the roots what next year's stalks need.",
      caution: null,
      harm: "when you can",
      minutes: 5,
      needs: [],
    },
    {
      practice: "yearly",
      step: "mulch",
      from: "first frost",
      days: commonPractice([14, 42]),
      verb: "Clear and mulch",
      how: [
        "Clear the dead leaves and lay ",
        { cm: inchRange(2, 3) },
        " of compost round the crown, not over its buds.",
      ],
      sign: "Frost has taken the leaves.",
      why: "It is a hungry plant, and buds under wet compost rot.",
      caution: null,
      harm: "when you can",
      minutes: 15,
      needs: ["compost"],
    },
  ],
  warmth: COOL_WARMTH,
  eaten: "leaf",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "planting",
    days: commonPractice([365, 400]),
    kind: "again and again",
    bearsDays: commonPractice([42, 70]),
    holdsDays: commonPractice(5),
    verb: "Pull",
    sign: "Stalks are a foot long and the leaf is open.",
    how: "Pull and twist from the base; leave at least half the stalks on the plant.",
    caution:
      "Never eat the leaves: they are poisonous. Leave stalks that a hard frost has softened.",
  },
};

/** The knotweed family. */
export const KNOTWEED_FAMILY: readonly Crop[] = [RHUBARB];
