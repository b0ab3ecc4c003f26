export { isAnswer, UNDO } from "../garden/model/index.ts";
export type { Answer, TaskCard } from "../views/index.ts";
