import { degreesC, joinWords, sayQuantity, sayWeekday } from "../../base/index.ts";
import { neighbourHelp, roundMinutes, type ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayPart, voiceOf } from "../events/sentences.ts";
import { bedName, titleOf } from "../events/titles.ts";
import type { AwayNeed, PickingNeed, TrayCareNeed } from "./away-need.ts";
import { goesLast } from "./leave.ts";
import type { AwayLists } from "./lists.ts";
import type { AwayReport } from "./report.ts";

/** What an absence's texts are made of: its report, with its tasks looked up among those of the feed, by id. */
export type AwayContext = {
  readonly report: AwayReport;
  readonly plan: Plan;
  readonly jobs: AwayLists<ScheduledTask>;
  readonly scheduled: ReadonlyMap<string, ScheduledTask>;
};

/**
 * Lines of what to do before they go, with minutes: under a roof, then bed by bed in walking order, water last. Empty
 * where there is nothing.
 */
export function beforeLines(context: AwayContext): readonly string[] {
  const { report, plan, jobs } = context;
  const needs = goesLast(report.leave) ? report.needs : [];
  const beds = [
    ...jobs.before.flatMap((job) => bedLine(job, context)),
    ...needs.flatMap((need) => pickFirstLines(need, context)),
  ];
  return [
    ...needs.flatMap((need) => roofBeforeLine(need, plan)),
    ...inWalkingOrder(beds, plan),
    ...coverLines(context),
    ...deepWateringLines(jobs.before, needs),
  ];
}

function roofBeforeLine(need: AwayNeed, plan: Plan): readonly string[] {
  switch (need.kind) {
    case "trays":
      return [traysBeforeLine(need, plan)];
    case "vents":
      return ["5 min: Greenhouse: vents set to open by themselves, or show the neighbour how."];
    case "water":
    case "pick":
    case "up":
      return [];
  }
}

function traysBeforeLine({ plants, hardeningFloorC }: TrayCareNeed, { measures }: Plan): string {
  const names = `10 min: Trays of ${joinWords(plants)}`;
  if (hardeningFloorC === null)
    return `${names}: good light without hard sun, on a wet mat, watered well.`;
  const floor = sayQuantity(degreesC(hardeningFloorC), measures);
  return `${names}: full shade all day, out of the wind, on a wet mat, watered well. Nights below ${floor} to come: leave them inside.`;
}

type WalkLine = { readonly bed: string | null; readonly indoors: boolean; readonly line: string };

/** Under a roof first, then bed by bed in the plan's order, tasks in no bed last; otherwise in their order. */
function inWalkingOrder(lines: readonly WalkLine[], { beds }: Plan): readonly string[] {
  const order = new Map(beds.map(({ key }, i) => [key, i]));
  const at = ({ bed, indoors }: WalkLine) => (indoors ? -1 : (order.get(bed ?? "") ?? beds.length));
  return [...lines].sort((a, b) => at(a) - at(b)).map(({ line }) => line);
}

/** `20 min: Thin beets, Root bed, planned for Saturday 31 July.` and its caution; the day where it has one before they go. Water is told last, for all beds. */
function bedLine(job: ScheduledTask, { report, plan }: AwayContext): readonly WalkLine[] {
  const { task, day } = job;
  if (neighbourHelp(task) === "watering") return [];
  const on = day < report.leave.from ? `, planned for ${sayWeekday(day)}` : "";
  const caution = sayPart(task.say, "caution", voiceOf(plan, "household"));
  const line = `${minutesTitle(job, plan)}${on}. ${caution}`.trim();
  return [{ bed: task.bed, indoors: task.indoors, line }];
}

/** `20 min: Thin beets, Root bed`. */
export function minutesTitle(job: ScheduledTask, plan: Plan): string {
  return `${roundMinutes(job.task.minutes)} min: ${titleOf([job], plan)}`;
}

/** Plants that bear already are picked before they go, small fruits too where they would grow too large. */
function pickFirstLines(
  need: AwayNeed,
  { report, plan, scheduled }: AwayContext,
): readonly WalkLine[] {
  if (need.kind !== "pick" || need.left === "stands") return [];
  const job = scheduled.get(need.task);
  if (!job || need.from >= report.leave.from) return [];
  const line = `10 min: ${titleOf([job], plan)}: ${PICK_FIRST[need.left]}.`;
  return [{ bed: need.bed, indoors: false, line }];
}

const PICK_FIRST: Readonly<Record<Exclude<PickingNeed["left"], "stands">, string>> = {
  "grows out": "all that would grow out, small ones too",
  ripens: "all that is ripe or nearly",
};

function coverLines({ jobs, plan }: AwayContext): readonly string[] {
  const frost = jobs.neighbour.filter(({ task }) => neighbourHelp(task) === "frost");
  if (frost.length === 0) return [];
  const beds = new Set(frost.map(({ task }) => bedName(plan, task.bed) || task.title.object));
  return [`10 min: Covers and pegs, laid ready: ${joinWords([...beds])}.`];
}

/** One line for all beds, whether the week's own watering is before they go or only the coming days need it. */
function deepWateringLines(
  jobs: readonly ScheduledTask[],
  needs: readonly AwayNeed[],
): readonly string[] {
  const week = jobs.some(({ task }) => neighbourHelp(task) === "watering");
  if (!week && !needs.some(({ kind }) => kind === "water")) return [];
  return [
    "30 min: Water beds and bags deep, the evening before; a finger finds them wet all down.",
  ];
}
