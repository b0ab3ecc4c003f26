import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  common,
  derived,
  inchRange,
  memory,
  NO_LIMITS,
  published,
} from "./figures.ts";

/** Carrot: slow seed, best under a board; thinned twice. */
export const CARROT: Crop = {
  key: "carrot",
  one: "carrot",
  many: "carrots",
  alsoCalled: [],
  family: "carrot family",
  frost: published("frost tolerant", CITE.purdue),
  starts: ["seed outdoors"],
  comesUp: {
    kind: "table",
    row: "beet",
    standsIn: derived(
      "beet",
      CITE.colorado,
      "the 10 to 17 days given there for carrot are beet's row at 59 and 50 °F, the soil it is sown into",
    ),
  },
  slow: true,
  indoors: null,
  settingOut: null,
  outdoors: {
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: common(inchRange(0.5, 0.5)),
    rowsCm: common(12 * 2.54),
    soilMinC: published((45 - 32) / 1.8, CITE.nebraska),
    weeksFromLastFrost: published(-3, CITE.purdue),
    soilMaxC: null,
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: common([17, 25]),
      heightCm: published(inchRange(1, 2), CITE.florida),
      apartCm: memory(inchRange(1, 1), "usual advice of extension crop sheets"),
      how: "Snip or pull on a still evening and carry the thinnings away; their smell draws the carrot fly.",
    },
    {
      step: "2",
      daysAfterUp: common([38, 48]),
      heightCm: common(inchRange(4, 5)),
      apartCm: published(inchRange(2, 3), CITE.colorado),
      how: "These thinnings are good to eat. Firm the soil back and water.",
    },
  ],
  hilling: null,
  cover: null,
  repeatEveryDays: memory([21, 28], "usual extension succession lists"),
  overwinter: null,
  warmth: COOL_WARMTH,
  limits: NO_LIMITS,
  harvest: {
    from: "sowing",
    days: derived([65, 75], CITE.colorado, "70 days given there, five either way"),
    kind: "once",
    cuts: null,
    bearsDays: null,
    holdsDays: common(45),
    verb: "Pull",
    sign: "Shoulders as thick as your thumb stand in the soil's surface.",
    how: "Loosen with a fork and pull; the rest can stand and be pulled as you need them.",
    caution: null,
  },
};

/** The carrot family, for rotations and shared pests. */
export const CARROT_FAMILY: readonly Crop[] = [CARROT];
