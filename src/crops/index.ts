/**
 * Crops: what is known of each crop, every figure with its source.
 */

export {
  CLOCHE,
  coverNamed,
  coverWords,
  FABRIC,
  FILM,
  isPestCover,
  type PestCoverName,
  type PlantCoverName,
  pestCoverIn,
  plantCoverOf,
} from "./covers.ts";
export { CROPS, canBegin, cropFor, cropNamed, cropNames, isKind, isTender } from "./crops.ts";
export { canBeCutAgain } from "./cutting.ts";
export { COLUMNS_F, EMERGENCE_ROWS, type EmergenceDays } from "./emergence.ts";
export type {
  BulbKind,
  BulbKinds,
  Care,
  CarePractice,
  CoverFacts,
  Crop,
  Family,
  Figure,
  Indoors,
  MeasuredText,
  NumberRange,
  Outdoors,
  Overwinter,
  Perennial,
  Pest,
  Region,
  SettingOut,
  Source,
  Start,
  Warmth,
} from "./facts.ts";
export { houseRule, published, saySource } from "./figures.ts";
export { type FixtureName, fixtureOf, fixtureWords, isAtHand } from "./fixtures.ts";
export { emergenceShare, seedlingsRow } from "./seedlings.ts";
