import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  common,
  inchRange,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
} from "./figures.ts";

/** Rhubarb: a crown in rich soil for ten years; the stalks are eaten, the leaves are poisonous. */
export const RHUBARB: Crop = {
  ...PLAIN,
  key: "rhubarb",
  one: "rhubarb",
  many: "rhubarb",
  alsoCalled: ["rhubarb crowns", "pie plant"],
  family: "knotweed family",
  frost: published("very hardy", CITE.purdue),
  starts: ["crowns", "plants"],
  comesUp: { kind: "days", days: common([14, 28]) },
  settingOut: {
    weeksFromLastFrost: published(-4, CITE.purdue),
    soilMinC: null,
    apartCm: common(36 * 2.54),
    rowsCm: common(36 * 2.54),
    things: ["compost", "a watering can"],
    how: "Dig compost in, and set the plant so that the buds lie just under the soil. Water in.",
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: common(inchRange(1, 2)),
    apartCm: common(inchRange(36, 48)),
    rowsCm: common(48 * 2.54),
    soilMinC: common((45 - 32) / 1.8),
    weeksFromLastFrost: published(-4, CITE.purdue),
    how: "Set the crown with its buds just under the soil, and firm it well.",
  },
  perennial: {
    firstHarvestYear: common(2),
    harvestDaysAfterLastFrost: common([-7, 14]),
    harvestWeeks: common([6, 10]),
    standsYears: common([8, 12]),
  },
  care: [
    {
      practice: "yearly",
      step: "flowers",
      from: "last frost",
      days: common([7, 35]),
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
      days: common([14, 42]),
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
    ...PLAIN_HARVEST,
    from: "planting",
    days: common([365, 400]),
    kind: "again and again",
    bearsDays: common([42, 70]),
    holdsDays: common(5),
    verb: "Pull",
    sign: "Stalks are a foot long and the leaf is open.",
    how: "Pull and twist from the base; leave at least half the stalks on the plant.",
    caution:
      "Never eat the leaves: they are poisonous. Leave stalks that a hard frost has softened.",
  },
};

/** The knotweed family. */
export const KNOTWEED_FAMILY: readonly Crop[] = [RHUBARB];
