export { changeText, goneText } from "../views/records.ts";
