import type { Crop } from "./facts.ts";
import { commonPractice } from "./figures.ts";
import { cut, HERB, plantedOut, trimmed } from "./herbs.ts";

const CUT_BACK = trimmed([-42, -21], {
  step: "trim",
  verb: "Clear",
  how: "Cut last year's dead stems off at the ground, and lay compost round the young shoots.",
  sign: "Young shoots show at the foot.",
  why: "They come up clean and strong, and slugs find nowhere to hide.",
});

/** Sorrel: sour leaves from early spring on, as long as it is kept from flowering. */
export const SORREL: Crop = {
  ...HERB,
  key: "sorrel",
  one: "sorrel",
  many: "sorrel",
  alsoCalled: ["garden sorrel", "common sorrel", "french sorrel"],
  family: "knotweed family",
  starts: ["plants", "seed indoors"],
  slow: false,
  settingOut: plantedOut(12, "Plant it as deep as it stood, and water it in."),
  care: [
    trimmed([20, 45], {
      step: "flowers",
      verb: "Take the flowers off",
      how: "Cut the flower stalks off at the ground as soon as they show.",
      sign: "A stalk stands up among the leaves.",
      why: "In flower it makes no more leaves.",
    }),
  ],
  harvest: cut("The leaves are a hand long.", "Pick outer leaves and leave the heart."),
};

/** Lovage: one plant as tall as a man is enough for a household. */
export const LOVAGE: Crop = {
  ...HERB,
  key: "lovage",
  one: "lovage",
  many: "lovage",
  alsoCalled: [],
  family: "carrot family",
  settingOut: plantedOut(36, "Plant it as deep as it stood, in deep soil with compost. Water in."),
  care: [CUT_BACK],
  harvest: cut("The leaves are a hand long.", "Cut young leaves with their stalks from outside."),
};

/** Tarragon: a plant that is bought, since the good kind makes no seed. */
export const TARRAGON: Crop = {
  ...HERB,
  key: "tarragon",
  one: "tarragon",
  many: "tarragon",
  alsoCalled: ["french tarragon"],
  family: "daisy family",
  frost: commonPractice("very hardy"),
  starts: ["plants"],
  slow: false,
  indoors: null,
  settingOut: plantedOut(18, "Plant it in sun, where no water stands in winter. Water in."),
  care: [CUT_BACK],
  harvest: cut("The stems are a hand high.", "Snip tips, never more than a third of a stem."),
};

/** Herbs that die back in winter and come again. */
export const SOFT_HERBS: readonly Crop[] = [SORREL, LOVAGE, TARRAGON];
