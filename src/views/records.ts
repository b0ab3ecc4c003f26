/**
 * What a view leaves to be stored: events, feeds' ledgers, tasks' cards. It loads neither the engine nor a library, so that
 * code that must start quickly can use it.
 */

export { chooseEvents, type FeedChoice } from "./calendar/choose-events.ts";
export { type Ledger, readLedger, type StoredLedger } from "./calendar/ledger.ts";
export { changeText, goneText } from "./events/change-text.ts";
export type { Event } from "./events/event.ts";
export { type FormerTasks, updateFormerTasks } from "./events/former-tasks.ts";
export { type JobInBed, jobNotes } from "./pictures/from-above/job-notes.ts";
export { type BedsDrawing, drawBeds } from "./pictures/from-above/picture.ts";
export type { StandingYears } from "./pictures/from-above/sketch.ts";
export { fullestDay } from "./pictures/from-above/standing.ts";
export { PICTURE_STYLE } from "./pictures/palette.ts";
export type { PictureForm } from "./pictures/sketch.ts";
