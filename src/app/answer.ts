export { ANSWERS, isAnswer, type TaskAnswer, UNDO } from "../garden/diary/answers.ts";
export type { DiaryLine } from "../garden/model/plan.ts";
export type { Answer } from "../views/answers.ts";
export { type FormerTasks, updateFormerTasks } from "../views/events/former-tasks.ts";
