import { buildSchedule, horizonAt } from "../../src/app/build.ts";
import { type Day, partsOf, plus, startOf } from "../../src/base/index.ts";
import type { ObservedWeather } from "../../src/engine/climate/climate.ts";
import type { PublishedState } from "../../src/engine/schedule/scheduled-task.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { seasonOf } from "../../src/garden/model/season.ts";
import { daysFrom, knownOn } from "./weather.ts";

/**
 * How many entries of the calendar with all jobs, still to come, moved to another day, by calendar month from the season's first
 * [moves], with a build every day.
 */
export function movesIn(plan: Plan, truth: ObservedWeather, seed: string): readonly number[] {
  const { from, to } = seasonOf(plan);
  const moves = new Map<number, number>();
  let published: PublishedState = {};
  let days = new Map<string, Day>();
  for (const today of daysFrom(from, plus(to, -3))) {
    const garden = { id: "ahead", plans: [plan], weather: knownOn(truth, today, seed) };
    const at = startOf(today, plan.site.clock);
    const { events, publishedState } = buildSchedule(garden, horizonAt(garden, at), published);
    const jobs = events.filter(({ set, tasks }) => set !== "sessions" && tasks.length > 0);
    const now = new Map(jobs.map(({ key, day }) => [key, day]));
    const moved = [...now].filter(([id, day]) => {
      const before = days.get(id);
      return before !== undefined && before !== day && Math.max(before, day) >= today;
    });
    const { month } = partsOf(today);
    moves.set(month, (moves.get(month) ?? 0) + moved.length);
    [published, days] = [publishedState, now];
  }
  return [...moves.values()];
}
