import type { Care, FromSeed } from "./facts.ts";
import { CITE, commonPractice, derived, published } from "./figures.ts";

/** How the relatives of onion come up: with it, for the days given for onions and leeks elsewhere are the same. */
export const AS_ONION: FromSeed = {
  kind: "table",
  row: "onion",
  standsIn: derived("onion", CITE.colorado, "7 to 12 days are given there for onions and leeks"),
};

/** Set out in close rows two weeks before the last frost, whatever the soil. */
export const ONION_SETTING_OUT = {
  weeksFromLastFrost: published(-2, CITE.purdue),
  soilMinC: null,
  rowsCm: commonPractice(12 * 2.54),
} as const;

/** Food between the rows once they have begun to grow. */
export const FEED_LEAVES: Care = {
  practice: "feed",
  step: "1",
  from: "in place",
  days: commonPractice([21, 35]),
  verb: "Feed",
  how: "Scatter compost or plant food between the rows and water it in.",
  sign: "They have made two or three new leaves.",
  why: "Every leaf made before the bulb swells is a ring of it.",
  caution: "Plant food: as much as the label says, no more.",
  harm: "when you can",
  minutes: 15,
  needs: ["compost or plant food"],
};
