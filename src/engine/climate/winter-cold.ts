import { type Day, type DaySpan, plus } from "../../base/index.ts";
import type { Climate } from "./climate.ts";

/** Days from one look to the next: a smooth year moves little in between. */
const LOOK_EVERY_DAYS = 10;

/** So many looks are the coldest two months, more than any cold spell of one year. */
const COLDEST_LOOKS = 6;

/** A mean low [°C] of the coldest two months below which the ground freezes for weeks. Source: house rule; about where snow lies. */
const FROZEN_GROUND_C = -4;

const coldest = new WeakMap<Climate, Map<Day, number>>();

/** The mean low [°C] of the coldest two months of a usual season: a few cold nights freeze no ground for weeks. */
export function coldestLowC(climate: Climate, { from, to }: DaySpan): number {
  const known = coldest.get(climate) ?? new Map<Day, number>();
  coldest.set(climate, known);
  const there = known.get(from);
  if (there !== undefined) return there;
  const lows: number[] = [];
  for (let day = from; day <= to; day = plus(day, LOOK_EVERY_DAYS))
    lows.push(climate.usual().air(day).lowC);
  const least = lows.sort((a, b) => a - b).slice(0, COLDEST_LOOKS);
  const mean = least.reduce((sum, low) => sum + low, 0) / least.length;
  known.set(from, mean);
  return mean;
}

/** Whether the winters of a season's place freeze the ground for weeks, so that roots are lifted and crowns are mulched. */
export function groundFreezes(climate: Climate, season: DaySpan): boolean {
  return coldestLowC(climate, season) < FROZEN_GROUND_C;
}
