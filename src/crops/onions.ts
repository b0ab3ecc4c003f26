import type { BulbKinds, Care, CoverFacts, Crop, Harvest, Indoors } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  CROP_DEFAULTS,
  commonPractice,
  derived,
  fromMemory,
  HARVEST_DEFAULTS,
  houseRule,
  inchRange,
  OUTDOORS_DEFAULTS,
  published,
} from "./figures.ts";
import { kindsOf } from "./kinds.ts";
import { LEEKS } from "./leeks.ts";
import { FEED_LEAVES, ONION_SETTING_OUT } from "./onion-ways.ts";
import { COOL_SOIL_C, RAISED_COOL } from "./raising.ts";
import { winterLife } from "./winter-life.ts";

/** Garlic: cloves set in autumn, lifted the summer after. */
export const GARLIC: Crop = {
  ...CROP_DEFAULTS,
  key: "garlic",
  one: "garlic",
  many: "garlic",
  alsoCalled: ["garlics", "hardneck garlic", "softneck garlic"],
  kinds: ["elephant garlic"],
  family: "onion family",
  frost: houseRule("very hardy", "stands the winter in the ground under a mulch"),
  starts: ["cloves"],
  comesUp: { kind: "days", days: commonPractice([160, 200]) },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(3, 3), CITE.otterTail),
    apartCm: published(inchRange(6, 6), CITE.otterTail),
    rowsCm: commonPractice(8 * 2.54),
    soilMinC: commonPractice(0),
  },
  overwinter: {
    plantDaysAfterKillingFrost: published([7, 14], CITE.minnesotaGarlic),
    mulchCm: published(inchRange(4, 6), CITE.otterTail),
    mulchDaysAfterKillingFrost: commonPractice([35, 49]),
    harvestDaysAfterLastFrost: derived(
      [65, 90],
      CITE.minnesotaGarlic,
      "late June to late July in Minnesota, counted from Minneapolis' usual last freeze of 25 April (NOAA 1981-2010)",
    ),
    cutStalksDaysAfterLastFrost: derived(
      [40, 60],
      CITE.otterTail,
      "June in Minnesota, counted from Minneapolis' usual last freeze of 25 April (NOAA 1981-2010)",
    ),
    cureWeeks: fromMemory([2, 4], "Cornell, Minnesota and New Hampshire extension advice"),
  },
  care: [
    {
      practice: "cure and store",
      step: "1",
      from: "first harvest",
      days: commonPractice([14, 28]),
      verb: "Clean and store",
      how: "Brush off the soil, and cut roots and stalk short. Keep the biggest bulbs to plant, and hang the rest somewhere dry and airy.",
      sign: "Necks are dry, and skins rustle.",
      why: "The biggest cloves make the biggest bulbs; what is damp or split rots first, so eat that now.",
      caution: "Plant no garlic with soft or mouldy spots.",
      harm: "when you can",
      minutes: 30,
      needs: ["a net or crates"],
    },
  ],
  eaten: "root",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "planting",
    days: published(
      [240, 270],
      "Anoka County Master Gardeners, University of Minnesota Extension, Growing garlic",
    ),
    kind: "once",
    holdsDays: commonPractice(10),
    verb: "Lift",
    sign: "The lower third of the leaves is brown and five or six are still green.",
    how: "Fork under them and lift whole; don't pull by the stalk. Keep them out of the sun.",
  },
};

/** Onion seed needs no bees, and the fly lays at the neck from spring on; a net over it may stay until harvest. */
const ONION_NET: CoverFacts = {
  against: "onion fly",
  with: "net",
  on: "in place",
  off: "first harvest",
  offDays: commonPractice([-28, -14]),
  offSign: "The bulbs have swelled, and the tops begin to lean.",
};

/** Ten weeks from seed, since the leaf made before the long days is the bulb after. */
const RAISED: Indoors = {
  ...RAISED_COOL,
  weeksToSettingOut: fromMemory([10, 12], "Knott's Handbook for Vegetable Growers"),
};

const cured = (weeks: readonly [number, number]): Care => ({
  practice: "cure and store",
  step: "1",
  from: "first harvest",
  days: commonPractice([weeks[0] * 7, weeks[1] * 7]),
  verb: "Store",
  how: "Rub off loose skin and roots, cut or plait the tops, and hang them somewhere dry and cool.",
  sign: "Necks are dry and papery, and nothing green shows when you cut one.",
  why: "Cured bulbs keep till spring; soft necks rot first, so eat those now.",
  caution: null,
  harm: "when you can",
  minutes: 30,
  needs: ["a net or crates"],
});

