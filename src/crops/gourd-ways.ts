import type { Care, CoverFacts, Indoors } from "./facts.ts";
import { CITE, commonPractice, derived, inchRange } from "./figures.ts";

/** Days for gourds under cover: short, in pots that they leave whole, since their roots hate to be touched. */
export const GOURD_INDOORS: Indoors = {
  weeksToSettingOut: derived(
    [2, 4],
    CITE.virginia,
    "three weeks for the gourd family, one either way",
  ),
  soilTempC: commonPractice(24),
  depthCm: commonPractice(inchRange(0.5, 1)),
  potOnDaysAfterUp: null,
  hardenDays: derived(7, CITE.maryland, "the shorter of the one to two weeks given there"),
  nightFloorC: derived(10, CITE.maryland, "given there for cucumber and melon"),
};

/** Fabric against cucumber beetles, from the day they are in until the bees are needed. */
export const BEETLE_FABRIC: CoverFacts = {
  against: "cucumber beetles",
  with: "fabric",
  on: "in place",
  off: "flower",
  offDays: derived([0, 3], CITE.newEngland, "off when flowers appear; three days do no harm"),
  offSign: "The first flower with a small fruit behind it opens.",
};

/** Feeding as the first fruits swell. */
export const FEED_AT_FRUIT: Care = {
  practice: "feed",
  step: "1",
  from: "flower",
  days: commonPractice([7, 14]),
  verb: "Feed",
  how: "Spread compost or a garden feed around each plant, off the stem, and water it in.",
  sign: "The first small fruits swell behind their flowers.",
  why: "From now on they feed fruit and leaves at once.",
  caution: "Feed: no more than the label says.",
  harm: "when you can",
  minutes: 10,
  needs: ["compost or feed", "a watering can"],
};

/** A look for striped and spotted beetles, once no fabric keeps them off. */
export const BEETLE_LOOK: Care = {
  practice: "scout",
  step: "1",
  from: "flower",
  days: commonPractice([4, 10]),
  verb: "Check",
  how: "Look into flowers and under leaves in the cool of the morning. Knock striped beetles into soapy water.",
  sign: "Round holes in leaves, or one stem that wilts alone.",
  why: "They carry a wilt that no spray cures.",
  caution: "Never spray open flowers: bees are at work in there.",
  harm: "when you can",
  minutes: 10,
  needs: ["a pot of soapy water"],
  regions: ["north america"],
};

/** A look for squash bugs and borers. */
export const SQUASH_LOOK: Care = {
  ...BEETLE_LOOK,
  how: "Crush rows of bronze eggs under the leaves. Look for crumbs like sawdust at the foot of each stem.",
  sign: "Leaves that wilt at noon in damp soil.",
  why: "Eggs are quickly crushed; grown squash bugs and borers are hard to stop.",
  needs: [],
};
