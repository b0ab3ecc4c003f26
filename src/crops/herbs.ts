import type { Care, Crop, SettingOut } from "./facts.ts";
import {
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  inchRange,
  OUTDOORS_DEFAULTS,
} from "./figures.ts";
import { RAISED_COOL } from "./raising.ts";

/** Set out as plants, so far apart [in], once hard frost is over. */
export const plantedOut = (apartIn: number, how: string): SettingOut => ({
  weeksFromLastFrost: commonPractice(-2),
  soilMinC: null,
  apartCm: commonPractice(apartIn * 2.54),
  rowsCm: commonPractice(apartIn * 2.54),
  things: ["a watering can"],
  how,
});

/** Herbs that stand for years: bought or raised from fine slow seed, cut from the first summer on. */
export const HERB = {
  ...CROP_DEFAULTS,
  family: "mint family",
  frost: commonPractice("very hardy"),
  starts: ["plants", "seed indoors"],
  comesUp: { kind: "table", row: "parsley", standsIn: commonPractice("parsley") },
  slow: true,
  indoors: {
    ...RAISED_COOL,
    weeksToSettingOut: commonPractice([8, 10]),
    depthCm: commonPractice([0, 0]),
  },
  perennial: {
    firstHarvestYear: commonPractice(1),
    harvestDaysAfterLastFrost: commonPractice([0, 21]),
    harvestWeeks: commonPractice([14, 20]),
    standsYears: commonPractice([4, 6]),
    ends: null,
  },
  warmth: COOL_WARMTH,
} as const satisfies Partial<Crop>;

/** Tips cut as they are wanted, from a few weeks after it is set out. */
export const cut = (sign: string, how: string): Crop["harvest"] => ({
  ...HARVEST_DEFAULTS,
  from: "setting out",
  days: commonPractice([45, 60]),
  kind: "again and again",
  holdsDays: commonPractice(30),
  verb: "Cut",
  sign,
  how,
});

/** A job of every year with shears, counted from the usual last frost [days]. */
export const trimmed = (
  days: readonly [number, number],
  words: Pick<Care, "step" | "verb" | "how" | "sign" | "why">,
): Care => ({
  practice: "yearly",
  from: "last frost",
  days: commonPractice(days),
  caution: null,
  harm: "when you can",
  minutes: 10,
  needs: ["shears"],
  ...words,
});

/** Thyme: low and woody, trimmed after its flowers. */
export const THYME: Crop = {
  ...HERB,
  key: "thyme",
  one: "thyme",
  many: "thyme",
  alsoCalled: ["common thyme", "garden thyme", "lemon thyme", "english thyme"],
  settingOut: plantedOut(10, "Plant it no deeper than it stood, in sun and where water runs off."),
  care: [
    trimmed([50, 75], {
      step: "trim",
      verb: "Trim",
      how: "Take off the faded flowers with a third of the green shoots, never down into bare wood.",
      sign: "The flowers have faded.",
      why: "Untrimmed thyme turns woody and falls open in the middle.",
    }),
  ],
  harvest: cut(
    "The shoots are as long as a finger.",
    "Snip green tips; leave leaves on each stem.",
  ),
};

/** Oregano, and sweet marjoram that lives through winter beside it. */
export const OREGANO: Crop = {
  ...HERB,
  key: "oregano",
  one: "oregano",
  many: "oregano",
  alsoCalled: ["greek oregano", "marjoram", "sweet marjoram", "pot marjoram"],
  settingOut: plantedOut(12, "Plant it no deeper than it stood, in sun, and water it in."),
  care: [
    trimmed([-28, -7], {
      step: "trim",
      verb: "Cut back",
      how: "Cut last year's dead stems down to the new green at the base.",
      sign: "Small green shoots show at the foot.",
      why: "Light on the young shoots makes it bushy.",
    }),
  ],
  harvest: cut(
    "The stems are a hand high.",
    "Cut stems by half. For drying, cut them just as the first flowers open.",
  ),
};

