import type { Day } from "../../base/index.ts";
import type { DailyRecord } from "./record.ts";

/** Days of a record without a low or a high: how many, and the longest run of them; null where there is none. */
export type Gaps = {
  readonly days: number;
  readonly longest: { readonly from: Day; readonly days: number } | null;
};

/** What is missing between the first and the last day of a record in day order. */
export function gapsIn(series: readonly DailyRecord[]): Gaps {
  const runs: { from: Day; days: number }[] = [];
  const there = series.filter(({ lowC, highC }) => lowC !== null && highC !== null);
  const [first, last] = [series[0]?.day, series.at(-1)?.day];
  if (first === undefined || last === undefined) return { days: 0, longest: null };
  let next = first;
  for (const day of [...there.map((daily) => daily.day), (last + 1) as Day]) {
    if (day > next) runs.push({ from: next, days: day - next });
    next = (day + 1) as Day;
  }
  const longest = runs.reduce<Gaps["longest"]>(
    (best, run) => (best === null || run.days > best.days ? run : best),
    null,
  );
  return { days: runs.reduce((sum, run) => sum + run.days, 0), longest };
}
