import { buildYear, horizonAt, plannedCourse, planOn, yearReviewPage } from "../../app/index.ts";
import { type Call, type Command, type Exit, load, rejectExtraWords, today } from "./call.ts";
import { deliver } from "./sheet.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { day, instant } = today(call, loaded);
  const { garden } = loaded;
  const plan = planOn(loaded.requestedPlans, day);
  const year = buildYear(garden, horizonAt(garden, instant), {});
  const planned = plannedCourse(year, plan);
  return deliver(call, yearReviewPage(year, { plan, planned, today: day }));
}

/** `year PLAN`: the year looked back on, as one page of HTML. */
export const YEAR_COMMAND: Command = { takes: ["on", "to"], run };
