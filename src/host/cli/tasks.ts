import { morningList, tasksAsJson } from "../../app/index.ts";
import {
  type Call,
  type Command,
  type Exit,
  load,
  rejectExtraWords,
  today,
  yearOn,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { out } = call.terminal;
  const [year, plans] = [yearOn(call, loaded), loaded.requestedPlans];
  if (call.options.json) out(`${JSON.stringify(tasksAsJson(year, plans), null, 2)}\n`);
  else for (const line of morningList(year, plans, today(call, loaded).day)) out(`${line}\n`);
  return 0;
}

/** `tasks PLAN [--json] [--on DAY]`: each job on its day; as a morning's list from today on, as JSON all of them in day order. */
export const TASKS: Command = { takes: ["json", "on", "weather"], run };
