/**
 * What a host stores of a garden and shows again without the engine: loads quickly.
 */

export {
  AMOUNT_UNITS,
  type AmountUnit,
  BED_KINDS,
  type BedKind,
  type FirstAnswers,
  type FirstBed,
  type FirstCrop,
  type FirstPerson,
} from "../garden/model/index.ts";
export { type Answer, isAnswer, type TaskCard, UNDO } from "./answers.ts";
export {
  type BedsDrawing,
  bedsStanding,
  bedsWithJobs,
  type JobInBed,
  PICTURE_STYLE,
} from "./bed-drawings.ts";
export { changeText, goneText } from "./change-text.ts";
export {
  chooseEvents,
  type Event,
  type FeedChoice,
  type FormerTasks,
  updateFormerTasks,
} from "./events.ts";
export { readLedger, type StoredLedger } from "./ledger.ts";
