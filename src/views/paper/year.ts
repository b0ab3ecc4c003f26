import { type Day, earliest, sayDay } from "../../base/days/day.ts";
import { capital } from "../../engine/practices/say.ts";
import type { Placed } from "../../engine/schedule/placed.ts";
import { understood } from "../../garden/diary/understand.ts";
import type { Plan } from "../../garden/model/plan.ts";
import { seasonOf } from "../../garden/model/season.ts";
import { type Kept, keptOf } from "./keep.ts";
import { type Nights, nightsOf } from "./nights.ts";
import { type Remark, remarksOf } from "./remarks.ts";
import { type Sowing, stagesOf, type Went, type Years } from "./stages.ts";
import { wholeTitle } from "./title.ts";

/** A planting's line of the year: its name, its sowings, and what else was written of it, `thin 13 June`, in day order. */
export type Line = {
  readonly name: string;
  readonly known: boolean;
  readonly sowings: readonly Sowing[];
  readonly also: readonly string[];
};

/** A bed with what grew in it, in the plan's order; `name` empty for what stands in none. Never without lines. */
export type BedLines = { readonly name: string; readonly lines: readonly Line[] };

/** A year of a garden as it went, before any markup. */
export type YearReport = {
  readonly plan: Plan;
  readonly today: Day;
  /** Whether the season still goes on that day. */
  readonly goesOn: boolean;
  readonly beds: readonly BedLines[];
  readonly nights: Nights;
  readonly remarks: readonly Remark[];
  readonly kept: readonly (Omit<Kept, "planting"> & { readonly name: string })[];
  /** Jobs whose last good day is over and of which nothing was written, where the household wants to be asked; else empty. */
  readonly untold: readonly string[];
};

/** What a year looked back on is made from, as of a day. */
export type Back = Years & { readonly plan: Plan; readonly today: Day };

/**
 * The plan's season up to a day: what the diary has, and where it is silent what is supposed by the same reckoning that
 * the feeds are made from. Beds in walking order.
 */
export function yearReport(back: Back): YearReport {
  const { plan, plans, placed, facts, today } = back;
  const { from, to } = seasonOf(plan);
  const went = stagesOf(back, today).filter((each) => isOf(each, plan));
  return {
    plan,
    today,
    goesOn: today < to,
    beds: bedsOf(went, back),
    nights: nightsOf(plan, facts, today),
    remarks: remarksOf(facts, from, earliest(today, to)),
    kept: keptOf(went, { plan, plans, placed, facts }).map(({ planting, packet, took }) => ({
      packet,
      took,
      name: went.filter((each) => each.planting === planting).map(nameOf)[0] ?? "",
    })),
    untold: plan.assume === "open" ? untoldOf(back) : [],
  };
}

/**
 * The report of a garden's year as of a day, and beside it the year as it would have gone without its diary: `placed` tells
 * the garden with the diaries that it is given.
 */
export function lookBack(
  { plan, plans, today }: Pick<Back, "plan" | "plans" | "today">,
  placed: (plans: readonly Plan[]) => readonly Placed[],
): YearReport {
  const before = plans.map((each) => (each.year < plan.year ? each : { ...each, diary: [] }));
  const planned = { placed: placed(before), facts: understood(before) };
  const facts = understood(plans);
  return yearReport({ plan, plans, placed: placed(plans), facts, planned, today });
}

/** This year's own, and what another year's file began and this season brings to harvest. */
function isOf({ plan, sowings }: Went, asked: Plan): boolean {
  const { from, to } = seasonOf(asked);
  const here = ({ picked }: Sowing) => picked !== null && picked.day >= from && picked.day <= to;
  return (
    plan.year === asked.year || sowings.some((sowing) => sowing.begun.day < from && here(sowing))
  );
}

function bedsOf(went: readonly Went[], { plan, placed, today }: Back): readonly BedLines[] {
  const keys = plan.beds.map(({ key }) => key);
  const places = [
    ...plan.beds.map(({ key, name }) => ({ name, has: (bed: string | null) => bed === key })),
    { name: "", has: (bed: string | null) => !keys.includes(bed ?? "") },
  ];
  return places
    .map(({ name, has }) => ({
      name,
      lines: went
        .filter(({ planting }) => has(planting.bed))
        .map((each) => lineOf(each, placed, today)),
    }))
    .filter(({ lines }) => lines.length > 0);
}

function lineOf(went: Went, placed: readonly Placed[], today: Day): Line {
  const { planting, crop, sowings } = went;
  const told = sowings.flatMap(({ begun, out, picked }) =>
    [begun, out, picked].map((stage) => stage?.day),
  );
  const also = placed
    .filter(({ task, done }) => task.subject.key === planting.key && done && done.day <= today)
    .filter(({ task, done }) => !isStage(task) || !told.includes(done?.day))
    .sort((a, b) => a.day - b.day)
    .map(
      ({ task, done, day }) =>
        `${task.title.verb.replace(/:$/, "").toLowerCase()} ${sayDay(done?.day ?? day)}`,
    );
  return { name: nameOf(went), known: crop !== null, sowings, also };
}

/** Whether a task's day stands among the stages already. */
function isStage({ sets, practice }: Placed["task"]): boolean {
  return practice === "harvest" || (sets !== null && sets.act !== "end");
}

/** Its own name, else the crop as the gardener wrote it, in the plural where that is known, and its variety. */
function nameOf({ planting, crop }: Went): string {
  if (planting.name !== null) return capital(planting.name);
  const written = planting.written.toLowerCase() === crop?.one ? crop.many : planting.written;
  return capital(planting.variety === null ? written : `${written}, ${planting.variety}`);
}

function untoldOf({ plan, placed, today }: Back): readonly string[] {
  return placed
    .filter(({ task }) => task.id.startsWith(`${plan.year}/`) && task.rhythm === "session")
    .filter(({ done, window }) => !done && window.latest < today)
    .sort((a, b) => a.day - b.day)
    .map((each) => `${wholeTitle([each], plan)} (${sayDay(each.day)})`);
}
