import type { Crop } from "./facts.ts";
import { bearing, FED_IN_SPRING, FRUIT, picked, plantedBare, yearlyJob } from "./fruit-ways.ts";

/** Grape vine: pruned hard in deep winter, for cut late it bleeds; its shoots stopped in summer. */
export const GRAPE: Crop = {
  ...FRUIT,
  key: "grape",
  one: "grape",
  many: "grapes",
  alsoCalled: [
    "grape vine",
    "grape vines",
    "grapevine",
    "grapevines",
    "vine",
    "vines",
    "table grape",
    "wine grape",
  ],
  family: "grape family",
  settingOut: plantedBare(
    6,
    8,
    "Spread the roots in a wide hole, the graft above the soil. Firm it, water in, and cut it to two buds.",
  ),
  support: {
    things: ["posts and three wires"],
    how: "Stretch the wires between strong posts: the vine will hang on them for decades.",
    first: null,
  },
  perennial: bearing(3, { days: [125, 165], weeks: [2, 5], years: [20, 40] }),
  care: [
    yearlyJob("prune", [-110, -75], {
      verb: "Prune",
      how: "Cut last year's shoots back to two buds each from the old arms, and take weak ones out.",
      sign: "It has been bare for weeks, and no bud swells.",
      why: "It fruits on shoots that grow this year; cut later, it bleeds.",
      minutes: 45,
      needs: ["clean sharp secateurs"],
    }),
    FED_IN_SPRING,
    yearlyJob("shoots", [40, 65], {
      verb: "Tie in and stop",
      how: "Tie shoots up, and nip each out two leaves beyond its bunch; shoots without one at five leaves.",
      sign: "Tiny bunches show on the shoots.",
      why: "Sun and air reach the bunches, and mildew stays away.",
      needs: ["soft string"],
    }),
    yearlyJob("net", [95, 120], {
      verb: "Net over",
      how: "Hang a fine net clear of the fruit and close it at the ground, so that no bird is caught in it.",
      sign: "The first berries soften or colour.",
      why: "Birds and wasps take them as they sweeten.",
      only: ["bearing"],
      harm: "this week",
      minutes: 20,
      needs: ["a fruit net and pegs"],
    }),
  ],
  harvest: picked(3, {
    sign: "Coloured all over, and sweet when you try one from the tip of a bunch.",
    how: "Cut whole bunches; they ripen no further once they are cut.",
    holdsDays: 10,
  }),
};
