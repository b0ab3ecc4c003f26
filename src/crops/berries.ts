import type { Crop } from "./facts.ts";
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

/** Raspberry: canes that fruit once; the old ones out after picking, the new ones tied in. */
export const RASPBERRY: Crop = {
  ...FRUIT,
  key: "raspberry",
  one: "raspberry",
  many: "raspberries",
  alsoCalled: ["raspberry cane", "raspberry canes", "summer raspberry", "summer raspberries"],
  settingOut: plantedBare(
    1.5,
    6,
    "Spread the roots a hand deep, firm them, and cut the cane to a hand above the soil. Water in.",
  ),
  support: {
    things: ["posts and two wires"],
    how: "Stretch the wires between posts along the row, at the height of your hip and your eyes.",
    first: null,
  },
  perennial: bearing(2, { days: [50, 75], weeks: [3, 5], years: [8, 12] }),
  care: [
    FED_IN_SPRING,
    nettedInFruit([35, 52]),
    yearlyJob("canes", [95, 120], {
      verb: "Cut old canes of",
      how: [
        "Cut the canes that fruited at the ground. Tie in the strongest new ones, ",
        { cm: inchRange(3, 4) },
        " apart, and take the rest out.",
      ],
      sign: "The last fruit is picked, and new canes stand as tall as the old.",
      why: "A cane fruits once; the new ones want its light.",
      minutes: 45,
      needs: ["secateurs", "string"],
    }),
  ],
  harvest: picked(2, {
    sign: "It slips off its white plug at a touch.",
    how: "Pick every other day, dry, into flat boxes.",
    holdsDays: 2,
  }),
};

/** Autumn raspberry: fruits on this year's canes, all of which are cut down in winter. */
export const AUTUMN_RASPBERRY: Crop = {
  ...RASPBERRY,
  key: "autumn-raspberry",
  one: "autumn raspberry",
  many: "autumn raspberries",
  alsoCalled: [
    "fall raspberry",
    "fall raspberries",
    "everbearing raspberry",
    "everbearing raspberries",
  ],
  perennial: bearing(2, { days: [100, 125], weeks: [5, 8], years: [8, 12] }),
  care: [
    yearlyJob("canes", [-60, -35], {
      verb: "Cut down",
      how: "Cut every cane down to the ground.",
      sign: "The canes are bare, and no bud has broken.",
      why: "It fruits on the canes that grow this year.",
      needs: ["secateurs"],
    }),
    FED_IN_SPRING,
  ],
};

/** Blackberry and its hybrids: long canes that fruit once, trained along wires. */
export const BLACKBERRY: Crop = {
  ...RASPBERRY,
  key: "blackberry",
  one: "blackberry",
  many: "blackberries",
  alsoCalled: [
    "bramble",
    "brambles",
    "loganberry",
    "loganberries",
    "tayberry",
    "tayberries",
    "boysenberry",
    "boysenberries",
  ],
  settingOut: plantedBare(
    7,
    7,
    "Spread the roots a hand deep, firm them, and cut the cane to a hand above the soil. Water in.",
  ),
  perennial: bearing(2, { days: [80, 110], weeks: [3, 5], years: [10, 15] }),
  care: [
    FED_IN_SPRING,
    yearlyJob("canes", [125, 160], {
      verb: "Cut old canes of",
      how: "Cut the canes that fruited at the ground, and tie this year's along the wires.",
      sign: "The last fruit is picked.",
      why: "A cane fruits once; the new ones want its light.",
      caution: "Wear gloves and something over your eyes: the canes are thorny and spring back.",
      minutes: 45,
      needs: ["secateurs", "string", "gloves"],
    }),
  ],
  harvest: picked(2, {
    sign: "Black and dull all over, and it comes off at a touch.",
    how: "Pick every two or three days, dry, into flat boxes.",
    holdsDays: 3,
  }),
};

const BUSH_PLANTING =
  "Spread the roots in a wide hole with compost, firm the soil well, and water it in.";

