import { buildYear, horizonAt } from "../../src/app/build.ts";
import { type Day, plus, startOf } from "../../src/base/index.ts";
import { asksForWork, coldNightsIn, wouldLose } from "../../src/engine/beds/cold-nights.ts";
import { frostTonight } from "../../src/engine/beds/frost-tonight.ts";
import type { ObservedWeather } from "../../src/engine/climate/climate.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { seasonOf } from "../../src/garden/model/season.ts";
import { type KnownWeather, mergeWeather } from "../../src/garden/model/weather.ts";
import { daysFrom, knownOn } from "./weather.ts";

/** What became of a year's nights: those on which cold asked for work, how many of them were warned of, and what was called in vain. */
export type Warned = {
  readonly nights: number;
  /** Nights that would have killed what the first frost kills. */
  readonly losing: number;
  /** Nights whose work was warned of two days ahead or more; the day before at the latest; on the day itself at the latest; never. */
  readonly twoAhead: number;
  readonly oneAhead: number;
  readonly sameDay: number;
  readonly missed: number;
  /** Warned of on the day itself, of those that asked for work and of those that would have killed. */
  readonly standing: number;
  readonly standingLosing: number;
  /** Nights warned of on the day itself on which nothing had to be done; and of those, the ones that were milder than that by over NEAR_K. */
  readonly inVain: number;
  readonly farInVain: number;
};

/** A night that stayed above what asks for work by no more than this was near it [K]: 2 °F. */
const NEAR_K = 1.1;

/** Lives through a year's nights with forecasts that are off as forecasts are. */
export function warnedIn(plan: Plan, truth: ObservedWeather, seed: string): Warned {
  const garden = { id: "ahead", plans: [plan] };
  const { from, to } = seasonOf(plan);
  const year = buildYear(garden, horizonAt(garden, startOf(from, plan.site.clock)), {});
  const firstWarned = new Map<Day, number>();
  const onTheDay = new Set<Day>();
  let known: KnownWeather | null = null;
  for (const asOf of daysFrom(from, plus(to, -3))) {
    known = mergeWeather(known, knownOn(truth, asOf, seed));
    for (const { day, saidC } of coldNightsIn(year, known)) {
      if (saidC !== null) continue;
      firstWarned.set(day, Math.max(firstWarned.get(day) ?? 0, day - asOf));
      if (day === asOf) onTheDay.add(day);
    }
  }
  const nightsThat = (is: typeof asksForWork, colderK = 0) =>
    new Set(
      daysFrom(from, plus(to, -3)).filter((day) => {
        const lowC = truth.get(plus(day, 1))?.lowC;
        return lowC !== undefined && is(frostTonight(year, day, lowC - colderK));
      }),
    );
  const [real, losing] = [nightsThat(asksForWork), nightsThat(wouldLose)];
  const near = nightsThat(asksForWork, NEAR_K);
  const ahead = [...real].map((day) => firstWarned.get(day) ?? -1);
  const inVain = [...onTheDay].filter((day) => !real.has(day));
  return {
    nights: real.size,
    losing: losing.size,
    twoAhead: ahead.filter((days) => days >= 2).length,
    oneAhead: ahead.filter((days) => days >= 1).length,
    sameDay: ahead.filter((days) => days >= 0).length,
    missed: ahead.filter((days) => days < 0).length,
    standing: [...real].filter((day) => onTheDay.has(day)).length,
    standingLosing: [...losing].filter((day) => onTheDay.has(day)).length,
    inVain: inVain.length,
    farInVain: inVain.filter((day) => !near.has(day)).length,
  };
}
