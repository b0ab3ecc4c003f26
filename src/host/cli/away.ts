import { absences } from "../../app/index.ts";
import {
  type Call,
  type Command,
  type Exit,
  load,
  personNamed,
  rejectExtraWords,
  today,
  yearOn,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const name = call.options.for ?? null;
  const plans = loaded.requestedPlans;
  const person = name === null ? null : personNamed(name, plans);
  const { day } = today(call, loaded);
  const all = absences(yearOn(call, loaded), { person, plans, today: day });
  const parts = all.map(({ head, texts }) => {
    const whole = texts.map(({ title, text }) => `${title}\n${text}`);
    return `${head}\n\n${whole.join("\n\n")}\n`;
  });
  const none = `${name ?? "Nobody"} is ${name === null ? "" : "not "}away from today on, by the plan.\n`;
  call.terminal.out(parts.length > 0 ? parts.join("\n\n") : none);
  return 0;
}

/** `away PLAN [--for PERSON] [--on DAY]`: for each absence from today on, what to do before, what waits, the neighbour's list, and what to look at after. */
export const AWAY: Command = { takes: ["for", "on"], run };
