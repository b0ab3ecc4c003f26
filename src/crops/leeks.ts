import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  fromMemory,
  HARVEST_DEFAULTS,
  inchRange,
  OUTDOORS_DEFAULTS,
  published,
} from "./figures.ts";
import { AS_ONION, FEED_LEAVES, ONION_SETTING_OUT } from "./onion-ways.ts";
import { COOL_SOIL_C, RAISED_COOL } from "./raising.ts";
import { winterLife } from "./winter-life.ts";

/** Scallion: onion for its green, sown thick and pulled young. */
export const SCALLION: Crop = {
  ...CROP_DEFAULTS,
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
  kinds: ["welsh onion", "welsh onions"],
  family: "onion family",
  frost: commonPractice("very hardy"),
  starts: ["seed outdoors", "seed indoors", "plants", "sets"],
  comesUp: AS_ONION,
  slow: true,
  indoors: { ...RAISED_COOL, weeksToSettingOut: commonPractice([6, 8]) },
  settingOut: {
    ...ONION_SETTING_OUT,
    apartCm: commonPractice(1.5 * 2.54),
    things: ["a watering can"],
    how: "Plant them in pinches of five or six, and water in.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: commonPractice(inchRange(0.5, 0.5)),
    rowsCm: commonPractice(9 * 2.54),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: commonPractice(-4),
  },
  repeatEveryDays: fromMemory([14, 21], "usual extension succession lists"),
  warmth: COOL_WARMTH,
  whenBegun: {
    sets: { comesUp: { kind: "days", days: commonPractice([10, 18]) }, slow: false },
  },
  winter: winterLife(-10, "through it if sown for it", { weeks: [8, 15] }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "sowing",
    days: published([60, 60], CITE.colorado),
    kind: "once",
    holdsDays: commonPractice(28),
    verb: "Pull",
    sign: "Stems are as thick as a pencil.",
    how: "Loosen with a fork and pull the thickest first.",
  },
};

/** Leek: raised in pots, dibbled deep, blanched by the soil that falls in. */
export const LEEK: Crop = {
  ...CROP_DEFAULTS,
  key: "leek",
  one: "leek",
  many: "leeks",
  alsoCalled: ["winter leek", "winter leeks"],
  family: "onion family",
  frost: commonPractice("very hardy"),
  starts: ["seed indoors", "plants", "winter-sown", "seed outdoors"],
  comesUp: AS_ONION,
  slow: true,
  indoors: {
    ...RAISED_COOL,
    weeksToSettingOut: fromMemory([8, 12], "Knott's Handbook for Vegetable Growers"),
  },
  settingOut: {
    ...ONION_SETTING_OUT,
    weeksFromLastFrost: commonPractice(-1),
    apartCm: published(6 * 2.54, CITE.colorado),
    things: ["a thick dibber", "a watering can"],
    how: "Make holes as deep as a hand is long, drop a leek in each, and fill them with water and nothing else: they fill themselves.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: commonPractice(inchRange(0.5, 1)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: commonPractice(-4),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([35, 50]),
      heightCm: commonPractice(inchRange(4, 6)),
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
      days: commonPractice([49, 63]),
      verb: "Earth up",
      how: [
        "Draw ",
        { cm: inchRange(1, 2) },
        " of loose soil up to the stems, not into the leaves.",
      ],
      sign: "Stems are as thick as a finger, and the holes have filled.",
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
      days: commonPractice([77, 91]),
      verb: "Earth … up again",
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
  winter: winterLife(-12, "through it", { inPlace: 26 }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: published([120, 120], CITE.colorado),
    kind: "again and again",
    bearsDays: commonPractice([40, 80]),
    holdsDays: commonPractice(30),
    verb: "Dig",
    sign: "Stems are as thick as a broom handle.",
    how: "Loosen with a fork and dig what you need. They stand in the cold; mulch them to dig in frost.",
  },
};

/** The onion family's stems and greens. */
export const LEEKS: readonly Crop[] = [SCALLION, LEEK];
