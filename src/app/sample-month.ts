import { type Day, isoOf, MONTHS, sayDay, shortWeekday } from "../base/index.ts";
import type { Plan } from "../garden/model/index.ts";
import { taskCards } from "../views/index.ts";
import { buildYear, horizonAt } from "./build.ts";

/** A month of a plan's season as a calendar will have it: its name, its first jobs in order, and how many more there are. */
export type SampleMonth = {
  readonly name: string;
  readonly jobs: readonly { readonly day: string; readonly title: string }[];
  readonly more: number;
};

/** Jobs of a sample. Source: house rule: what fits a phone's screen or two. */
const SHOWN = 14;

/**
 * The fullest month of a plan's season, counting each job's first day there once; null where nothing is to be done. The instant
 * [ms since 1970 UTC] is only where the garden's today begins.
 */
export function sampleMonth(plan: Plan, instant: number): SampleMonth | null {
  const plans = [plan];
  const year = buildYear({ id: plan.garden, plans }, horizonAt({ plans }, instant), {});
  const jobs = new Map<string, SampleJob>();
  for (const { day, fullTitle: title } of taskCards(year).toSorted((a, b) => a.day - b.day)) {
    const key = `${monthOf(day)} ${title}`;
    if (!jobs.has(key)) jobs.set(key, { day, title });
  }
  const months = new Map<string, readonly SampleJob[]>();
  for (const job of jobs.values())
    months.set(monthOf(job.day), [...(months.get(monthOf(job.day)) ?? []), job]);
  const [month, fullest] = [...months].reduce<readonly [string, readonly SampleJob[]]>(
    (best, each) => (each[1].length > best[1].length ? each : best),
    ["", []],
  );
  if (fullest.length === 0) return null;
  const shown = fullest.slice(0, SHOWN).map(({ day, title }) => {
    return { day: `${shortWeekday(day)} ${sayDay(day)}`, title };
  });
  return { name: nameOf(month), jobs: shown, more: fullest.length - shown.length };
}

type SampleJob = { readonly day: Day; readonly title: string };

const monthOf = (day: Day) => isoOf(day).slice(0, 7);

function nameOf(month: string): string {
  const [year = "", number = ""] = month.split("-");
  return `${MONTHS[Number(number) - 1]} ${year}`;
}
