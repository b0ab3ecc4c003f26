import type { Crop } from "./facts.ts";
import { commonPractice, HARVEST_DEFAULTS, inchRange, NO_LIMITS } from "./figures.ts";
import { GREENS, MUSTARD, sown, thinned } from "./mustards.ts";

/** Sown where they are to grow, and nowhere else. */
const IN_PLACE = { ...GREENS, starts: ["seed outdoors"], indoors: null } as const;

/** Rapini: leaves, stalks and buds cut together before the flowers open. */
export const RAPINI: Crop = {
  ...IN_PLACE,
  key: "rapini",
  one: "rapini",
  many: "rapini",
  alsoCalled: ["broccoli raab", "broccoli rabe", "cime di rapa", "turnip tops"],
  frost: commonPractice("frost tolerant"),
  outdoors: sown([1, 2], commonPractice(-3)),
  thinnings: thinned(commonPractice(inchRange(4, 6))),
  limits: { ...NO_LIMITS, heatC: commonPractice(22) },
  repeatEveryDays: commonPractice([14, 21]),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([45, 60]),
    kind: "cut and come again",
    cuts: { everyDays: commonPractice([7, 12]), times: commonPractice([2, 3]) },
    holdsDays: commonPractice(4),
    verb: "Cut",
    sign: "Buds show among the leaves, and none is yellow yet.",
    how: "Cut the middle shoot a hand long with its leaves; smaller ones follow from below.",
  },
};

/** Komatsuna: mild leaves that stand more heat and more cold than their kin. */
export const KOMATSUNA: Crop = {
  ...IN_PLACE,
  key: "komatsuna",
  one: "komatsuna",
  many: "komatsuna",
  alsoCalled: ["mustard spinach"],
  frost: commonPractice("very hardy"),
  outdoors: sown([1, 2], commonPractice(-4)),
  thinnings: thinned(commonPractice(inchRange(4, 6))),
  limits: { ...NO_LIMITS, longDays: commonPractice({ hours: 14, aboveC: 20 }) },
  repeatEveryDays: commonPractice([14, 21]),
  harvest: {
    ...MUSTARD.harvest,
    days: commonPractice([35, 45]),
    holdsDays: commonPractice(10),
  },
};

/** Garden cress: cut within three weeks, sown little and often. */
export const CRESS: Crop = {
  ...IN_PLACE,
  key: "cress",
  one: "cress",
  many: "cress",
  alsoCalled: ["garden cress", "pepper cress", "pepperwort"],
  frost: commonPractice("frost tolerant"),
  covers: [],
  outdoors: sown([0.25, 0.25], commonPractice(-3)),
  thinnings: [],
  limits: { ...NO_LIMITS, heatC: commonPractice(22) },
  repeatEveryDays: commonPractice([7, 14]),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: commonPractice([15, 25]),
    kind: "once",
    holdsDays: commonPractice(5),
    verb: "Cut",
    sign: "It stands as high as a finger is long.",
    how: "Cut it with scissors just above the soil.",
  },
};

/** Quick leaves of the cabbage family that are sown where they grow. */
export const QUICK_GREENS: readonly Crop[] = [RAPINI, KOMATSUNA, CRESS];
