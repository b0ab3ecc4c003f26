export { isAnswer, UNDO } from "../garden/model/answers.ts";
export type { Answer } from "../views/answers.ts";
export type { TaskCard } from "../views/cards.ts";
