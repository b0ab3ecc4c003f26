import { capital, joinWords, sayDay, sayWeekday } from "../../base/index.ts";
import { HARM_WEIGHT, type ScheduledTask } from "../../engine/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { bedName, titleOf } from "../events/titles.ts";
import type { AwayNeed, EmergenceNeed, PickingNeed, TrayCareNeed } from "./away-need.ts";
import { type AwayContext, minutesTitle } from "./before.ts";
import { comesFirst } from "./leave.ts";

type WeightedLine = { readonly weight: number; readonly line: string };

/**
 * Lines of what to look at first after an absence, most harm first; of equal harm tasks, then looks. Empty where
 * nothing is urgent.
 */
export function backLines({ report, plan, jobs, scheduled }: AwayContext): readonly string[] {
  const late = jobs.back.map((job) => ({
    weight: HARM_WEIGHT[job.task.harm],
    line: lateLine(job, plan),
  }));
  const needs = comesFirst(report.leave) ? report.needs : [];
  const looks = needs.flatMap((need) => lookLines(need, plan, scheduled));
  return [...late, ...looks].sort((a, b) => b.weight - a.weight).map(({ line }) => line);
}

/** A job with its day, and a note where its best days are over. */
function lateLine(job: ScheduledTask, plan: Plan): string {
  const { window, day } = job;
  const over = day > window.latest ? ` Best was till ${sayDay(window.latest)}; do it first.` : "";
  return `${minutesTitle(job, plan)}, ${sayWeekday(day)}.${over}`;
}

function lookLines(
  need: AwayNeed,
  plan: Plan,
  scheduled: ReadonlyMap<string, ScheduledTask>,
): readonly WeightedLine[] {
  switch (need.kind) {
    case "pick":
      return pickingLines(need, plan, scheduled);
    case "up":
      return [emergenceLine(need, plan)];
    case "trays":
      return [
        {
          weight: HARM_WEIGHT["this week"],
          line: traysBackLine(need),
        },
      ];
    case "water":
    case "vents":
      return [];
  }
}

function traysBackLine({ plants, hardeningFloorC }: TrayCareNeed): string {
  const on = hardeningFloorC === null ? "" : " Out of the shade by the hour, as before.";
  return `Trays of ${joinWords(plants)}: water what is dry.${on}`;
}

function pickingLines(
  { task, left }: PickingNeed,
  plan: Plan,
  scheduled: ReadonlyMap<string, ScheduledTask>,
): readonly WeightedLine[] {
  const job = scheduled.get(task);
  if (!job || left === "stands") return [];
  const title = titleOf([job], plan);
  return left === "grows out"
    ? [
        {
          weight: HARM_WEIGHT["this week"],
          line: `${title}: the outgrown ones too, so that it bears on.`,
        },
      ]
    : [{ weight: HARM_WEIGHT["when you can"], line: `${title}: all that is ripe.` }];
}

function emergenceLine({ plants, bed, day, late, board }: EmergenceNeed, plan: Plan): WeightedLine {
  const name = bedName(plan, bed);
  const what = `${capital(plants)}${name === "" ? "" : `, ${name}`}: may be up since about ${sayDay(day)}.`;
  const under = board ? " Look under the board: any green, off with it." : "";
  return {
    weight: HARM_WEIGHT[board ? "tonight" : "this week"],
    line: `${what}${under} Nothing by ${sayDay(late)}: scratch and look.`,
  };
}
