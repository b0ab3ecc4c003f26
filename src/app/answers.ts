export { isAnswer, UNDO } from "../garden/diary/answers.ts";
export type { Answer } from "../views/answers.ts";
export type { TaskCard } from "../views/cards.ts";
