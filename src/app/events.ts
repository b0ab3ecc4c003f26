export type { Event } from "../views/records.ts";
export {
  chooseEvents,
  type FeedChoice,
  type FormerTasks,
  updateFormerTasks,
} from "../views/records.ts";
