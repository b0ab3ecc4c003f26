import { sayDay } from "../../base/days/day.ts";
import { capital, list } from "../../engine/practices/say.ts";
import { HARM_WEIGHT } from "../../engine/schedule/place.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { sayWeekday } from "../events/sentences.ts";
import { bedName, titleOf } from "../events/titles.ts";
import { minutesTitle, type Telling } from "./before.ts";
import { comesFirst } from "./leave.ts";
import type { Need, Picking, Showing, Trays } from "./need.ts";

type Weighed = { readonly weight: number; readonly line: string };

/** Lines of what to look at first after an absence, most to lose first; of equal harm jobs, then looks. Empty where nothing presses. */
export function backLines({ report, plan, jobs, placed }: Telling): readonly string[] {
  const late = jobs.back.map((job) => ({
    weight: HARM_WEIGHT[job.task.harm],
    line: lateLine(job, plan),
  }));
  const needs = comesFirst(report.leave) ? report.needs : [];
  const looks = needs.flatMap((need) => look(need, plan, placed));
  return [...late, ...looks].sort((a, b) => b.weight - a.weight).map(({ line }) => line);
}

/** A job with its day, and that its best days are over where they are. */
function lateLine(job: Placed, plan: Plan): string {
  const { window, day } = job;
  const over = day > window.latest ? ` Best was till ${sayDay(window.latest)}; do it first.` : "";
  return `${minutesTitle(job, plan)}, ${sayWeekday(day)}.${over}`;
}

function look(need: Need, plan: Plan, placed: ReadonlyMap<string, Placed>): readonly Weighed[] {
  switch (need.kind) {
    case "pick":
      return picking(need, plan, placed);
    case "up":
      return [showing(need, plan)];
    case "trays":
      return [
        {
          weight: HARM_WEIGHT["this week"],
          line: traysLine(need),
        },
      ];
    case "water":
    case "vents":
      return [];
  }
}

function traysLine({ called, hardeningFloorC }: Trays): string {
  const on = hardeningFloorC === null ? "" : " Out of the shade by the hour, as before.";
  return `Trays of ${list(called)}: water what is dry.${on}`;
}

function picking(
  { task, left }: Picking,
  plan: Plan,
  placed: ReadonlyMap<string, Placed>,
): readonly Weighed[] {
  const job = placed.get(task);
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

function showing({ called, bed, day, late, board }: Showing, plan: Plan): Weighed {
  const name = bedName(plan, bed);
  const what = `${capital(called)}${name === "" ? "" : `, ${name}`}: may be up since about ${sayDay(day)}.`;
  const under = board ? " Look under the board: any green, off with it." : "";
  return {
    weight: HARM_WEIGHT[board ? "tonight" : "this week"],
    line: `${what}${under} Nothing by ${sayDay(late)}: scratch and look.`,
  };
}
