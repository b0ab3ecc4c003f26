import { sayDay } from "../../base/days/day.ts";
import { type Problem, sayProblem } from "../../base/problems/problem.ts";
import { bedDoubts } from "../../engine/beds/doubts.ts";
import { parseDiary, parseDiaryLines } from "../../garden/diary/parse.ts";
import { resolveConflicts } from "../../garden/diary/resolve-conflicts.ts";
import type { Plan } from "../../garden/model/plan.ts";
import {
  type Call,
  type Command,
  type Exit,
  type LoadedGarden,
  load,
  rejectExtraWords,
  yearOn,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  for (const doubt of doubtsIn(call, loaded)) call.terminal.err(`${sayProblem(doubt)}\n`);
  for (const plan of loaded.requestedPlans) {
    const { file, plantings, beds, filled } = plan;
    const count = (many: number, one: string) => `${many} ${one}${many === 1 ? "" : "s"}`;
    call.terminal.out(
      `${file}: ${count(plantings.length, "planting")} in ${count(beds.length, "bed")}, no problem.\n`,
    );
    if (filled.length > 0) call.terminal.out("Where the plan says nothing:\n");
    for (const { what, value, why } of filled) call.terminal.out(`  ${what}: ${value} (${why})\n`);
    const notes = notesIn(plan, loaded.garden.plans);
    if (notes.length > 0) call.terminal.out("Diary lines kept as notes, which move nothing:\n");
    for (const note of notes) call.terminal.out(`  ${note}\n`);
    const odd = oddIn(plan, loaded.garden.plans);
    if (odd.length > 0)
      call.terminal.out("Diary lines that another puts right, or that cannot be so:\n");
    for (const line of odd) call.terminal.out(`  ${line}\n`);
  }
  return 0;
}

/** What the beds leave in doubt once the year is placed, of the plans that were asked for. */
function doubtsIn(call: Call, loaded: LoadedGarden): readonly Problem[] {
  const requestedFiles = loaded.requestedPlans.map(({ file }) => file);
  return bedDoubts(yearOn(call, loaded)).filter(({ at }) => requestedFiles.includes(at.file));
}

/** Each diary line that was not understood, with the reason where it nearly was. */
function notesIn(plan: Plan, plans: readonly Plan[]): readonly string[] {
  return parseDiary(plan.diary, plans).flatMap((observation) =>
    observation.kind === "note"
      ? [
          `${sayDay(observation.day)}: ${observation.text}${observation.why === null ? "" : ` (${observation.why})`}`,
        ]
      : [],
  );
}

/** Each line of a plan's diary of which something is to be said beside the others, and what. */
function oddIn(plan: Plan, plans: readonly Plan[]): readonly string[] {
  const read = parseDiaryLines(plans);
  const { remarks } = resolveConflicts(
    read.flatMap(({ observations }) => observations),
    plans,
  );
  return remarks.flatMap(({ observation, is }) => {
    const line = read.find(({ observations }) => observations.includes(observation))?.line;
    return line?.at.file === plan.file ? [`${sayDay(line.day)}: ${line.text} (${is})`] : [];
  });
}

/** `check PLAN`: problems and doubts by line, every default that was filled in, and diary lines that move nothing. */
export const CHECK: Command = { takes: [], run };