/** Blackcurrant: a third of its oldest wood out each winter. */
export const BLACKCURRANT: Crop = {
  ...FRUIT,
  key: "blackcurrant",
  one: "blackcurrant",
  many: "blackcurrants",
  alsoCalled: ["black currant", "black currants", "currant", "currants", "currant bush"],
  family: "gooseberry family",
  settingOut: plantedBare(
    5,
    5,
    `Plant it two fingers deeper than it stood. ${BUSH_PLANTING} Cut all shoots to two buds.`,
  ),
  perennial: bearing(2, { days: [60, 85], weeks: [2, 3], years: [10, 15] }),
  care: [
    prunedInWinter(
      "Cut a third of the stems at the ground, the oldest and darkest first.",
      "It fruits best on the wood of last summer.",
    ),
    FED_IN_SPRING,
    nettedInFruit([45, 62]),
  ],
  harvest: picked(2, {
    sign: "The whole bunch has been black for some days.",
    how: "Pick whole bunches.",
    holdsDays: 7,
  }),
};

const SHORTENED = prunedInWinter(
  "Open the middle, and shorten last summer's shoots by half and side shoots to two buds.",
  "It fruits on short spurs of older wood, and air keeps mildew away.",
);

/** Redcurrant and whitecurrant: fruit on short spurs. */
export const REDCURRANT: Crop = {
  ...BLACKCURRANT,
  key: "redcurrant",
  one: "redcurrant",
  many: "redcurrants",
  alsoCalled: ["red currant", "red currants", "whitecurrant", "whitecurrants", "white currant"],
  settingOut: plantedBare(5, 5, `Plant it as deep as it stood. ${BUSH_PLANTING}`),
  perennial: bearing(2, { days: [52, 75], weeks: [2, 3], years: [10, 20] }),
  care: [SHORTENED, FED_IN_SPRING, nettedInFruit([38, 54])],
  harvest: picked(2, {
    sign: "Red to the tip of the bunch.",
    how: "Pick whole bunches, and strip them with a fork.",
    holdsDays: 10,
  }),
};

/** Gooseberry: thorny, thinned in spring for tarts, picked soft in summer. */
export const GOOSEBERRY: Crop = {
  ...REDCURRANT,
  key: "gooseberry",
  one: "gooseberry",
  many: "gooseberries",
  alsoCalled: ["gooseberry bush", "gooseberry bushes"],
  perennial: bearing(2, { days: [48, 72], weeks: [2, 4], years: [10, 20] }),
  care: [
    SHORTENED,
    FED_IN_SPRING,
    {
      ...yearlyJob("sawfly", [7, 28], {
        verb: "Look for grubs on",
        how: "Look low in the middle of the bush, under the leaves, and pick off small green grubs.",
        sign: "Leaves are bitten to the ribs from below.",
        why: "Sawfly grubs strip a bush in a week.",
        minutes: 10,
      }),
      practice: "scout",
    },
    nettedInFruit([35, 50]),
  ],
  harvest: picked(2, {
    sign: "Full size and a little soft; hard ones are for cooking.",
    how: "Pick every second one early for the kitchen, and leave the rest to sweeten. Wear gloves.",
    holdsDays: 7,
  }),
};

/** Blueberry: acid soil and rainwater, netted from birds. */
export const BLUEBERRY: Crop = {
  ...FRUIT,
  key: "blueberry",
  one: "blueberry",
  many: "blueberries",
  alsoCalled: ["blueberry bush", "blueberry bushes", "highbush blueberry"],
  family: "heather family",
  settingOut: plantedBare(
    4,
    6,
    "Plant it in acid soil, or in a tub of compost for acid-loving plants. Water with rainwater.",
  ),
  perennial: bearing(3, { days: [62, 90], weeks: [3, 5], years: [15, 30] }),
  care: [
    prunedInWinter(
      "Take out dead and thin twigs, and from the fourth year on the oldest stem or two at the ground.",
      "Young wood bears the big berries.",
    ),
    yearlyJob("feed", [-28, -7], {
      verb: "Feed and mulch",
      how: "Scatter food for acid-loving plants, and lay pine bark or needles over the roots.",
      sign: "The buds swell.",
      why: "It starves in soil that is not acid; lime or wood ash harms it.",
      caution: "Plant food: as much as the label says, no more.",
      minutes: 15,
      needs: ["food for acid-loving plants", "pine bark"],
    }),
    nettedInFruit([45, 65]),
  ],
  harvest: picked(3, {
    sign: "Blue all over with a bloom, and off at a touch; red at the stalk is not ripe.",
    how: "Roll ripe berries off with a thumb, once or twice a week.",
    holdsDays: 5,
  }),
};

/** Soft fruit on canes and bushes. */
export const BERRIES: readonly Crop[] = [
  RASPBERRY,
  AUTUMN_RASPBERRY,
  BLACKBERRY,
  BLACKCURRANT,
  REDCURRANT,
  GOOSEBERRY,
  BLUEBERRY,
];
