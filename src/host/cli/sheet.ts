import { writeFileSync } from "node:fs";
import { month } from "../../app/index.ts";
import { type Day, dayFromIso, monthStart } from "../../base/index.ts";
import {
  buildScheduleOn,
  type Call,
  type Command,
  type Exit,
  load,
  personNamed,
  rejectExtraWords,
  today,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { day } = today(call, loaded);
  const whose = call.options.for ?? "household";
  const request = {
    month: monthAsked(call.options.month, day),
    person: whose === "household" ? null : personNamed(whose, loaded.garden.plans),
    today: day,
  };
  const { year, events } = buildScheduleOn(call, loaded, {});
  return deliver(call, month({ ...year, events }, request));
}

function monthAsked(monthText: string | undefined, day: Day): Day {
  if (monthText === undefined) return monthStart(day);
  const month = dayFromIso(`${monthText}-01`);
  if (month === null) throw new WrongUsage(`--month ${monthText}: a month like 2027-05`);
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
