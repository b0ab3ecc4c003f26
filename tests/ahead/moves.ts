import { buildSchedule, horizonAt } from "../../src/app/build.ts";
import { type Day, partsOf, plus, startOf } from "../../src/base/index.ts";
import type { ObservedWeather } from "../../src/engine/climate/climate.ts";
import type { PublishedState } from "../../src/engine/schedule/scheduled-task.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { seasonOf } from "../../src/garden/model/season.ts";
import type { Event } from "../../src/views/records.ts";
import { daysFrom, knownOn } from "./weather.ts";

/**
 * What a reader saw change in a month among entries still to come: how many moved to another day, the same with a ladder of hardening
 * off as the one thing it is, and how many were told anew on their day.
 */
export type Moved = {
  readonly entries: number;
  readonly things: number;
  readonly retold: number;
};

type Entry = Pick<Event, "day" | "title" | "text">;

/**
 * The changes of the calendar with all jobs by calendar month from the season's first, with a new forecast and a build every day.
 */
export function movesIn(plan: Plan, truth: ObservedWeather, seed: string): readonly Moved[] {
  const { from, to } = seasonOf(plan);
  const months = new Map<number, Moved>();
  let published: PublishedState = {};
  let before = new Map<string, Entry>();
  for (const today of daysFrom(from, plus(to, -3))) {
    const garden = { id: "ahead", plans: [plan], weather: knownOn(truth, today, seed) };
    const at = startOf(today, plan.site.clock);
    const { events, publishedState } = buildSchedule(garden, horizonAt(garden, at), published);
    const jobs = events.filter(({ set, tasks }) => set !== "sessions" && tasks.length > 0);
    const now = new Map<string, Entry>(jobs.map((event) => [event.key, event]));
    const { month } = partsOf(today);
    months.set(month, added(months.get(month), changesBetween(before, now, today)));
    [published, before] = [publishedState, now];
  }
  return [...months.values()];
}

function changesBetween(
  before: ReadonlyMap<string, Entry>,
  now: ReadonlyMap<string, Entry>,
  today: Day,
): Moved {
  const things = new Set<string>();
  let [entries, retold] = [0, 0];
  for (const [key, entry] of now) {
    const was = before.get(key);
    if (was === undefined || Math.max(was.day, entry.day) < today) continue;
    if (was.day !== entry.day) {
      entries += 1;
      things.add(key.replace(/harden-off\/.*$/, "ladder"));
    } else if (textOf(was) !== textOf(entry)) retold += 1;
  }
  return { entries, things: things.size, retold };
}

const textOf = ({ title, text }: Entry) => `${title}\n${text}`;

const added = (a: Moved = { entries: 0, things: 0, retold: 0 }, b: Moved): Moved => ({
  entries: a.entries + b.entries,
  things: a.things + b.things,
  retold: a.retold + b.retold,
});
