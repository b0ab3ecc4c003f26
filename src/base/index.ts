/**
 * Base: days and zones, quantities and their words, problems, and words of text. Knows nothing of gardens.
 */

export {
  DAYS_IN_YEAR,
  type Day,
  type DaySpan,
  dayFromIso,
  dayOf,
  dayOfYear,
  dayOrThrow,
  earliest,
  isoOf,
  latest,
  MONTHS,
  MS_PER_DAY,
  midway,
  monthStart,
  partsOf,
  plus,
  sayDay,
  sayWeekday,
  shortWeekday,
  WEEKDAYS,
  type Weekday,
  weekdayOf,
} from "./days/day.ts";
export {
  type ClockChange,
  clockChanges,
  dayAt,
  instantOf,
  isFirstShowing,
  isoWithOffset,
  isZone,
  type Minute,
  minuteAt,
  sayMinute,
  startOf,
  wallTimeAt,
  zoneNames,
} from "./days/instants.ts";
export {
  type Problem,
  sayAdvice,
  sayProblem,
  sortProblems,
  type TextPosition,
} from "./problems/problem.ts";
export {
  celsius,
  cm,
  degreesC,
  fahrenheit,
  inches,
  litres,
  type Measures,
  type Quantity,
  quantity,
  unitFrom,
} from "./quantities/quantity.ts";
export { numberFrom, quantityFrom, temperatureFrom } from "./quantities/read.ts";
export { sayQuantity } from "./quantities/say.ts";
export { editDistance, editDistanceWithin, nearest, suggestion } from "./text/nearest.ts";
export { slug } from "./text/slug.ts";
export { capital, joinFirst, joinWords, sayCount, verbWith, verbWithin } from "./text/words.ts";
