import { capital, type Day, earliest, sayDay } from "../../base/index.ts";
import type { PacketComparison, TaskOutline } from "../../engine/index.ts";
import { type Plan, seasonOf } from "../../garden/model/index.ts";
import { wholeTitle } from "../events/titles.ts";
import { type MeasuredNights, measuredNightsOf } from "./nights.ts";
import {
  type ComparedYear,
  type PlantingHistory,
  plantingHistoriesOf,
  type SowingHistory,
} from "./planting-history.ts";
import { remarksOf, type SheetRemark } from "./remarks.ts";

/** A planting's line of the year: its name, its sowings, and what else was written of it, `thin 13 June`, in day order. */
export type YearLine = {
  readonly name: string;
  readonly known: boolean;
  readonly sowings: readonly SowingHistory[];
  readonly also: readonly string[];
};

/** A bed with what grew in it, in the plan's order; `name` empty for plants in no bed. Never without lines. */
export type BedLines = { readonly name: string; readonly lines: readonly YearLine[] };

/** A year of a garden as it went, without markup. */
export type YearReport = {
  readonly plan: Plan;
  readonly today: Day;
  /** Whether the season still goes on that day. */
  readonly goesOn: boolean;
  readonly beds: readonly BedLines[];
  readonly nights: MeasuredNights;
  readonly remarks: readonly SheetRemark[];
  readonly packets: readonly (PacketComparison & { readonly name: string })[];
  /** Jobs whose last good day is over and of which nothing was written, where the household wants to be asked; else empty. */
  readonly unreported: readonly string[];
};

/** What a review of a year is made from, as of a day. */
export type YearReportInput = ComparedYear & { readonly plan: Plan; readonly today: Day };

/**
 * The plan's season up to a day: what the diary has, and where it has nothing what the schedule behind the feeds
 * supposes. Beds in walking order.
 */
export function yearReport(input: YearReportInput): YearReport {
  const { plan, today } = input;
  const { observations } = input.year;
  const { from, to } = seasonOf(plan);
  const history = plantingHistoriesOf(input, today).filter((each) => isOf(each, plan));
  return {
    plan,
    today,
    goesOn: today < to,
    beds: bedsOf(history, input),
    nights: measuredNightsOf(plan, observations, today),
    remarks: remarksOf(observations, from, earliest(today, to)),
    packets: history.flatMap((each) =>
      each.packet && each.plan.year === plan.year ? [{ ...each.packet, name: nameOf(each) }] : [],
    ),
    unreported: plan.assume === "open" ? unreportedJobs(input) : [],
  };
}

/** This year's own, and what another year's file began and is harvested this season. */
function isOf({ plan, sowings }: PlantingHistory, reviewed: Plan): boolean {
  const { from, to } = seasonOf(reviewed);
  const here = ({ picked }: SowingHistory) =>
    picked !== null && picked.day >= from && picked.day <= to;
  return (
    plan.year === reviewed.year || sowings.some((sowing) => sowing.begun.day < from && here(sowing))
  );
}

function bedsOf(
  history: readonly PlantingHistory[],
  { plan, year: { scheduled }, today }: YearReportInput,
): readonly BedLines[] {
  const keys = plan.beds.map(({ key }) => key);
  const places = [
    ...plan.beds.map(({ key, name }) => ({ name, has: (bed: string | null) => bed === key })),
    { name: "", has: (bed: string | null) => !keys.includes(bed ?? "") },
  ];
  return places
    .map(({ name, has }) => ({
      name,
      lines: history
        .filter(({ planting }) => has(planting.bed))
        .map((each) => lineOf(each, scheduled, today)),
    }))
    .filter(({ lines }) => lines.length > 0);
}

function lineOf(history: PlantingHistory, scheduled: readonly TaskOutline[], today: Day): YearLine {
  const { planting, crop, sowings } = history;
  const stageDays = sowings.flatMap(({ begun, out, picked }) =>
    [begun, out, picked].map((stage) => stage?.day),
  );
  const also = scheduled
    .filter(({ task, done }) => task.subject.key === planting.key && done && done.day <= today)
    .filter(({ task, done }) => !isStage(task) || !stageDays.includes(done?.day))
    .sort((a, b) => a.day - b.day)
    .map(
      ({ task, done, day }) =>
        `${task.title.verb.replace(/:$| …/, "").toLowerCase()} ${sayDay(done?.day ?? day)}`,
    );
  return { name: nameOf(history), known: crop !== null, sowings, also };
}

/** Whether a task's day is among the stages already. */
function isStage({ sets, practice }: TaskOutline["task"]): boolean {
  return practice === "harvest" || (sets !== null && sets.act !== "end");
}

/** Its own name, else the crop as the gardener wrote it, in the plural where that is known, and its variety. */
function nameOf({ planting, crop }: PlantingHistory): string {
  if (planting.name !== null) return capital(planting.name);
  const written = planting.written.toLowerCase() === crop?.one ? crop.many : planting.written;
  return capital(planting.variety === null ? written : `${written}, ${planting.variety}`);
}

function unreportedJobs({ plan, year, today }: YearReportInput): readonly string[] {
  return year.scheduled
    .filter(({ task }) => task.id.startsWith(`${plan.year}/`) && task.rhythm === "session")
    .filter(({ done, window }) => !done && window.latest < today)
    .sort((a, b) => a.day - b.day)
    .map((each) => `${wholeTitle([each], plan)} (${sayDay(each.day)})`);
}
