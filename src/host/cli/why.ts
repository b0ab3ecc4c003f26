import { whyLines } from "../../app/index.ts";
import {
  type Call,
  type Command,
  type Exit,
  load,
  rejectExtraWords,
  WrongUsage,
  yearOn,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(2, call);
  const id = call.rest[1];
  if (id === undefined)
    throw new WrongUsage("why which task? `sowbell tasks PLAN` lists their ids");
  const loaded = load(call);
  if (!loaded) return 1;
  const lines = whyLines(yearOn(call, loaded), id);
  if (lines === null) {
    call.terminal.err(`sowbell: no task ${id}; \`sowbell tasks PLAN\` lists their ids\n`);
    return 1;
  }
  for (const line of lines) call.terminal.out(`${line}\n`);
  return 0;
}

/** `why PLAN TASK`: how a job came to its day, link by link back to what it all hangs on. */
export const WHY: Command = { takes: ["on", "weather"], run };
