import type { Crop, Outdoors, SettingOut } from "./facts.ts";
import {
  CITE,
  common,
  house,
  inchRange,
  memory,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
  WARM_WARMTH,
} from "./figures.ts";
import { GOURD_FABRIC, RAISED_GOURD } from "./raising.ts";

/** What squashes and melons have in common: no cold at all, fabric till they flower, bees after. */
const RUNNING = {
  ...PLAIN,
  family: "gourd family",
  frost: published("warm loving", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  indoors: RAISED_GOURD,
  covers: [GOURD_FABRIC],
  warmth: WARM_WARMTH,
  eaten: "fruit",
  care: [
    {
      practice: "scout",
      step: "1",
      from: "in place",
      days: common([14, 25]),
      verb: "Look under leaves of",
      how: "Turn the leaves: rub off eggs, and knock beetles into soapy water in the cool of the morning.",
      sign: "Small holes, or yellow and black beetles.",
      why: "Young plants are lost to beetles in days.",
      caution: "Spray nothing on flowers or while bees fly; keep to the label.",
      harm: "this week",
      minutes: 10,
      needs: [],
    },
  ],
} as const satisfies Partial<Crop>;

/** Squash seed comes up as melon and cucumber seed does. */
const AS_CUCUMBER = {
  kind: "table",
  row: "cucumber",
  standsIn: common("cucumber"),
} as const;

const out = (apartIn: number, rowsIn: number): SettingOut => ({
  weeksFromLastFrost: published(1, CITE.purdue),
  soilMinC: published((60 - 32) / 1.8, CITE.kansas),
  apartCm: common(apartIn * 2.54),
  rowsCm: published(rowsIn * 2.54, CITE.missouri),
  things: ["fabric, hoops and pegs", "a watering can"],
  how: "Slip them out whole, for their roots hate to be touched. Water in, and close the fabric the same hour.",
});

const sown = (apartIn: number, rowsIn: number): Outdoors => ({
  ...PLAIN_OUTDOORS,
  depthCm: common(inchRange(0.5, 1)),
  apartCm: common(inchRange(apartIn, apartIn)),
  rowsCm: published(rowsIn * 2.54, CITE.missouri),
  soilMinC: published((60 - 32) / 1.8, CITE.kansas),
  weeksFromLastFrost: published(1, CITE.purdue),
  how: "Two seeds to a place; cut the weaker off when both are up.",
});

const BITTER = "Don't eat one that tastes bitter.";

/** Summer squash: two plants feed a street, picked every other day. */
export const SUMMER_SQUASH: Crop = {
  ...RUNNING,
  key: "summer-squash",
  one: "summer squash",
  many: "summer squash",
  alsoCalled: [
    "courgette",
    "courgettes",
    "zucchini",
    "zucchinis",
    "squash",
    "patty pan",
    "marrow",
    "marrows",
  ],
  comesUp: AS_CUCUMBER,
  settingOut: out(30, 48),
  outdoors: sown(30, 48),
  flowers: { daysBeforeHarvest: common([4, 8]), forBees: true },
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: memory([45, 55], CITE.missouri),
    kind: "again and again",
    bearsDays: common([42, 70]),
    holdsDays: common(2),
    verb: "Pick",
    sign: "As long as a hand, the flower just dropped, the skin soft.",
    how: "Cut every other day. One left to swell stops the plant.",
    caution: BITTER,
  },
};

