/**
 * What a view leaves to be stored: events, feeds' ledgers, tasks' cards. It loads neither the engine nor a library, so that
 * code that must start quickly can use it.
 */

export { chooseEvents, type FeedChoice } from "./calendar/choose-events.ts";
export { type Ledger, readLedger, type StoredLedger } from "./calendar/ledger.ts";
export { changeText, goneText } from "./events/change-text.ts";
export type { Event } from "./events/event.ts";
export { type FormerTasks, updateFormerTasks } from "./events/former-tasks.ts";
