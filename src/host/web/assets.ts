import { BAR_STYLE } from "./style/bar.ts";
import { COLOURS } from "./style/colours.ts";
import { FIRST_FORM_STYLE } from "./style/first-form.ts";
import { FORM_STYLE } from "./style/form.ts";
import { JOB_STYLE } from "./style/job.ts";
import { PAGE_STYLE } from "./style/page.ts";
import { PICTURES_STYLE } from "./style/pictures.ts";
import { PLAN_STYLE } from "./style/plan.ts";

/** The pages' one stylesheet: a sheet of paper, dark ink on light or light on dark, big enough to read in the sun. */
export const STYLESHEET = [
  ...[COLOURS, PAGE_STYLE, FORM_STYLE, FIRST_FORM_STYLE],
  ...[JOB_STYLE, PLAN_STYLE, PICTURES_STYLE, BAR_STYLE],
].join("");

/** The pages' icon: a seedling's two leaves over the ground. */
export const ICON_SVG = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 32 32"><path d="M16 28V15" stroke="#3f7d4e" stroke-width="3"/><path d="M16 16C6 16 4 9 4 5c8 0 12 4 12 11zM16 16c10 0 12-7 12-11-8 0-12 4-12 11z" fill="#3f7d4e"/><path d="M3 28h26" stroke="#6b4f2c" stroke-width="3"/></svg>`;
