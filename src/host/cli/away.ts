import { joinWords } from "../../base/text/words.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { awayReports } from "../../views/away/report.ts";
import { awayTexts } from "../../views/away/texts.ts";
import { sayDays, voiceOf } from "../../views/events/sentences.ts";
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
  const person = name === null ? null : personNamed(name, loaded.requestedPlans);
  const year = yearOn(call, loaded);
  const { day } = today(call, loaded);
  const reports = loaded.requestedPlans.flatMap((plan) =>
    awayReports(plan, year, { person, today: day }).map((report) => {
      const head = `${who(report.leave.away, plan)}, ${sayDays(report.leave)}`;
      const texts = awayTexts(report, plan, year.scheduled).map(
        ({ title, text }) => `${title}\n${text}`,
      );
      return `${head}\n\n${texts.join("\n\n")}\n`;
    }),
  );
  const none = `${name ?? "Nobody"} is ${name === null ? "" : "not "}away from today on, by the plan.\n`;
  call.terminal.out(reports.length > 0 ? reports.join("\n\n") : none);
  return 0;
}

/** `Oda away`, or that everybody is. */
function who(away: readonly string[], plan: Plan): string {
  if (away.length === plan.people.length) return "Everybody away";
  return `${joinWords(away.map(voiceOf(plan, "household").nameOf))} away`;
}

/** `away PLAN [--for PERSON] [--on DAY]`: for each absence from today on, what to do before, what waits, the neighbour's list, and what to look at after. */
export const AWAY: Command = { takes: ["for", "on"], run };
