/**
 * Engine: from a garden and a day to its year, every task on its day, and what else can be calculated of it.
 */

export type { SeasonEnd, StartChance } from "./beds/chances.ts";
export { type ColdNight, coldNightsIn } from "./beds/cold-nights.ts";
export type { CropChance } from "./beds/crop-chances.ts";
export type { BedOccupant, FreeSpace } from "./beds/free.ts";
export {
  type BedTonight,
  type FrostTonight,
  frostTonight,
  type PlantTonight,
} from "./beds/frost-tonight.ts";
export { type HardDay, hardDaysIn } from "./beds/hard-days.ts";
export type { FrostNeed, LeaveReason } from "./beds/night-needs.ts";
export type { Life, PlantingRecord, SowingRecord } from "./beds/planting-record.ts";
export { type BedSpace, freeInBeds, roomIn } from "./beds/room.ts";
export { type Spell, spellsIn } from "./beds/spells.ts";
export type { Tray } from "./beds/trays-tonight.ts";
export type { BedWater, WateringWeek } from "./beds/watering-weeks.ts";
export { buildBaseline, buildYear } from "./build.ts";
export { type Climate, climateFrom } from "./climate/climate.ts";
export { WORTH_SAYING_K, weeksBefore } from "./climate/drift.ts";
export { chanceOfFrostAfter, firstFrostAt, lastFrostAt, sayOdds } from "./climate/frost.ts";
export { frostsByTemperatures, GUESSED_SPREAD_DAYS } from "./climate/frosts-by-temperatures.ts";
export { ONE_IN_TEN } from "./climate/normal.ts";
export { sunsetOn } from "./climate/sun.ts";
export { bedDoubts } from "./doubts/beds.ts";
export { doubtsOf } from "./doubts/doubts.ts";
export type { Refusal } from "./growth/limits.ts";
export type { PacketComparison } from "./growth/packet.ts";
export { neighbourHelp, PRACTICES, practiceOf, type Task } from "./practices/all.ts";
export type { Sentence, SentencePart, TextPiece } from "./practices/sentence.ts";
export { objectOf, roundMinutes } from "./practices/task.ts";
export { type Horizon, horizonOf } from "./schedule/horizon.ts";
export { type Household, householdOf } from "./schedule/household.ts";
export { picksOf, tasksById, tasksBySubject } from "./schedule/planting-tasks.ts";
export { publishedStateOf } from "./schedule/published-state.ts";
export { HARM_WEIGHT } from "./schedule/schedule-tasks.ts";
export type {
  PublishedState,
  PublishedTask,
  ScheduledTask,
  TaskOutline,
} from "./schedule/scheduled-task.ts";
export { tasksThatMustWait } from "./schedule/waiting.ts";
export { planOfTask } from "./schedule/year-of.ts";
export {
  type Baseline,
  type Garden,
  type PlantingInYear,
  plantingsIn,
  type Season,
  seasonFor,
  type Year,
  type YearCourse,
} from "./year.ts";
