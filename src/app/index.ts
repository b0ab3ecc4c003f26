/**
 * App: what can be done with a garden, a function for each.
 */

export { absences } from "./away.ts";
export { type BedsDrawing, bedsInFrost, bedsPlanned, bedsStanding, bedsWithRoom } from "./beds.ts";
export {
  type Baseline,
  buildBaseline,
  buildSchedule,
  buildYear,
  courseOf,
  type Garden,
  type Horizon,
  horizonAt,
  newestPlan,
  type PublishedState,
  type PublishedTask,
  planOn,
  type Schedule,
  type TaskOutline,
  taskCards,
  todayIn,
  type Year,
  type YearCourse,
} from "./build.ts";
export { changesSince } from "./changes.ts";
export {
  checkPlan,
  type DiaryLine,
  doubtsOfBeds,
  type GardenReading,
  type Plan,
  type PlanCheck,
  type PlanReport,
  type PlanText,
  type Problem,
  readGarden,
  readPlan,
  reportPlan,
  sayProblem,
} from "./check.ts";
export { reportDiary } from "./diary.ts";
export {
  chooseEvents,
  type Event,
  type FeedChoice,
  type FeedInput,
  type FeedNames,
  feedName,
  type Ledger,
  readLedger,
  type StoredLedger,
  writeFeed,
} from "./feed.ts";
export {
  type AnswerProblem,
  checkFirstPlan,
  type FirstAnswers,
  type FirstCheck,
  type FirstCheckRequest,
  type FrostWords,
  guessedFrosts,
} from "./first-plan.ts";
export { type FrostNight, type FrostTonightText, frostInShort, frostNight } from "./frost.ts";
export { type MonthJobs, month } from "./month.ts";
export { type PictureForm, type PictureSubject, picture } from "./picture.ts";
export { type CropName, cropNames, nextYear } from "./plan-text.ts";
export { type BedRoom, type BedSpace, bedRoom, type RoomText } from "./room.ts";
export { type SampleMonth, sampleMonth } from "./sample-month.ts";
export { fileUnitFrom, type RowFilter, type StationRequest, siteWeather, wrong } from "./site.ts";
export { morningList, tasksAsJson } from "./tasks.ts";
export {
  type KnownWeather,
  mergeWeather,
  readWeather,
  type WeatherQuestion,
  type WeatherReading,
  type WeatherService,
  weatherFromTable,
  weatherTable,
} from "./weather.ts";
export { whyLines } from "./why.ts";
export { plannedCourse, type ReviewedYear, yearReviewPage } from "./year-review.ts";
export { readYears, YEARS_FILE, type YearsPlace, type YearsReading, yearsWanted } from "./years.ts";
