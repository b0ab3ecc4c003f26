export { changeText, goneText } from "../views/events/change-text.ts";
