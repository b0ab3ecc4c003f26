import type { Crop } from "./facts.ts";
import { CITE, common, PLAIN, PLAIN_HARVEST, published, WARM_WARMTH } from "./figures.ts";

/** Sweet potato: rooted shoots (slips) into warm soil, one hot summer, cured before they are sweet. */
export const SWEET_POTATO: Crop = {
  ...PLAIN,
  key: "sweet-potato",
  one: "sweet potato",
  many: "sweet potatoes",
  alsoCalled: ["sweet potato slips", "sweetpotato", "sweetpotatoes", "kumara"],
  family: "bindweed family",
  frost: published("warm loving", CITE.purdue),
  starts: ["plants"],
  comesUp: { kind: "days", days: common([5, 10]) },
  settingOut: {
    weeksFromLastFrost: published(2, CITE.purdue),
    soilMinC: published((60 - 32) / 1.8, CITE.kansas),
    apartCm: common(12 * 2.54),
    rowsCm: common(36 * 2.54),
    things: ["slips", "a watering can"],
    how: "Lay each slip slanting in loose soil, only its top leaves out. Water every day for a week.",
  },
  care: [
    {
      practice: "cure and store",
      step: "1",
      from: "first harvest",
      days: common([10, 16]),
      verb: "Cure, then store",
      how: [
        "Ten days near ",
        { tempC: 29 },
        ", dark and damp; then somewhere dark at ",
        { tempC: 14 },
        ", never the fridge.",
      ],
      sign: "Cuts have healed over.",
      why: "Curing makes them sweet and lets them keep till spring.",
      caution: null,
      harm: "this week",
      minutes: 20,
      needs: ["crates and newspaper"],
    },
  ],
  warmth: WARM_WARMTH,
  eaten: "root",
  harvest: {
    ...PLAIN_HARVEST,
    from: "setting out",
    days: common([95, 120]),
    kind: "once",
    holdsDays: common(10),
    verb: "Dig",
    sign: "The leaves begin to yellow, and one you dig up is big enough.",
    how: "Dig before frost and before cold soil, a foot out from the crown. They bruise like eggs.",
  },
};

/** The bindweed family. */
export const BINDWEED_FAMILY: readonly Crop[] = [SWEET_POTATO];
