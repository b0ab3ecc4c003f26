import { buildYear, horizonAt } from "../../src/app/build.ts";
import { type Day, plus, startOf } from "../../src/base/index.ts";
import { coldNightsIn } from "../../src/engine/beds/cold-nights.ts";
import { frostTonight } from "../../src/engine/beds/frost-tonight.ts";
import type { ObservedWeather } from "../../src/engine/climate/climate.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { seasonOf } from "../../src/garden/model/season.ts";
import { daysFrom, knownOn } from "./weather.ts";

/** What became of a year's nights: those on which frost asked for work, how many of them were warned of, and what was called in vain. */
export type Warned = {
  readonly nights: number;
  /** Warned of two days ahead or more; the day before at the latest; on the day itself at the latest; never. */
  readonly twoAhead: number;
  readonly oneAhead: number;
  readonly sameDay: number;
  readonly missed: number;
  /** Nights warned of on the day itself on which nothing had to be done. */
  readonly inVain: number;
};

/** Lives through a year's nights with forecasts that are off as forecasts are. */
export function warnedIn(plan: Plan, truth: ObservedWeather, seed: string): Warned {
  const garden = { id: "ahead", plans: [plan] };
  const { from, to } = seasonOf(plan);
  const year = buildYear(garden, horizonAt(garden, startOf(from, plan.site.clock)), {});
  const firstWarned = new Map<Day, number>();
  const onTheDay = new Set<Day>();
  for (const asOf of daysFrom(from, plus(to, -3)))
    for (const { day } of coldNightsIn(year, knownOn(truth, asOf, seed))) {
      firstWarned.set(day, Math.max(firstWarned.get(day) ?? 0, day - asOf));
      if (day === asOf) onTheDay.add(day);
    }
  const real = new Set(
    daysFrom(from, plus(to, -3)).filter((day) => {
      const lowC = truth.get(plus(day, 1))?.lowC;
      return lowC !== undefined && hasWork(frostTonight(year, day, lowC));
    }),
  );
  const ahead = [...real].map((day) => firstWarned.get(day) ?? -1);
  return {
    nights: real.size,
    twoAhead: ahead.filter((days) => days >= 2).length,
    oneAhead: ahead.filter((days) => days >= 1).length,
    sameDay: ahead.filter((days) => days >= 0).length,
    missed: ahead.filter((days) => days < 0).length,
    inVain: [...onTheDay].filter((day) => !real.has(day)).length,
  };
}

const hasWork = ({ beds }: ReturnType<typeof frostTonight>) =>
  beds.some(({ plants }) => plants.some(({ need }) => need.kind !== "leave"));
