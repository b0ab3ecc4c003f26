/**
 * The garden's model: what a plan is once it has been read, with the facts that follow from it alone. It loads neither the
 * readers nor the crops, so that code that must start quickly can use it.
 */

export { isAnswer, type TaskAnswer, UNDO } from "./answers.ts";
export {
  AMOUNT_UNITS,
  type AmountUnit,
  BED_KINDS,
  type BedKind,
  coordinatesIn,
  type FirstAnswers,
  type FirstBed,
  type FirstCrop,
  type FirstPerson,
} from "./first-answers.ts";
export { newestPlan, wholeGarden } from "./garden.ts";
export type {
  Absence,
  Bed,
  DiaryLine,
  FilledDefault,
  FrostDates,
  Hours,
  Person,
  Plan,
  Planting,
  Site,
} from "./plan.ts";
export { bedOf, isRaised, plantingRanks } from "./plantings.ts";
export { isSouthern, planOn, plusYears, seasonOf } from "./season.ts";
export type { Deed, PlantingCondition, PracticeWords } from "./vocabulary.ts";
export {
  type KnownWeather,
  mergeWeather,
  WARNED_DAYS,
  WEATHER_SERVICES,
  type WeatherDay,
  type WeatherService,
} from "./weather.ts";
