import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  common,
  inchRange,
  memory,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
} from "./figures.ts";
import { AS_BEET, FEED_LEAVES, SET_OUT } from "./onion-ways.ts";
import { COOL_SOIL_C, RAISED_COOL } from "./raising.ts";

/** Scallion: onion for its green, sown thick and pulled young. */
export const SCALLION: Crop = {
  ...PLAIN,
  key: "scallion",
  one: "scallion",
  many: "scallions",
  alsoCalled: [
    "spring onion",
    "spring onions",
    "green onion",
    "green onions",
    "bunching onion",
    "bunching onions",
  ],
  family: "onion family",
  frost: common("very hardy"),
  starts: ["seed outdoors", "seed indoors", "plants", "sets"],
  comesUp: AS_BEET,
  slow: true,
  indoors: { ...RAISED_COOL, weeksToSettingOut: common([6, 8]) },
  settingOut: {
    ...SET_OUT,
    apartCm: common(1.5 * 2.54),
    things: ["a watering can"],
    how: "Plant them in pinches of five or six, and water in.",
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: common(inchRange(0.5, 0.5)),
    rowsCm: common(9 * 2.54),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: common(-4),
  },
  repeatEveryDays: memory([14, 21], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  whenBegun: {
    sets: { comesUp: { kind: "days", days: common([10, 18]) }, slow: false },
  },
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: published([60, 60], CITE.colorado),
    kind: "once",
    holdsDays: common(28),
    verb: "Pull",
    sign: "Stems are as thick as a pencil.",
    how: "Loosen with a fork and pull the thickest first.",
  },
};

/** Leek: raised in pots, dibbled deep, blanched by the soil that falls in. */
export const LEEK: Crop = {
  ...PLAIN,
  key: "leek",
  one: "leek",
  many: "leeks",
  alsoCalled: ["winter leek", "winter leeks"],
  family: "onion family",
  frost: common("very hardy"),
  starts: ["seed indoors", "plants", "winter-sown", "seed outdoors"],
  comesUp: AS_BEET,
  slow: true,
  indoors: {
    ...RAISED_COOL,
    weeksToSettingOut: memory([8, 12], "Knott's Handbook for Vegetable Growers"),
  },
  settingOut: {
    ...SET_OUT,
    weeksFromLastFrost: common(-1),
    apartCm: published(6 * 2.54, CITE.colorado),
    things: ["a thick dibber", "a watering can"],
    how: "Make holes as deep as a hand is long, drop a leek in each, and fill them with water and nothing else: they fill themselves.",
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: common(inchRange(0.5, 1)),
    rowsCm: common(12 * 2.54),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: common(-4),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: common([35, 50]),
      heightCm: common(inchRange(4, 6)),
      apartCm: published(inchRange(4, 6), CITE.colorado),
      how: "Use the thinnings like scallions.",
    },
  ],
  care: [
    { ...FEED_LEAVES, why: "Every leaf made before midsummer is a layer of the stem." },
    {
      practice: "fill in and blanch",
      step: "1",
      from: "in place",
      days: memory([21, 28], "Minnesota, Illinois and Cornell extension advice"),
      verb: "Draw soil up to",
      how: [
        "Draw ",
        { cm: inchRange(1, 2) },
        " of loose soil up to the stems, not into the leaves.",
      ],
      sign: "Stems are as thick as a pencil.",
      why: "What stands in soil stays white and tender.",
      caution: null,
      harm: "when you can",
      minutes: 20,
      needs: ["a hoe"],
    },
    {
      practice: "fill in and blanch",
      step: "2",
      from: "in place",
      days: common([42, 56]),
      verb: "Draw soil again up to",
      how: ["Another ", { cm: inchRange(1, 2) }, ", and stop below the lowest leaf."],
      sign: "The stems have grown out of the last hilling.",
      why: "Grit in the leaves is never washed out.",
      caution: null,
      harm: "when you can",
      minutes: 20,
      needs: ["a hoe"],
    },
  ],
  warmth: COOL_WARMTH,
  eaten: "root",
  harvest: {
    ...PLAIN_HARVEST,
    from: "setting out",
    days: published([120, 120], CITE.colorado),
    kind: "again and again",
    bearsDays: common([40, 80]),
    holdsDays: common(30),
    verb: "Dig",
    sign: "Stems are as thick as a broom handle.",
    how: "Loosen with a fork and dig what you need. They stand in the cold; mulch them to dig in frost.",
  },
};

/** The onion family's stems and greens. */
export const LEEKS: readonly Crop[] = [SCALLION, LEEK];
