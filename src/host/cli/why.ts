import { sayDay } from "../../base/days/day.ts";
import type { ScheduledTask } from "../../engine/schedule/scheduled-task.ts";
import { planOfTask } from "../../engine/schedule/year-of.ts";
import { sayPieces, voiceOf } from "../../views/events/sentences.ts";
import { titleOf } from "../../views/events/titles.ts";
import {
  buildScheduleOn,
  type Call,
  type Command,
  type Exit,
  type LoadedGarden,
  load,
  rejectExtraWords,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(2, call);
  const id = call.rest[1];
  if (id === undefined)
    throw new WrongUsage("why which task? `sowbell tasks PLAN` lists their ids");
  const loaded = load(call);
  if (!loaded) return 1;
  const { scheduled } = buildScheduleOn(call, loaded, {});
  const found =
    scheduled.find(({ task }) => task.id === id) ??
    scheduled.find(({ task }) => task.id.endsWith(`/${id}`));
  if (!found) {
    call.terminal.err(`sowbell: no task ${id}; \`sowbell tasks PLAN\` lists their ids\n`);
    return 1;
  }
  for (const line of chain(found, scheduled, loaded, new Set())) call.terminal.out(`${line}\n`);
  return 0;
}

/** A task's own reasons, then those of each task it hangs on, each once. */
function chain(
  each: ScheduledTask,
  scheduled: readonly ScheduledTask[],
  loaded: LoadedGarden,
  seen: Set<string>,
): readonly string[] {
  seen.add(each.task.id);
  const plan = planOfTask(each.task.id, loaded.garden.plans);
  const voice = voiceOf(plan, "household");
  const { earliest, due, latest } = each.window;
  const note = each.note ? [`  ${sayPieces(each.note.pieces, voice)}`] : [];
  const own = [
    `${titleOf([each], plan)}: ${sayDay(each.day, true)}  ${each.task.id}`,
    `  Between ${sayDay(earliest)} and ${sayDay(latest)}, best ${sayDay(due)}${each.usual !== null && each.usual !== due ? `; in a usual year ${sayDay(each.usual)}` : ""}.`,
    ...each.task.because.map((pieces) => `  ${sayPieces(pieces, voice)}`),
    ...note,
  ];
  const behind = scheduled.filter(
    ({ task }) => each.task.hangsOn.includes(task.id) && !seen.has(task.id),
  );
  return [...own, ...behind.flatMap((next) => chain(next, scheduled, loaded, seen))];
}

/** `why PLAN TASK`: how a job came to its day, link by link back to what it all hangs on. */
export const WHY: Command = { takes: ["on"], run };
