import { buildBaseline, buildSchedule, horizonAt } from "../../app/feed.ts";
import { planOn } from "../../engine/schedule/horizon.ts";
import { reviewYear } from "../../views/paper/year.ts";
import { yearPage } from "../../views/paper/year-page.ts";
import { type Call, type Command, type Exit, load, rejectExtraWords, today } from "./call.ts";
import { deliver } from "./sheet.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { day, instant } = today(call, loaded);
  const plan = planOn(loaded.requestedPlans, day);
  const garden = { ...loaded.garden, usual: buildBaseline(loaded.garden) };
  const horizon = horizonAt(garden, instant);
  const { plans } = garden;
  const report = reviewYear({ plan, plans, today: day }, (plans) => {
    return buildSchedule({ ...garden, plans }, horizon, {}).scheduled;
  });
  return deliver(call, yearPage(report));
}

/** `year PLAN`: the year looked back on, as one page of HTML. */
export const YEAR_COMMAND: Command = { takes: ["on", "to"], run };
