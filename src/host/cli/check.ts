import {
  doubtsOfBeds,
  type PlanReport,
  type Problem,
  reportPlan,
  sayProblem,
} from "../../app/index.ts";
import { sayCount } from "../../base/index.ts";
import {
  type Call,
  type Command,
  type Exit,
  type LoadedGarden,
  load,
  rejectExtraWords,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const loaded = load(call);
  if (!loaded) return 1;
  for (const doubt of doubtsIn(loaded)) call.terminal.err(`${sayProblem(doubt)}\n`);
  for (const plan of loaded.requestedPlans)
    for (const line of reportLines(reportPlan(plan, loaded.garden))) call.terminal.out(`${line}\n`);
  return 0;
}

/** What the beds leave in doubt, of the plans that were asked for. */
function doubtsIn({ garden, requestedPlans }: LoadedGarden): readonly Problem[] {
  const requestedFiles = requestedPlans.map(({ file }) => file);
  return doubtsOfBeds(garden).filter(({ at }) => requestedFiles.includes(at.file));
}

function reportLines(report: PlanReport): readonly string[] {
  const { file, plantings, beds, filled, notes, corrected } = report;
  return [
    `${file}: ${sayCount(plantings, "planting")} in ${sayCount(beds, "bed")}, no problem.`,
    ...under(
      "Where the plan says nothing:",
      filled.map(({ what, value, why }) => `${what}: ${value} (${why})`),
    ),
    ...under("Diary lines kept as notes, which move nothing:", notes),
    ...under("Diary lines that another puts right, or that cannot be so:", corrected),
  ];
}

const under = (head: string, lines: readonly string[]) =>
  lines.length === 0 ? [] : [head, ...lines.map((line) => `  ${line}`)];

/** `check PLAN`: problems and doubts by line, every default that was filled in, and diary lines that move nothing. */
export const CHECK: Command = { takes: [], run };