/** Winter squash: one long summer, cured in the sun, kept till spring. */
export const WINTER_SQUASH: Crop = {
  ...RUNNING,
  key: "winter-squash",
  one: "winter squash",
  many: "winter squash",
  alsoCalled: ["butternut", "butternut squash", "acorn squash", "hubbard", "kabocha", "red kuri"],
  comesUp: AS_CUCUMBER,
  settingOut: out(48, 48),
  outdoors: sown(48, 48),
  flowers: { daysBeforeHarvest: common([45, 60]), forBees: true },
  care: [
    ...RUNNING.care,
    {
      practice: "stop the tops",
      step: "1",
      from: "first frost",
      days: common([-50, -40]),
      verb: "Stop the vines of",
      how: "Cut the tip of every vine past its last good fruit, and take off flowers from now on.",
      sign: null,
      why: "What sets from now on is not ripe before the frost.",
      caution: null,
      harm: "when you can",
      minutes: 15,
      needs: ["shears"],
    },
    {
      practice: "cure and store",
      step: "1",
      from: "first harvest",
      days: common([10, 16]),
      verb: "Store",
      how: "Ten days in a warm dry place harden the skin; then lay them apart on a shelf, cool and dry.",
      sign: "The stalk is dry as cork.",
      why: "Uncured ones rot before the New Year.",
      caution: null,
      harm: "when you can",
      minutes: 15,
      needs: ["a shelf or crates"],
    },
  ],
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: published([100, 100], CITE.missouri),
    kind: "once",
    holdsDays: common(21),
    verb: "Cut",
    sign: "The skin resists a thumbnail, and the stalk has turned to cork.",
    how: "Cut with a hand of stalk before any frost. Never carry one by the stalk.",
    caution: BITTER,
  },
};

/** Pumpkin: room for a big vine, and a summer to match. */
export const PUMPKIN: Crop = {
  ...WINTER_SQUASH,
  key: "pumpkin",
  one: "pumpkin",
  many: "pumpkins",
  alsoCalled: ["pie pumpkin", "pie pumpkins", "halloween pumpkin"],
  comesUp: AS_CUCUMBER,
  settingOut: out(60, 60),
  outdoors: sown(60, 60),
  harvest: {
    ...WINTER_SQUASH.harvest,
    days: memory([95, 120], CITE.missouri),
    sign: "Coloured all over, and the skin resists a thumbnail.",
  },
};

/** Melon: heat, film and a short kind in a cold place. */
export const MELON: Crop = {
  ...RUNNING,
  key: "melon",
  one: "melon",
  many: "melons",
  alsoCalled: ["muskmelon", "muskmelons", "cantaloupe", "cantaloupes", "honeydew"],
  comesUp: { kind: "table", row: "muskmelon", standsIn: null },
  settingOut: out(36, 48),
  outdoors: sown(36, 48),
  flowers: { daysBeforeHarvest: common([38, 48]), forBees: true },
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: published([80, 90], CITE.missouri),
    kind: "again and again",
    bearsDays: common([21, 28]),
    holdsDays: common(3),
    verb: "Pick",
    sign: "The stalk parts by itself at a lift, and it smells of melon.",
    how: "Lift each fruit with one hand; leave what holds on.",
  },
};

/** Watermelon: the longest and hottest summer of all. */
export const WATERMELON: Crop = {
  ...RUNNING,
  key: "watermelon",
  one: "watermelon",
  many: "watermelons",
  alsoCalled: ["water melon", "water melons"],
  comesUp: { kind: "table", row: "watermelon", standsIn: null },
  settingOut: out(48, 60),
  outdoors: {
    ...sown(48, 60),
    soilMinC: house(
      (64 - 32) / 1.8,
      "between the 60 °F at which it can come up and the 72 that Texas calls realistic",
    ),
  },
  flowers: { daysBeforeHarvest: common([38, 48]), forBees: true },
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: memory([80, 100], CITE.missouri),
    kind: "again and again",
    bearsDays: common([21, 28]),
    holdsDays: common(7),
    verb: "Cut",
    sign: "The curl beside the stalk is dry, and the spot below is yellow.",
    how: "Cut with a bit of stalk, in the morning.",
  },
};

/** Squashes and melons; one family with the cucumber. */
export const SQUASHES: readonly Crop[] = [SUMMER_SQUASH, WINTER_SQUASH, PUMPKIN, MELON, WATERMELON];
