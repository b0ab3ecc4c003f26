import type { Care, CoverFacts, Figure, Indoors } from "./facts.ts";
import { CITE, commonPractice, derived, fromMemory, inchRange } from "./figures.ts";

/** Raised like most cool crops: six weeks in cells, hardened off in two steps, not below 40 °F at night before they are used to it. */
export const RAISED_COOL: Indoors = {
  weeksToSettingOut: derived([5, 7], CITE.virginia, "six weeks for most crops, one either way"),
  soilTempC: commonPractice((65 - 32) / 1.8),
  depthCm: commonPractice(inchRange(0.25, 0.5)),
  potOnDaysAfterUp: null,
  hardenDays: commonPractice(7),
  nightFloorC: derived(
    (40 - 32) / 1.8,
    CITE.coloradoFrost,
    "the warmth from which hardy crops grow there, 40 °F",
  ),
};

/** The same in four to six weeks: salads and cabbages that stay young in their cells no longer. */
export const RAISED_SHORT: Indoors = {
  ...RAISED_COOL,
  weeksToSettingOut: fromMemory([4, 6], "Knott's Handbook for Vegetable Growers"),
};

/** Soil from which cool crops go in. */
export const COOL_SOIL_C: Figure<number> = derived(
  (45 - 32) / 1.8,
  CITE.nebraska,
  "the upper end given there for cool crops",
);

/** Nights [°C] that raised tender plants may stand out in. */
export const TENDER_NIGHT_C: Figure<number> = derived(
  10,
  CITE.beltrami,
  "the 50 °F given there for plants hardened a week, whatever their kind",
);

/** Raised like most warm crops: six weeks, potted on, ten days of hardening off, no night below 50 °F. */
export const RAISED_WARM: Indoors = {
  weeksToSettingOut: derived([5, 7], CITE.virginia, "six weeks for most crops, one either way"),
  soilTempC: commonPractice(24),
  depthCm: commonPractice(inchRange(0.25, 0.5)),
  potOnDaysAfterUp: commonPractice([14, 21]),
  hardenDays: derived(10, CITE.maryland, "inside the one to two weeks given there"),
  nightFloorC: TENDER_NIGHT_C,
};

/** A net over the cabbage family from the day it goes in until it is cut; it needs no bees. */
export const CABBAGE_NET: CoverFacts = {
  against: "cabbage pests",
  with: "net",
  on: "in place",
  off: "first harvest",
  offDays: commonPractice([0, 10]),
  offSign: "You begin to cut.",
};

/** A net over beets and their kin while flies lay on the young leaves. */
export const LEAF_MINER_NET: CoverFacts = {
  against: "leaf miners",
  with: "net",
  on: "up",
  off: "up",
  offDays: commonPractice([35, 49]),
  offSign: "The leaves are a hand long and tough.",
};

/** What cabbages want between planting and cutting: a feed as they grow on, and a look under the leaves. */
export const HEAD_CARE: readonly Care[] = [
  {
    practice: "feed",
    step: "1",
    from: "in place",
    days: commonPractice([21, 35]),
    verb: "Feed",
    how: "Scratch a handful of compost or plant food round each plant, and water it in.",
    sign: "New leaves have begun to grow after planting.",
    why: "It makes its leaves first, and the head is as big as they are.",
    caution: "Plant food: as much as the label says, no more.",
    harm: "when you can",
    minutes: 15,
    needs: ["compost or plant food"],
  },
  {
    practice: "scout",
    step: "1",
    from: "in place",
    days: commonPractice([28, 42]),
    verb: "Look under leaves of",
    how: "Turn a few leaves over. Rub off eggs and pick off caterpillars.",
    sign: "White butterflies fly, or small holes show.",
    why: "A net with a gap is worse than none.",
    caution: null,
    harm: "this week",
    minutes: 10,
    needs: [],
  },
];
