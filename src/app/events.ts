export { chooseEvents, type FeedChoice } from "../views/calendar/choose-events.ts";
export type { Event } from "../views/events/event.ts";
export { type FormerTasks, updateFormerTasks } from "../views/events/former-tasks.ts";
