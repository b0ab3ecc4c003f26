import { DAYS_IN_YEAR, type Day, plus } from "../../src/base/days/day.ts";
import { curveThrough, monthlyMeans } from "../../src/engine/climate/air.ts";
import type { FrostDates, Normals, Plan, Planting, Site } from "../../src/garden/model/plan.ts";

/** Days from a day of one half of the world to the same time of the other half's year. */
export const HALF_A_YEAR = 182;

const moved = (day: Day) => plus(day, HALF_A_YEAR);

const movedIf = (day: Day | null) => (day === null ? null : moved(day));

/** The same garden as far south as it lies north: every date and every normal 182 days later. */
export function mirrored(plan: Plan): Plan {
  return { ...plan, site: southern(plan.site), plantings: plan.plantings.map(later) };
}

function southern(site: Site): Site {
  return {
    ...site,
    latitude: site.latitude === null ? null : -site.latitude,
    lastFrost: frosts(site.lastFrost),
    firstFrost: frosts(site.firstFrost),
    killingFrost: frosts(site.killingFrost),
    normals: normals(site.normals),
  };
}

function frosts(dates: FrostDates | null): FrostDates | null {
  if (!dates) return null;
  const { early, usual, late } = dates;
  return { ...dates, early: moved(early), usual: moved(usual), late: moved(late) };
}

/** The curve through twelve monthly values, moved by half a year, as twelve monthly values again. */
function movedMeans(values: readonly number[]): readonly number[] {
  const curve = curveThrough(values);
  const later = curve.map((_, i) => curve[(i - HALF_A_YEAR + DAYS_IN_YEAR) % DAYS_IN_YEAR] ?? 0);
  return monthlyMeans(later);
}

function normals(given: Normals | null): Normals | null {
  if (!given) return null;
  const { lowC, highC, spreadK, rainMm } = given;
  return {
    ...{ lowC: movedMeans(lowC), highC: movedMeans(highC) },
    ...{ spreadK: spreadK && movedMeans(spreadK), rainMm: rainMm && movedMeans(rainMm) },
  };
}

function later(planting: Planting): Planting {
  const { fixed, within, notBefore, inSince } = planting;
  return {
    ...planting,
    fixed: { start: movedIf(fixed.start), out: movedIf(fixed.out) },
    within: within && { from: moved(within.from), to: moved(within.to) },
    notBefore: movedIf(notBefore),
    inSince: movedIf(inSince),
  };
}
