import {
  type Day,
  type DaySpan,
  dayOf,
  dayOrThrow,
  midway,
  partsOf,
  plus,
} from "../../base/index.ts";
import type { Plan, Site } from "./plan.ts";

/** Seasons by plan object, because nearly every calculation asks for one. */
const seasonCache = new WeakMap<object, DaySpan>();

/**
 * First and last day of a plan's season, both inclusive. With frost: from the middle of the dormant time before its
 * last frost to the day before the middle of the one after, by the usual dates; so a southern garden's season runs from
 * winter to winter too. Without frost: the calendar year, or July to June where the latitude is south. Seasons of one
 * place follow each other without gap or overlap.
 */
export function seasonOf(plan: Pick<Plan, "year" | "site">): DaySpan {
  const known = seasonCache.get(plan);
  if (known) return known;
  const season = calculateSeason(plan);
  seasonCache.set(plan, season);
  return season;
}

function calculateSeason(plan: Pick<Plan, "year" | "site">): DaySpan {
  const { lastFrost, firstFrost } = plan.site;
  if (lastFrost === null || firstFrost === null) return seasonWithoutFrost(plan);
  const from = middleOfDormancy(lastFrost.usual, firstFrost.usual, 0);
  const after = middleOfDormancy(lastFrost.usual, firstFrost.usual, 1);
  return { from, to: plus(after, -1) };
}

/** The middle of the dormant time before the last frost, that many years later: both frosts moved by whole years. */
function middleOfDormancy(lastFrost: Day, firstFrost: Day, years: number): Day {
  return midway(plusYears(firstFrost, years - 1), plusYears(lastFrost, years));
}

function seasonWithoutFrost({ year, site }: Pick<Plan, "year" | "site">) {
  return isSouthern(site)
    ? { from: dayOrThrow(year, 7, 1), to: dayOrThrow(year + 1, 6, 30) }
    : { from: dayOrThrow(year, 1, 1), to: dayOrThrow(year, 12, 31) };
}

/** The plan whose season a day falls in, else the last that began before it, else the first. Plans in year order, not empty. */
export function planOn(plans: readonly Plan[], day: Day): Plan {
  const [first] = plans;
  if (!first) throw new RangeError("a garden without a plan has no season");
  return plans.findLast((plan) => seasonOf(plan).from <= day) ?? first;
}

/** Whether the site is south of the equator; false where the latitude is not known. */
export function isSouthern(site: Pick<Site, "latitude">): boolean {
  return site.latitude !== null && site.latitude < 0;
}

/** The same month and date that many years later (earlier where negative); 28 February for the 29th. */
export function plusYears(day: Day, years: number): Day {
  const { year, month, date } = partsOf(day);
  return dayOf(year + years, month, date) ?? dayOrThrow(year + years, month, 28);
}
