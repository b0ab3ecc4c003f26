import { type Day, startOf } from "../base/index.ts";
import { type Garden, PRACTICES } from "../engine/index.ts";
import { type ParsedDiaryLine, parseDiaryLines } from "../garden/index.ts";
import type { Plan } from "../garden/model/index.ts";
import { type Change, changesOf } from "../views/index.ts";
import {
  buildSchedule,
  horizonAt,
  newestPlan,
  type PublishedState,
  type Schedule,
} from "./build.ts";

export type { Change } from "../views/index.ts";

/** What the diary has moved, done, added and removed since a day (inclusive), as of today, and why. */
export function changesSince(
  garden: Garden,
  { since, today }: { readonly since: Day; readonly today: Day },
): readonly Change[] {
  const before = scheduleOn(garden, { on: since, until: (since - 1) as Day, published: {} });
  const now = scheduleOn(garden, { on: today, until: today, published: before.publishedState });
  return changesOf(
    {
      before: before.year.scheduled,
      now: now.year.scheduled,
      diaryLines: linesBetween(garden.plans, since, today),
      since,
    },
    garden.plans,
  );
}

/** Today, the last day of the diary that counts, and what was published before. */
type DiaryCut = { readonly on: Day; readonly until: Day; readonly published: PublishedState };

function scheduleOn(garden: Garden, { on, until, published }: DiaryCut): Schedule {
  const then = { ...garden, plans: garden.plans.map((plan) => upTo(plan, until)) };
  const instant = startOf(on, newestPlan(garden.plans).site.clock);
  return buildSchedule(then, horizonAt(then, instant), published);
}

/** The plan with its diary up to a day (inclusive). */
const upTo = (plan: Plan, day: Day): Plan => ({
  ...plan,
  diary: plan.diary.filter((line) => line.day <= day),
});

/** Lines written in those days, both inclusive. */
function linesBetween(plans: readonly Plan[], from: Day, to: Day): readonly ParsedDiaryLine[] {
  return parseDiaryLines(plans, PRACTICES).filter(({ line: { day } }) => day >= from && day <= to);
}
