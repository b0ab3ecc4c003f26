import { reportDiary } from "../../app/index.ts";
import { sayDay } from "../../base/index.ts";
import { type Call, type Command, type Exit, load, rejectExtraWords, today } from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  const lines = reportDiary(loaded.garden.plans, today(call, loaded).day);
  const requestedFiles = loaded.requestedPlans.map(({ file }) => file);
  const { out } = call.terminal;
  for (const { line, observations: understood } of lines.filter(({ line }) =>
    requestedFiles.includes(line.at.file),
  )) {
    out(`${sayDay(line.day, true)}: ${line.text}\n`);
    for (const { text: is, remarks: but } of understood)
      out([`  ${is}`, ...but.map((b) => `    ${b}`), ""].join("\n"));
  }
  if (lines.length === 0) out("Nothing is written down yet.\n");
  return 0;
}

/** `diary PLAN`: each line of the diary and what was understood of it, with what no longer holds or cannot be so. */
export const DIARY: Command = { takes: ["on"], run };
