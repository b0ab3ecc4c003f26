import type { Crop } from "./facts.ts";
import {
  CROP_DEFAULTS,
  commonPractice,
  HARVEST_DEFAULTS,
  houseRule,
  WARM_WARMTH,
} from "./figures.ts";
import { RAISED_WARM } from "./raising.ts";

/** Tomatillo: grown as tomatoes are, but by twos, since one alone sets no fruit. */
export const TOMATILLO: Crop = {
  ...CROP_DEFAULTS,
  key: "tomatillo",
  one: "tomatillo",
  many: "tomatillos",
  alsoCalled: [
    "husk tomato",
    "husk tomatoes",
    "ground cherry",
    "ground cherries",
    "cape gooseberry",
  ],
  family: "nightshade family",
  frost: commonPractice("tender"),
  starts: ["seed indoors", "plants"],
  comesUp: {
    kind: "table",
    row: "tomato",
    standsIn: houseRule("tomato", "its kin, raised in the same warmth and up as soon"),
  },
  indoors: RAISED_WARM,
  settingOut: {
    weeksFromLastFrost: commonPractice(1),
    soilMinC: commonPractice((60 - 32) / 1.8),
    apartCm: commonPractice(30 * 2.54),
    rowsCm: commonPractice(36 * 2.54),
    things: ["a watering can"],
    how: "Plant at least two near each other, up to the first leaves, and water in.",
  },
  flowers: { daysBeforeHarvest: commonPractice([35, 50]), forBees: true },
  support: {
    things: ["a cage for each plant"],
    how: "Set the cage over the plant while it is small; the branches lean and break.",
    first: null,
  },
  warmth: WARM_WARMTH,
  eaten: "fruit",
  harvest: {
    ...HARVEST_DEFAULTS,
    from: "setting out",
    days: commonPractice([65, 85]),
    kind: "again and again",
    holdsDays: commonPractice(10),
    verb: "Pick",
    sign: "The husk is full, papery, and begins to split.",
    how: "Pick every few days, and gather what has fallen. In their husks they keep for weeks.",
  },
};
