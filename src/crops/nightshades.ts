import type { Crop } from "./facts.ts";
import {
  CITE,
  COOL_WARMTH,
  common,
  derived,
  house,
  inchRange,
  memory,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
  WARM_WARMTH,
} from "./figures.ts";

/** Tomato: killed by frost, raised indoors, staked, picked until the first frost. */
export const TOMATO: Crop = {
  ...PLAIN,
  key: "tomato",
  one: "tomato",
  many: "tomatoes",
  alsoCalled: ["tomatos", "cherry tomato", "cherry tomatoes"],
  family: "nightshade family",
  frost: published("tender", CITE.purdue),
  starts: ["seed indoors", "plants"],
  comesUp: { kind: "table", row: "tomato", standsIn: null },
  indoors: {
    weeksToSettingOut: derived([5, 7], CITE.virginia, "six weeks for most crops, one either way"),
    soilTempC: common(21),
    depthCm: common(inchRange(0.25, 0.5)),
    potOnDaysAfterUp: common([14, 21]),
    hardenDays: derived(10, CITE.maryland, "inside the one to two weeks given there"),
    nightFloorC: published(10, CITE.beltrami),
  },
  settingOut: {
    weeksFromLastFrost: published(0, CITE.purdue),
    soilMinC: published((55 - 32) / 1.8, CITE.kansas),
    apartCm: published(18 * 2.54, CITE.missouri),
    rowsCm: published(42 * 2.54, CITE.missouri),
    things: ["stakes and ties", "a watering can"],
    how: "Drive the stake first, then plant deep, up to the first leaves. Water in and tie loosely.",
  },
  warmth: WARM_WARMTH,
  eaten: "fruit",
  harvest: {
    ...PLAIN_HARVEST,
    from: "setting out",
    days: published([70, 75], CITE.missouri),
    kind: "again and again",
    holdsDays: common(5),
    verb: "Pick",
    sign: "Coloured all over, and it comes away at a lift.",
    how: "Pick every two or three days from now until frost; leave the stalk's green cap on.",
  },
};

/** Potato: sprouted tubers, earthed up in a row or a bag. */
export const POTATO: Crop = {
  ...PLAIN,
  key: "potato",
  one: "potato",
  many: "potatoes",
  alsoCalled: ["potatos", "spud", "spuds", "new potato", "new potatoes"],
  family: "nightshade family",
  frost: published("very hardy", CITE.purdue),
  starts: ["tubers"],
  comesUp: {
    kind: "days",
    days: derived(
      [14, 22],
      CITE.minnesotaHills,
      "first hilling 28 days after planting, less the ten days a shoot takes to stand six inches, four days either way",
    ),
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: published(inchRange(3, 5), CITE.minnesotaPotato),
    apartCm: published(inchRange(10, 12), CITE.minnesotaPotato),
    rowsCm: published(33 * 2.54, CITE.minnesotaPotato),
    soilMinC: published((45 - 32) / 1.8, CITE.nebraska),
    weeksFromLastFrost: published(-2, CITE.utahPotato),
  },
  hilling: {
    firstDaysAfterPlanting: derived([21, 35], CITE.minnesotaHills, "28 days, a week either way"),
    daysBetween: derived([10, 18], CITE.minnesotaHills, "two weeks, four days either way"),
    shootCm: memory(inchRange(6, 8), "extension advice on potatoes in containers"),
    topsLeftCm: memory(inchRange(2, 4), "extension advice on potatoes in containers"),
    bagStartCm: memory(inchRange(4, 6), "extension advice on potatoes in containers"),
    bagCoverCm: memory(inchRange(2, 4), "extension advice on potatoes in containers"),
    bagRimCm: memory(inchRange(1, 2), "extension advice on potatoes in containers"),
    rowTotalCm: published(inchRange(6, 8), CITE.minnesotaPotato),
  },
  warmth: COOL_WARMTH,
  eaten: "root",
  harvest: {
    ...PLAIN_HARVEST,
    from: "planting",
    days: memory([100, 120], CITE.missouri),
    kind: "once",
    holdsDays: house(21, "tubers keep in dry soil for weeks once the tops have died"),
    verb: "Dig",
    sign: "The tops have yellowed and dried.",
    how: "Wait two weeks after the tops die so that the skins set. Lift on a dry day and keep them dark.",
    caution: "Throw out green potatoes and sprouts; they are poisonous.",
  },
};

/** The nightshade family, for rotations and shared pests. */
export const NIGHTSHADES: readonly Crop[] = [POTATO, TOMATO];
