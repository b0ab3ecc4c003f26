import type { Care } from "./facts.ts";
import { commonPractice } from "./figures.ts";

/** What is left in the bed, brought in before the ground freezes over it: about the killing frost, two weeks after the first. */
const BEFORE_HARD_FROST = {
  practice: "cure and store",
  step: "winter",
  from: "first frost",
  days: commonPractice([7, 16]),
  verb: "Bring in the last",
  sign: "Nights well below freezing are forecast.",
  caution: null,
  harm: "this week",
  minutes: 30,
  only: ["frozen ground"],
} as const satisfies Partial<Care>;

const SAND =
  "Fork up what is left on a dry day and twist the tops off. Lay sound roots in damp sand in a cold place free of frost, and eat nicked ones first.";

/** The last carrots, in sand. */
export const STORE_CARROTS: Care = {
  ...BEFORE_HARD_FROST,
  how: SAND,
  why: "Hard frost splits the shoulders of carrots, and frozen ground holds the rest.",
  needs: ["a box of damp sand"],
  standsDays: commonPractice(90),
};

/** The last beets, in sand. */
export const STORE_BEETS: Care = {
  ...BEFORE_HARD_FROST,
  how: SAND,
  why: "Beets sit half out of the soil, and hard frost turns them soft.",
  needs: ["a box of damp sand"],
  standsDays: commonPractice(75),
};

/** The last cabbages, on a shelf. */
export const STORE_CABBAGES: Care = {
  ...BEFORE_HARD_FROST,
  how: "Cut firm heads with a hand of stalk and strip the loose leaves. Stand them on a shelf just above freezing, none touching; eat split ones now.",
  why: "Light frost sweetens cabbages; hard frost and thaw burst them.",
  needs: [],
  standsDays: commonPractice(45),
};
