import { type Day, dayOrThrow, earliest, plus } from "../../base/index.ts";
import { isSouthern, seasonOf } from "../../garden/model/index.ts";
import { killingFrost } from "../climate/frost.ts";
import { frostsAt } from "../climate/frosts-at.ts";
import { middle } from "./milestones.ts";
import { inPlace, type SowingContext } from "./sowing-context.ts";

/**
 * The autumn that ends growth: its first frost, early and usual, the killing frost, and the middle of the winter after
 * it.
 */
export type Autumn = {
  readonly early: Day;
  readonly usual: Day;
  readonly killing: Day;
  readonly midwinter: Day;
};

/**
 * The autumn before the next middle of winter after a day, so that a day in late autumn has that same autumn; null where
 * nothing freezes: a place without frost, or a heated house.
 */
export function autumnAfter(
  { plan, bed }: Pick<SowingContext, "plan" | "bed">,
  from: Day,
): Autumn | null {
  const { firstFrost, killingFrost: hard } = frostsAt(plan.site, bed);
  if (!firstFrost) return null;
  const { to } = seasonOf(plan);
  const on = nextAnniversary(to, plus(from, -1)) - to;
  return {
    early: plus(firstFrost.early, on),
    usual: plus(firstFrost.usual, on),
    killing: plus(killingFrost(firstFrost, hard), on),
    midwinter: plus(to, on),
  };
}

/** Where nothing freezes spring begins with days of twelve hours. Source: house rule. */
const EQUINOX = { north: [3, 20], south: [9, 22] } as const;

/** The first day of spring after a day: the usual last frost that reaches the bed, else the equinox. */
export function springAfter({ plan, bed }: Pick<SowingContext, "plan" | "bed">, from: Day): Day {
  const { lastFrost } = frostsAt(plan.site, bed);
  if (lastFrost) return nextAnniversary(lastFrost.usual, from);
  const [month, date] = EQUINOX[isSouthern(plan.site) ? "south" : "north"];
  return nextAnniversary(dayOrThrow(plan.year, month, date), from);
}

/** The first day after `from` that is a whole number of years from `day`. */
export function nextAnniversary(day: Day, from: Day): Day {
  const years = Math.ceil((from + 1 - day) / 365.25);
  return plus(day, years * 365.25);
}

/** How much colder the coldest nights are than the mean low of their time of year [K]. Source: house rule; fits minima of stations by the sea. */
const COLDEST_NIGHT_K = 8;

/** Days before the usual first frost from which a day the gardener gave is meant for the winter. Source: house rule. */
const MEANT_DAYS = 100;

/** Days after midwinter until which nights may still be the coldest. Source: house rule. */
const COLD_DAYS = 60;

/** Steps in which the nights of a winter are looked through [days]; their means change slowly. */
const STEP_DAYS = 5;

/** The first day from a day on, to some weeks past midwinter, that a test holds on; to the step. */
function firstInWinter(from: Day, { midwinter }: Autumn, holds: (day: Day) => boolean): Day | null {
  for (let day = from; day <= midwinter + COLD_DAYS; day = plus(day, STEP_DAYS))
    if (holds(day)) return day;
  return null;
}

/** The first day whose coldest nights are colder than a crop survives, by more than so much [K]; null where none is. */
export function tooColdFrom(
  { climate, crop }: SowingContext,
  autumn: Autumn,
  byK: number = 0,
): Day | null {
  const least = (crop.winter?.survivesC.value ?? 0) - byK;
  return firstInWinter(
    autumn.usual,
    autumn,
    (day) => climate.usual().air(day).lowC - COLDEST_NIGHT_K < least,
  );
}

/** The first day of a winter on which the soil is frozen for good in a usual year; null where it never is. */
export function frozenFrom({ climate, bed }: SowingContext, autumn: Autumn): Day | null {
  return firstInWinter(autumn.usual, autumn, (day) => climate.soilC(day, bed) <= FROZEN_SOIL_C);
}

/** Soil that no fork goes into [°C]. Source: house rule; half a degree above freezing, since a mean hides the nights. */
const FROZEN_SOIL_C = 0.5;

/** The first day of the time in which a crop is sown for the winter after a day; null where it is not, or the winter is too cold. */
export function winterOpens(context: SowingContext, from: Day): Day | null {
  const weeks = context.crop.winter?.sownWeeksBefore ?? null;
  const autumn = weeks && autumnAfter(context, from);
  if (!weeks || !autumn || tooColdFrom(context, autumn) !== null) return null;
  return plus(autumn.killing, -7 * weeks.value[1]);
}

/** Whether the gardener gave the day that it went in. */
const isGiven = ({ planting: { fixed, within, inSince } }: SowingContext) =>
  (fixed.start ?? fixed.out ?? within ?? inSince) !== null;

/** Days that autumn's short days add to a packet's. Source: Virginia Cooperative Extension 426-334, the short day factor. */
const SHORT_DAY_FACTOR_DAYS = 14;

/** So much colder air does no harm under snow and fabric [K]. Source: house rule; past it nothing but a fully hardy root lives. */
const UNDER_SNOW_K = 10;

/** Half a year: what went in longer ago than that is not of this autumn [days]. */
const OF_THIS_AUTUMN_DAYS = 182;

/** Whether what went in by a day is grown before the killing frost, so that nobody means it for a hard winter. */
function growsUp(context: SowingContext, day: Day, { killing }: Autumn): boolean {
  const began = inPlace(context)?.day ?? day;
  const from = began < day && day - began < OF_THIS_AUTUMN_DAYS ? began : day;
  const [least] = context.crop.harvest.days.value;
  return plus(from, least + SHORT_DAY_FACTOR_DAYS) <= killing;
}

/**
 * Whether a sowing that is in its place, or up, on a day lives through the coming winter while it is young, and grows on
 * after it: sown for that, in its time of autumn, where the winter is no colder than it survives. Of a day that the gardener
 * gave it is believed in any winter, sooner in a mild one and in the second half of that time in a cold one; only where
 * snow does not help either, what is grown by then was meant for autumn.
 */
export function wintersYoung(context: SowingContext, from: Day): boolean {
  const weeks = context.crop.winter?.sownWeeksBefore ?? null;
  const autumn = weeks && autumnAfter(context, from);
  if (!weeks || !autumn) return false;
  const [, most] = weeks.value;
  const opens = plus(autumn.killing, -7 * most);
  const survives = tooColdFrom(context, autumn) === null;
  if (!isGiven(context)) return survives && from >= opens;
  const hopeless = !survives && tooColdFrom(context, autumn, UNDER_SNOW_K) !== null;
  if (hopeless && growsUp(context, from, autumn)) return false;
  if (!survives) return from >= plus(autumn.killing, -7 * middle(weeks.value));
  return from >= earliest(opens, plus(autumn.usual, -MEANT_DAYS));
}
