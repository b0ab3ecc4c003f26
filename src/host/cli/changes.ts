import { changesSince } from "../../app/index.ts";
import { type Day, dayFromIso, sayDay } from "../../base/index.ts";
import {
  type Call,
  type Command,
  type Exit,
  load,
  rejectExtraWords,
  today,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const since = sinceOf(call);
  const loaded = load(call);
  if (!loaded) return 1;
  const { day } = today(call, loaded);
  if (since > day) throw new WrongUsage("--since must not lie after today");
  const changes = changesSince(loaded.garden, { since, today: day });
  for (const { text, why } of changes)
    call.terminal.out(`${[text, ...why.map((line) => `    ${line}`)].join("\n")}\n`);
  if (changes.length === 0) call.terminal.out(`Nothing has moved since ${sayDay(since)}.\n`);
  return 0;
}

function sinceOf({ options }: Call): Day {
  const day = options.since === undefined ? null : dayFromIso(options.since);
  if (day === null) throw new WrongUsage("--since which day? Like 2027-05-08");
  return day;
}

/** `changes PLAN --since DAY`: what the diary has moved, done, brought and taken away since then, and why. */
export const CHANGES: Command = { takes: ["since", "on"], run };
