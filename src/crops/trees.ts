import type { Care, Crop } from "./facts.ts";
import { inchRange } from "./figures.ts";
import {
  bearing,
  FED_IN_SPRING,
  FRUIT,
  nettedInFruit,
  picked,
  plantedBare,
  prunedInWinter,
  yearlyJob,
} from "./fruit-ways.ts";

const PLANTING =
  "Spread the roots in a wide hole, the graft well above the soil. Drive a stake, tie the stem loosely, and water it in.";

const THINNED: Care = yearlyJob("thin", [40, 60], {
  verb: "Thin the fruit of",
  how: [
    "After the tree has dropped some by itself, leave one fruit to a cluster, ",
    { cm: inchRange(4, 6) },
    " from the next. Take small and marked ones.",
  ],
  sign: "The fruits are as big as a walnut.",
  why: "Fewer grow bigger, no branch breaks, and it fruits again next year.",
  only: ["bearing"],
});

const FALLEN: Care = yearlyJob("fallen", [14, 35], {
  from: "first frost",
  verb: "Clear up under",
  how: "Rake up fallen leaves and fruit, and take dried-up fruit off the branches.",
  sign: "Most of the leaves are down.",
  why: "Scab, rot and moths spend the winter in them.",
});

/** Apple: pruned in winter, thinned in June, picked as its kind ripens. */
export const APPLE: Crop = {
  ...FRUIT,
  key: "apple",
  one: "apple",
  many: "apples",
  alsoCalled: ["apple tree", "apple trees", "dessert apple", "cooking apple", "crab apple"],
  settingOut: plantedBare(10, 12, PLANTING),
  perennial: bearing(3, { days: [105, 150], weeks: [3, 6], years: [15, 40] }),
  flowers: null,
  care: [
    prunedInWinter(
      "Take out what is dead, crossing or grows inward, and shorten last year's shoots by a third.",
      "Light and air ripen the fruit and keep scab away.",
    ),
    FED_IN_SPRING,
    THINNED,
    FALLEN,
  ],
  harvest: picked(3, {
    sign: "A fruit lifted in the palm comes away with its stalk, and the pips are brown.",
    how: "Pick with the stalk, over some weeks. Late kinds keep cool and dark, none touching another.",
    holdsDays: 10,
  }),
};

/** Pear: picked firm, and ripened in the house. */
export const PEAR: Crop = {
  ...APPLE,
  key: "pear",
  one: "pear",
  many: "pears",
  alsoCalled: ["pear tree", "pear trees"],
  perennial: bearing(4, { days: [100, 140], weeks: [2, 4], years: [20, 50] }),
  harvest: picked(4, {
    sign: "A fruit tilted level comes away, still firm, its green a little paler.",
    how: "Pick while firm, and let them ripen in the house: on the tree they go soft from the inside.",
    holdsDays: 7,
  }),
};

/** Pruned while in leaf, since winter cuts let silver leaf and canker in. */
const prunedInSummer = (days: readonly [number, number]): Care =>
  yearlyJob("prune", days, {
    verb: "Prune",
    how: "On a dry day, once the fruit is picked, take out what is dead, crossing or too tall.",
    sign: "The fruit is picked, and leaves are still green.",
    why: "Cut in winter, stone fruit catches diseases through the wounds.",
    only: ["bearing"],
    minutes: 45,
    needs: ["clean sharp secateurs"],
  });

/** Plum: pruned in summer, thinned and propped when it bears heavily. */
export const PLUM: Crop = {
  ...FRUIT,
  key: "plum",
  one: "plum",
  many: "plums",
  alsoCalled: ["plum tree", "plum trees", "damson", "damsons", "gage", "greengage", "greengages"],
  settingOut: plantedBare(12, 12, PLANTING),
  perennial: bearing(4, { days: [85, 120], weeks: [2, 4], years: [15, 30] }),
  care: [FED_IN_SPRING, THINNED, prunedInSummer([120, 140]), FALLEN],
  harvest: picked(4, {
    sign: "Coloured all over, and soft to a light press.",
    how: "Pick every few days, with the stalk. Prop branches that hang low.",
    holdsDays: 5,
  }),
};

/** Cherry: netted from birds, pruned in summer. */
export const CHERRY: Crop = {
  ...FRUIT,
  key: "cherry",
  one: "cherry",
  many: "cherries",
  alsoCalled: ["cherry tree", "cherry trees", "sweet cherry", "sour cherry", "tart cherry"],
  settingOut: plantedBare(12, 12, PLANTING),
  perennial: bearing(4, { days: [50, 80], weeks: [1, 3], years: [15, 30] }),
  care: [FED_IN_SPRING, nettedInFruit([35, 50]), prunedInSummer([85, 105]), FALLEN],
  harvest: picked(4, {
    sign: "Dark all over, and sweet when you try one.",
    how: "Cut or pick with the stalks on, before rain, which splits them.",
    holdsDays: 4,
  }),
};

/** Fruit trees, in their few jobs of the year. */
export const TREES: readonly Crop[] = [APPLE, PEAR, PLUM, CHERRY];
