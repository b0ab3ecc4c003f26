/**
 * Garden: reading what a gardener writes. Plans, diaries and station files become the model or problems.
 */

export { withChangedPlantings } from "./diary/changed-plantings.ts";
export { beginsOf } from "./diary/deeds.ts";
export type { NotYet, Observation, ObservedStage } from "./diary/observation.ts";
export { orphanDoubts, orphansIn, sayOrphan } from "./diary/orphans.ts";
export {
  observationsIn,
  type ParsedDiaryLine,
  parseDiary,
  parseDiaryLines,
} from "./diary/parse.ts";
export { resolveConflicts } from "./diary/resolve-conflicts.ts";
export { sayPlanting } from "./diary/subjects.ts";
export type { AnswerFault, WeatherQuestion } from "./forecast/answer.ts";
export { openMeteoRows } from "./forecast/open-meteo.ts";
export { readWeatherAnswer } from "./forecast/read.ts";
export { predecessorOf, withLinkedPlantings } from "./model/years.ts";
export { diagnostic } from "./plan/codes.ts";
export { type AnswerProblem, answerProblems, problemsAtAnswers } from "./plan/first-check.ts";
export { firstPlan } from "./plan/first-plan.ts";
export { formatFrostDates } from "./plan/frost-sides.ts";
export { nextYear } from "./plan/next-year.ts";
export { YEARS_FILE, type YearsPlace, yearsWanted } from "./plan/place-years.ts";
export { type PlanResult, type PlanSource, readPlan } from "./plan/read.ts";
export { problemsBetweenYears } from "./plan/years.ts";
export type { RowFilter } from "./station/columns.ts";
export { reportOn } from "./station/report.ts";
export { USUAL_SPREAD_K } from "./station/spread.ts";
export { readStation, type Station, type StationRequest } from "./station/station.ts";
export { wrong } from "./station/table.ts";
export { fileUnitFrom } from "./station/units.ts";
export { frozenThrough, unlikelyIn } from "./station/unlikely.ts";
export {
  type FiguresSource,
  figuresOf,
  monthsMissing,
  type SiteFigures,
  weatherFile,
} from "./station/weather-file.ts";