/** How bulbs are brought in, from plants; from sets it counts from their planting. */
const BULB_HARVEST: Harvest = {
  ...HARVEST_DEFAULTS,
  from: "setting out",
  days: published([100, 120], CITE.missouri),
  kind: "once",
  holdsDays: commonPractice(14),
  verb: "Lift",
  sign: "Half of the tops have fallen over by themselves.",
  how: "Lift on a dry day and lay them in the air, out of rain and hot sun. Don't bend the tops.",
};

/** The kinds of onion, by the hours of day from which they form bulbs. */
const BULB_KINDS: BulbKinds = {
  "short-day": published(10, CITE.iowaOnions),
  intermediate: published(12, CITE.iowaOnions),
  "long-day": published(14, CITE.iowaOnions),
};

/** Onion: early from seed indoors or from sets, so that there is leaf before the long days make bulbs. */
export const ONION: Crop = {
  ...CROP_DEFAULTS,
  key: "onion",
  one: "onion",
  many: "onions",
  alsoCalled: [
    "bulb onion",
    "bulb onions",
    "dry onion",
    "dry onions",
    "storage onion",
    "storage onions",
    "long-day onion",
    "long-day onions",
    "short-day onion",
    "short-day onions",
    "intermediate onion",
    "intermediate onions",
  ],
  kinds: kindsOf(["red", "yellow", "white", "brown", "sweet", "maincrop"], "onion", "onions"),
  family: "onion family",
  frost: published("very hardy", CITE.purdue),
  starts: ["seed indoors", "sets", "plants", "winter-sown", "seed outdoors"],
  comesUp: { kind: "table", row: "onion", standsIn: null },
  slow: true,
  indoors: RAISED,
  settingOut: {
    ...ONION_SETTING_OUT,
    apartCm: published(4 * 2.54, CITE.colorado),
    things: ["a watering can"],
    how: "Trim long tops, plant a thumb's width deep, firm, and water in. Thicker than a pencil they may bolt: plant the thin ones.",
  },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: published(inchRange(0.25, 0.25), CITE.colorado),
    apartCm: commonPractice(inchRange(0.5, 1)),
    rowsCm: published(18 * 2.54, CITE.missouri),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: published(-4, CITE.purdue),
  },
  thinnings: [
    {
      step: "1",
      daysAfterUp: commonPractice([28, 40]),
      heightCm: commonPractice(inchRange(3, 4)),
      apartCm: published(inchRange(3, 3), CITE.missouri),
      how: "Pull the weakest, and use them green.",
    },
  ],
  covers: [ONION_NET],
  care: [FEED_LEAVES, cured([2, 4])],
  warmth: COOL_WARMTH,
  bulbs: BULB_KINDS,
  eaten: "root",
  whenBegun: {
    sets: {
      comesUp: { kind: "days", days: commonPractice([10, 18]) },
      slow: false,
      thinnings: [],
      outdoors: {
        ...OUTDOORS_DEFAULTS,
        depthCm: published(inchRange(1, 1), CITE.missouri),
        apartCm: published(inchRange(3, 3), CITE.missouri),
        rowsCm: published(18 * 2.54, CITE.missouri),
        soilMinC: COOL_SOIL_C,
        weeksFromLastFrost: published(-4, CITE.purdue),
        how: "Push each in to its neck, point up. Big sets bolt; small ones make the better bulb.",
      },
      harvest: { ...BULB_HARVEST, from: "planting" },
    },
  },
  winter: winterLife(-10, "after it", { weeks: [4, 13], daysAfterSpring: 55 }),
  harvest: BULB_HARVEST,
};

/** Shallot: one set makes a cluster. */
export const SHALLOT: Crop = {
  ...CROP_DEFAULTS,
  key: "shallot",
  one: "shallot",
  many: "shallots",
  alsoCalled: ["shallot sets"],
  family: "onion family",
  frost: commonPractice("very hardy"),
  starts: ["sets"],
  comesUp: { kind: "days", days: commonPractice([10, 18]) },
  outdoors: {
    ...OUTDOORS_DEFAULTS,
    depthCm: commonPractice(inchRange(1, 1)),
    apartCm: commonPractice(inchRange(6, 6)),
    rowsCm: commonPractice(12 * 2.54),
    soilMinC: COOL_SOIL_C,
    weeksFromLastFrost: commonPractice(-4),
    how: "Push each in so that the tip just shows, point up.",
  },
  care: [cured([2, 3])],
  warmth: COOL_WARMTH,
  eaten: "root",
  winter: winterLife(-10, "after it", { weeks: [0, 8], daysAfterSpring: 55 }),
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "planting",
    days: commonPractice([90, 110]),
    kind: "once",
    holdsDays: commonPractice(14),
    verb: "Lift",
    sign: "The tops have yellowed and fallen over.",
    how: "Lift the clusters on a dry day and dry them in the air before you part them.",
  },
};

/** The onion family, for rotations and shared pests. */
export const ONION_FAMILY: readonly Crop[] = [GARLIC, ONION, ...LEEKS, SHALLOT];
