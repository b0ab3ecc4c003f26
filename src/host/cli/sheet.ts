import { writeFileSync } from "node:fs";
import { type Day, dayFromIso, monthStart } from "../../base/days/day.ts";
import { monthSheet } from "../../views/paper/month.ts";
import { monthPage } from "../../views/paper/month-page.ts";
import {
  atMost,
  type Call,
  type Command,
  type Exit,
  load,
  personNamed,
  tellOn,
  today,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  atMost(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { plans } = loaded.garden;
  const { day } = today(call, loaded);
  const month = monthAsked(call.options.month, day);
  const whose = call.options.for ?? "household";
  const person = whose === "household" ? null : personNamed(whose, plans);
  const { scheduled: placed, events } = tellOn(call, loaded, {});
  const sheet = monthSheet({ plans, scheduled: placed, events, month, today: day, person });
  return deliver(call, monthPage(sheet));
}

function monthAsked(said: string | undefined, day: Day): Day {
  if (said === undefined) return monthStart(day);
  const month = dayFromIso(`${said}-01`);
  if (month === null) throw new WrongUsage(`--month ${said}: a month like 2027-05`);
  return month;
}

/** Writes a sheet to the file of `--to`, else on standard output. */
export function deliver({ options, terminal }: Call, html: string): Exit {
  if (options.to === undefined) {
    terminal.out(html);
    return 0;
  }
  try {
    writeFileSync(options.to, html);
  } catch (error) {
    terminal.err(
      `sowbell: ${options.to} cannot be written: ${error instanceof Error ? error.message : error}\n`,
    );
    return 1;
  }
  return 0;
}

/** `sheet PLAN --month 2027-05`: a month's jobs on paper, as one page of HTML. */
export const SHEET: Command = { takes: ["month", "for", "on", "to"], run };
