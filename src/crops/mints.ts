import type { Crop } from "./facts.ts";
import {
  CITE,
  common,
  derived,
  house,
  inchRange,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
  WARM_WARMTH,
} from "./figures.ts";

/** Basil: no cold at all, black after one cool night; raised indoors, its tips cut again and again. */
export const BASIL: Crop = {
  ...PLAIN,
  key: "basil",
  one: "basil",
  many: "basil",
  alsoCalled: ["sweet basil", "genovese basil", "thai basil", "lemon basil"],
  family: "mint family",
  frost: common("warm loving"),
  starts: ["seed indoors", "plants", "seed outdoors"],
  comesUp: {
    kind: "table",
    row: "tomato",
    standsIn: common("tomato"),
  },
  indoors: {
    weeksToSettingOut: derived([5, 7], CITE.virginia, "six weeks for most crops, one either way"),
    soilTempC: common(21),
    depthCm: common(inchRange(0.25, 0.25)),
    potOnDaysAfterUp: null,
    hardenDays: derived(10, CITE.maryland, "inside the one to two weeks given there"),
    nightFloorC: published(10, CITE.beltrami),
  },
  settingOut: {
    weeksFromLastFrost: common(2),
    soilMinC: common((60 - 32) / 1.8),
    apartCm: common(10 * 2.54),
    rowsCm: common(12 * 2.54),
    things: ["a watering can", "fabric for a cool night"],
    how: "Plant them as deep as they stood and water in. Keep fabric at hand: one cool night turns the leaves black.",
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: common(inchRange(0.25, 0.25)),
    apartCm: common(inchRange(1, 2)),
    rowsCm: common(12 * 2.54),
    soilMinC: common((60 - 32) / 1.8),
    weeksFromLastFrost: common(1),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: common([18, 28]),
      heightCm: common(inchRange(2, 3)),
      apartCm: common(inchRange(8, 10)),
      how: "Snip the weaker ones off; they are good in the kitchen.",
    },
  ],
  repeatEveryDays: common([21, 28]),
  warmth: WARM_WARMTH,
  care: [
    {
      practice: "stop the tops",
      step: "1",
      from: "in place",
      days: common([10, 18]),
      verb: "Pinch out",
      how: ["Take the tip of every shoot off above the second pair of leaves."],
      sign: ["They stand ", { cm: inchRange(6, 8) }, " tall."],
      why: "They branch and make leaf instead of flowers.",
      caution: null,
      harm: "when you can",
      minutes: 5,
      needs: [],
    },
  ],
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: common([60, 70]),
    kind: "again and again",
    bearsDays: common([50, 80]),
    holdsDays: house(5, "leaf is good for days; flowers end it"),
    verb: "Cut",
    sign: "The shoots have four pairs of leaves, and no flowers show.",
    how: "Cut tips above a pair of leaves, never down to bare stem. Take flower buds off as they come.",
  },
};

/** The mint family. */
export const MINT_FAMILY: readonly Crop[] = [BASIL];
