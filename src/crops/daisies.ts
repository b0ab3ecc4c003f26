import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  derived,
  fromMemory,
  HARVEST_DEFAULTS,
  inchRange,
  NO_LIMITS,
  OUTDOORS_DEFAULTS,
  published,
  THINNED_AT,
} from "./figures.ts";
import { winterLife } from "./winter-life.ts";

/** Leaf lettuce: sown again and again, cut and comes again. */
export const LETTUCE: Crop = {
  ...CROP_DEFAULTS,
  key: "lettuce",
  one: "lettuce",
  many: "lettuce",
  alsoCalled: ["lettuces", "leaf lettuce", "cutting lettuce", "salad leaves"],
  kinds: [
    "loose-leaf lettuce",
    "looseleaf lettuce",
    "loose leaf lettuce",
    "salad mix",
    "mesclun",
    "salad bowl",
    "mixed leaves",
    "salad greens",
  ],
  family: "daisy family",
  frost: published("very hardy", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: { kind: "table", row: "lettuce", standsIn: null },
  indoors: {
    weeksToSettingOut: fromMemory([3, 5], "Knott's Handbook for Vegetable Growers"),
    soilTempC: commonPractice((65 - 32) / 1.8),
    depthCm: commonPractice(inchRange(0.25, 0.25)),
    potOnDaysAfterUp: null,
    hardenDays: commonPractice(7),
    nightFloorC: fromMemory(
      (45 - 32) / 1.8,
      "extension tables of minimum temperatures for hardening off",
    ),
  },
  settingOut: {
    weeksFromLastFrost: published(-4, CITE.purdue),
    soilMinC: null,
    apartCm: published(8 * 2.54, CITE.colorado),
    rowsCm: commonPractice(12 * 2.54),
    things: ["a watering can"],
    how: "Plant no deeper than they stood in their cells, and water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: commonPractice(inchRange(0.5, 1)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: published((45 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(-4, CITE.purdue),
    soilMaxC: fromMemory((80 - 32) / 1.8, "extension advice on seed that sleeps in warm soil"),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([12, 18]),
      heightCm: THINNED_AT,
      apartCm: derived(
        inchRange(6, 8),
        CITE.colorado,
        "7 to 9 inches given there, an inch closer for cutting young",
      ),
      how: "Cut at ground level; the thinnings are the first salad.",
    },
  ],
  covers: [
    {
      against: "birds",
      with: "net",
      on: "up",
      off: "up",
      offDays: commonPractice([24, 32]),
      offSign: "The plants stand a hand high.",
    },
  ],
  repeatEveryDays: published([14, 14], CITE.floridaRepeat),
  warmth: COOL_WARMTH,
  limits: {
    ...NO_LIMITS,
    heatC: derived(
      (70 - 32) / 1.8,
      CITE.coloradoFrost,
      "days of 80 °F, the upper end of the growth range given there for cool crops, with nights of 60 °F",
    ),
  },
  winter: winterLife(-6, "through it if sown for it", { weeks: [5, 10] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: derived(
      [45, 60],
      CITE.colorado,
      "60 days given there for a full plant, two weeks less for leaves a hand high",
    ),
    kind: "cut and come again",
    cuts: {
      everyDays: fromMemory([14, 21], "usual extension advice"),
      times: fromMemory([2, 4], "usual extension advice"),
    },
    holdsDays: commonPractice(7),
    verb: "Cut",
    sign: "The leaves stand a hand high.",
    how: "Cut the outer leaves a finger above the crown and leave the heart; it grows again.",
  },
};

/** The daisy family, for rotations and shared pests. */
export const DAISY_FAMILY: readonly Crop[] = [LETTUCE];
