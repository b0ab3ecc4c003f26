import { understood } from "../diary/understand.ts";
import { horizonAt, tell, usualOf } from "../feed.ts";
import { planOn } from "../schedule/horizon.ts";
import { yearReport } from "../sheets/year.ts";
import { yearPage } from "../sheets/year-page.ts";
import { atMost, type Call, type Command, type Exit, load, today } from "./call.ts";
import { deliver } from "./sheet.ts";

function run(call: Call): Exit {
  atMost(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { day, instant } = today(call, loaded);
  const plan = planOn(loaded.asked, day);
  const garden = { ...loaded.garden, usual: usualOf(loaded.garden) };
  const horizon = horizonAt(garden, instant);
  const before = garden.plans.map((each) =>
    each.year < plan.year ? each : { ...each, diary: [] },
  );
  const { placed } = tell(garden, horizon, {});
  const planned = {
    placed: tell({ ...garden, plans: before }, horizon, {}).placed,
    facts: understood(before),
  };
  const { plans } = garden;
  const report = yearReport({ plan, plans, placed, facts: understood(plans), planned, today: day });
  return deliver(call, yearPage(report));
}

/** `year PLAN`: the year looked back on, as one page of HTML. */
export const YEAR: Command = { takes: ["on", "to"], run };
