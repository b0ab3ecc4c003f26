/*
 * The core as a library: a garden's plans in, its year and its calendar feeds out. Pure: no clock, no files, no network; the
 * instant is an argument. Order: readGarden, then buildSchedule at horizonAt, then writeFeed for each feed.
 */

export {
  type Baseline,
  buildBaseline,
  buildSchedule,
  buildYear,
  type Garden,
  type Horizon,
  horizonAt,
  type PublishedState,
  type Schedule,
  todayIn,
  type Year,
} from "./app/build.ts";
export {
  checkPlan,
  doubtsOfBeds,
  type GardenReading,
  type Plan,
  type PlanCheck,
  type PlanText,
  type Problem,
  readGarden,
  sayProblem,
} from "./app/check.ts";
export {
  chooseEvents,
  type Event,
  type FeedChoice,
  type FeedInput,
  feedName,
  type Ledger,
  writeFeed,
} from "./app/feed.ts";
export { type FrostNight, frostNight } from "./app/frost.ts";
export { month } from "./app/month.ts";
export { picture } from "./app/picture.ts";
export { type BedRoom, bedRoom } from "./app/room.ts";
export { whyLines } from "./app/why.ts";
