import type { Crop } from "./facts.ts";
import {
  CITE,
  common,
  derived,
  inchRange,
  memory,
  PLAIN,
  PLAIN_HARVEST,
  PLAIN_OUTDOORS,
  published,
  WARM_WARMTH,
} from "./figures.ts";
import { GOURD_FABRIC } from "./raising.ts";

/** Cucumber: no cold at all; sown into warm soil, or raised three weeks indoors. */
export const CUCUMBER: Crop = {
  ...PLAIN,
  key: "cucumber",
  one: "cucumber",
  many: "cucumbers",
  alsoCalled: [
    "cuke",
    "cukes",
    "outdoor cucumber",
    "outdoor cucumbers",
    "ridge cucumber",
    "ridge cucumbers",
    "pickling cucumber",
    "pickling cucumbers",
  ],
  family: "gourd family",
  frost: published("warm loving", CITE.purdue),
  starts: ["seed outdoors", "seed indoors", "plants"],
  comesUp: { kind: "table", row: "cucumber", standsIn: null },
  indoors: {
    weeksToSettingOut: derived(
      [2, 4],
      CITE.virginia,
      "three weeks for the gourd family, one either way",
    ),
    soilTempC: common(24),
    depthCm: common(inchRange(0.5, 1)),
    potOnDaysAfterUp: null,
    hardenDays: derived(7, CITE.maryland, "the shorter of the one to two weeks given there"),
    nightFloorC: published(10, CITE.maryland),
  },
  settingOut: {
    weeksFromLastFrost: published(1, CITE.purdue),
    soilMinC: published((60 - 32) / 1.8, CITE.kansas),
    apartCm: memory(12 * 2.54, CITE.missouri),
    rowsCm: derived(48 * 2.54, CITE.missouri, "the rows of cantaloupe given there, its near kin"),
    things: ["canes or netting", "a watering can"],
    how: "Slip them out whole, for their roots hate to be touched. Water in and give them something to climb.",
  },
  outdoors: {
    ...PLAIN_OUTDOORS,
    depthCm: common(inchRange(0.5, 1)),
    apartCm: memory(inchRange(12, 12), CITE.missouri),
    rowsCm: derived(48 * 2.54, CITE.missouri, "the rows of cantaloupe given there, its near kin"),
    soilMinC: published((60 - 32) / 1.8, CITE.kansas),
    weeksFromLastFrost: published(0, CITE.coloradoFrost),
  },
  covers: [GOURD_FABRIC],
  flowers: { daysBeforeHarvest: common([8, 14]), forBees: true },
  warmth: WARM_WARMTH,
  eaten: "fruit",
  harvest: {
    ...PLAIN_HARVEST,
    from: "sowing",
    days: common([50, 65]),
    kind: "again and again",
    bearsDays: common([35, 56]),
    holdsDays: common(2),
    verb: "Pick",
    sign: "Green all over, firm and as long as the packet says; before any yellow.",
    how: "Cut every other day with a bit of stalk. One left to yellow stops the plant.",
    caution: "Don't eat one that tastes bitter.",
  },
};

/** The gourd family, for rotations and shared pests. */
export const GOURD_FAMILY: readonly Crop[] = [CUCUMBER];