/** Sage: a small shrub, cut back in spring and renewed after some years. */
export const SAGE: Crop = {
  ...HERB,
  key: "sage",
  one: "sage",
  many: "sage",
  alsoCalled: ["common sage", "garden sage", "purple sage"],
  slow: false,
  settingOut: plantedOut(20, "Plant it no deeper than it stood, in sun, and water it in."),
  care: [
    trimmed([-7, 14], {
      step: "trim",
      verb: "Cut back",
      how: "Shorten the shoots by a third, above green leaves and never into bare wood.",
      sign: "New leaves show along the stems.",
      why: "It keeps the shrub low and full of leaf.",
    }),
  ],
  harvest: cut("New leaves are as long as a finger.", "Pick single leaves or short tips."),
};

/** Mint: runs through a whole bed unless its roots are kept in. */
export const MINT: Crop = {
  ...HERB,
  key: "mint",
  one: "mint",
  many: "mint",
  alsoCalled: ["spearmint", "peppermint", "garden mint", "mints", "apple mint"],
  starts: ["plants", "crowns"],
  slow: false,
  indoors: null,
  settingOut: plantedOut(
    18,
    "Plant it in a pot sunk to its rim, or in a tub of its own: its roots run far. Water it in.",
  ),
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(1, 2)),
    apartCm: commonPractice(inchRange(6, 12)),
    rowsCm: commonPractice(18 * 2.54),
    soilMinC: commonPractice((45 - 32) / 1.8),
    weeksFromLastFrost: commonPractice(-4),
    how: "Lay pieces of root flat in a sunk pot or a tub of their own, and cover them.",
  },
  care: [
    trimmed([55, 80], {
      step: "trim",
      verb: "Cut down",
      how: "Cut it all down to a finger's height, feed it and water it well: fresh leaves follow.",
      sign: "Flower buds show, or rust spots the leaves.",
      why: "Old stems are bitter and carry rust.",
    }),
    {
      ...trimmed([-35, -14], {
        step: "roots",
        verb: "Cut in the roots of",
        how: "Cut round it with a spade, pull out what has run off, and give it fresh compost.",
        sign: "Shoots come up where none are wanted.",
        why: "Left alone it takes the bed within two or three years.",
      }),
      minutes: 20,
      needs: ["a spade", "compost"],
    },
  ],
  harvest: cut(
    "The stems are a hand high.",
    "Cut stems above a pair of leaves; they branch there.",
  ),
};

/** Lavender: a low shrub, trimmed once its flowers fade. */
export const LAVENDER: Crop = {
  ...HERB,
  key: "lavender",
  one: "lavender",
  many: "lavender",
  alsoCalled: ["english lavender", "common lavender", "lavenders"],
  settingOut: plantedOut(18, "Plant it no deeper than it stood, in sun and where water runs off."),
  care: [
    trimmed([85, 110], {
      step: "trim",
      verb: "Trim",
      how: "Take off the flower stalks with a finger's length of green, never down into bare wood.",
      sign: "The flowers have faded.",
      why: "It does not grow again from bare wood, and untrimmed it falls open.",
    }),
  ],
  harvest: cut(
    "The lowest flowers of a spike are open.",
    "Cut spikes with long stalks on a dry morning.",
  ),
};

/** Lemon balm: cut down in summer before it seeds itself about. */
export const LEMON_BALM: Crop = {
  ...HERB,
  key: "lemon-balm",
  one: "lemon balm",
  many: "lemon balm",
  alsoCalled: ["balm", "melissa"],
  settingOut: plantedOut(
    18,
    "Plant it as deep as it stood, in sun or half shade, and water it in.",
  ),
  care: [
    trimmed([50, 75], {
      step: "trim",
      verb: "Cut down",
      how: "Cut it all down to a finger's height and water it well: fresh leaves follow.",
      sign: "Flower buds show.",
      why: "In seed it comes up all over the garden.",
    }),
  ],
  harvest: cut(
    "The stems are a hand high.",
    "Cut stems above a pair of leaves; they branch there.",
  ),
};

/** The mint family's herbs that stand for years. */
export const HERBS: readonly Crop[] = [THYME, OREGANO, SAGE, MINT, LAVENDER, LEMON_BALM];
