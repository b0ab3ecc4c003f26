import type { Care, FromSeed } from "./facts.ts";
import { CITE, commonPractice, derived, published } from "./figures.ts";

/** How onion relatives come up, for which the days table has no row. */
export const AS_BEET: FromSeed = {
  kind: "table",
  row: "beet",
  standsIn: derived(
    "beet",
    CITE.colorado,
    "7 to 12 days given there for onions and leeks, 7 to 10 for beet, the nearest of the rows",
  ),
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
  why: "Every leaf made before midsummer is a ring of the bulb.",
  caution: "Plant food: as much as the label says, no more.",
  harm: "when you can",
  minutes: 15,
  needs: ["compost or plant food"],
};
