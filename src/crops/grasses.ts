import type { Crop } from "./facts.ts";
import {
  CITE,
  CROP_DEFAULTS,
  commonPractice,
  derived,
  fromMemory,
  HARVEST_DEFAULTS,
  inchRange,
  OUTDOORS_DEFAULTS,
  published,
  WARM_WARMTH,
} from "./figures.ts";

/** Sweet corn: tender, sown in a block so that the wind finds every ear. */
export const CORN: Crop = {
  ...CROP_DEFAULTS,
  key: "corn",
  one: "sweet corn",
  many: "sweet corn",
  alsoCalled: ["sweetcorn", "corn on the cob", "maize", "sugar corn"],
  family: "grass family",
  frost: published("tender", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: { kind: "table", row: "corn_sweet", standsIn: null },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: derived(
      inchRange(1, 1),
      CITE.idaho,
      "three times the seed's width, about a third of an inch",
    ),
    apartCm: fromMemory(inchRange(8, 10), CITE.missouri),
    rowsCm: commonPractice(30 * 2.54),
    soilMinC: published((55 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(0, CITE.purdue),
    how: "Sow a block of four short rows or more, not one long row.",
  },
  care: [
    {
      practice: "feed",
      step: "1",
      from: "up",
      days: commonPractice([25, 35]),
      verb: "Feed",
      how: "Strew compost or a garden feed along the rows, water it in and draw soil to the stems.",
      sign: "Plants stand as high as your knee.",
      why: "Their growing spurt begins, and ears come of strong stems.",
      caution: "Feed: no more than the label says.",
      harm: "when you can",
      minutes: 15,
      needs: ["compost or feed"],
    },
    {
      practice: "scout",
      step: "1",
      from: "first harvest",
      days: commonPractice([-14, -7]),
      verb: "Check",
      how: [
        "Look into the silks for caterpillars and pick them out. Fence or net the block if ",
        {
          regional: {
            "north america": "raccoons",
            "british isles": "badgers",
            "mainland europe": "badgers",
            australia: "cockatoos or possums",
            "new zealand": "possums or rats",
            otherwise: "animals",
          },
        },
        " come.",
      ],
      sign: "Silks chewed, or crumbs on the tip of an ear.",
      why: "Sweet ears draw every animal about.",
      caution: "Sprays: read the label first, and follow it.",
      harm: "when you can",
      minutes: 10,
      needs: [],
    },
  ],
  repeatEveryDays: fromMemory([10, 14], "usual extension succession lists"),
  warmth: {
    ...WARM_WARMTH,
    baseC: published((50 - 32) / 1.8, CITE.peet),
    ceilingC: published((86 - 32) / 1.8, CITE.wisconsin),
  },
  eaten: "fruit",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: derived(
      [87, 95],
      CITE.peet,
      "what kinds take there, early and midseason, is 87 and 95 days at 70 °F, counted above 50 °F",
    ),
    kind: "once",
    holdsDays: commonPractice(5),
    verb: "Pick",
    sign: "Silks are brown and dry, and a kernel that you press with a nail runs milky.",
    how: "Bend each ear down and twist it off. Cook it the same day; sweetness fades by the hour.",
  },
};

/** Popcorn: corn that stays on its stalk until it is hard; grown near sweet corn in flower, it spoils it. */
export const POPCORN: Crop = {
  ...CORN,
  key: "popcorn",
  one: "popcorn",
  many: "popcorn",
  alsoCalled: ["pop corn", "popping corn"],
  repeatEveryDays: null,
  care: [
    ...CORN.care,
    {
      practice: "cure and store",
      step: "dry",
      from: "first harvest",
      days: commonPractice([21, 35]),
      verb: "Shell and store",
      how: "Try a few kernels each week. When they pop, rub all off the cobs and store them in jars.",
      sign: "A few kernels pop well, and none is left soft.",
      why: "Too damp they only crack; too dry they no longer pop.",
      caution: null,
      harm: "when you can",
      minutes: 20,
      needs: ["jars"],
    },
  ],
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([100, 115]),
    kind: "once",
    holdsDays: commonPractice(21),
    verb: "Pick",
    sign: "Husks are dry and papery, and a nail leaves no mark on a kernel.",
    how: "Pick on a dry day before the frost, strip the husks back and hang the ears up under a roof.",
  },
};

/** The grass family, for rotations and shared pests. */
export const GRASS_FAMILY: readonly Crop[] = [CORN, POPCORN];
