import { type Day, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import { seasonOf } from "../../garden/model/index.ts";
import type { Climate } from "../climate/climate.ts";
import type { SowingContext } from "./sowing-context.ts";

/** A winter that cool crops grow in: its coldest day has at least this mean [°C]. Source: house rule, 50 °F. */
const GROWS_IN_WINTER_C = 10;

/** A summer too hot for cool crops: its hottest day has more than this mean [°C]. Source: house rule; lettuce, peas and spinach end at about that. */
const HOT_SUMMER_C = 22;

/**
 * Mean air [°C] under which they are sown or set out as summer goes. Source: house rule, between what they grow in and what
 * ends them; bulbs and pulses wait for cooler days, since they stand till spring.
 */
const COOL_ENOUGH_C = { most: 22, bulbsAndPulses: 17 } as const;

/** Steps in which a year is looked through for its coldest and hottest day. */
const STEP_DAYS = 5;

/** Days of a year in steps, from a day on. */
const YEAR = Array.from({ length: Math.ceil(365 / STEP_DAYS) }, (_, i) => i * STEP_DAYS);

type Extremes = { readonly hottest: Day; readonly leastC: number; readonly mostC: number };

/** The hottest day of a usual year that begins on a day, and its least and most mean air [°C]; kept for each climate. */
const extremes = new WeakMap<Climate, Map<Day, Extremes>>();

function extremesOf({ usual }: Climate, from: Day): Extremes {
  const climate = usual();
  const known = extremes.get(climate) ?? new Map<Day, Extremes>();
  extremes.set(climate, known);
  const there = known.get(from);
  if (there) return there;
  const days = YEAR.map((on) => plus(from, on));
  const [first = from, ...rest] = days;
  const hottest = rest.reduce((a, b) => (climate.airC(b) > climate.airC(a) ? b : a), first);
  const leastC = Math.min(...days.map((day) => climate.airC(day)));
  const found = { hottest, leastC, mostC: climate.airC(hottest) };
  known.set(from, found);
  return found;
}

/** Days from the middle of winter to the last frost, at the most, in such a place. Source: house rule; four months with frost are a winter. */
const FROST_DAYS = 60;

/**
 * Whether the place has its season of cool crops from autumn to spring: a winter they grow in, and a summer too hot for them.
 * Not said of a place with frost whose means are not known.
 */
export function hasCoolSeason({ climate, plan }: SowingContext): boolean {
  const { from } = seasonOf(plan);
  const last = plan.site.lastFrost?.usual ?? from;
  if (climate.underGlass || last > from + FROST_DAYS) return false;
  if (climate.rough && plan.site.lastFrost) return false;
  const { leastC, mostC } = extremesOf(climate, from);
  return leastC >= GROWS_IN_WINTER_C && mostC > HOT_SUMMER_C;
}

/** A summer in which cool crops never stop: its hottest day has no more than this mean [°C]. Source: house rule; Britain's and Ireland's. */
const COOL_SUMMER_C = 18;

/** Whether cool crops grow all summer, so that those for the winter need not be grown by spring; not said where means are not known. */
export function hasCoolSummer({ climate, plan }: SowingContext): boolean {
  if (climate.rough || climate.underGlass) return false;
  return extremesOf(climate, seasonOf(plan).from).mostC <= COOL_SUMMER_C;
}

/** The first day after the hottest on which this season is no warmer than that [°C]; null where it never is in half a year. */
function cooledTo({ climate, plan }: SowingContext, aboveC: number): Day | null {
  const { hottest } = extremesOf(climate, seasonOf(plan).from);
  for (let day = hottest; day <= hottest + 183; day = plus(day, 1))
    if (climate.airAheadC(day) <= aboveC) return day;
  return null;
}

/** Days that are searched from the first cool one on for one that no limit of the crop speaks against. */
const LOOK_AHEAD_DAYS = 90;

/**
 * The day from which a cool crop is sown or set out in the season of such a place; null in every other place, for tender crops, and
 * where its own way begins the year: tubers, peas where frost takes their flowers, and what the gardener gave a month for.
 * `isGood` says whether nothing speaks against a day.
 */
export function coolSeasonStart(context: SowingContext, isGood: (day: Day) => boolean): Day | null {
  const { crop, plan, planting } = context;
  if (isTender(crop) || crop.perennial || planting.start === "tubers" || planting.within)
    return null;
  const isPulse = crop.family === "pea family";
  if ((isPulse && plan.site.lastFrost) || !hasCoolSeason(context)) return null;
  const late = isPulse || crop.winter?.daysAfterSpring;
  const first = cooledTo(context, COOL_ENOUGH_C[late ? "bulbsAndPulses" : "most"]);
  if (first === null) return null;
  for (let day = first; day <= first + LOOK_AHEAD_DAYS; day = plus(day, 1))
    if (isGood(day)) return day;
  return first;
}

/** A winter in which roots never stop: its coldest day has at least this mean [°C]. Source: house rule; western Oregon's, where October is garlic's month. */
const MILD_WINTER_C = 3;

/**
 * How cool a day's mean air is when cloves go in by cool days [°C], or how much warmer than the coldest it may be [K], whichever
 * is warmer. Source: house rule; October by the sea, November in places without frost, as is said there.
 */
const CLOVES = { coolC: 10, nearColdestK: 5 } as const;

/** The first cool day for cloves in a place without frost, or with a winter in which their roots never stop; null elsewhere. */
export function firstCoolDay(context: SowingContext): Day | null {
  const { plan, climate } = context;
  const { leastC } = extremesOf(climate, seasonOf(plan).from);
  if (plan.site.firstFrost && leastC < MILD_WINTER_C) return null;
  return cooledTo(context, Math.max(CLOVES.coolC, leastC + CLOVES.nearColdestK));
}

/** Nights that tender crops must have where no frost gives their day [°C]. Source: common practice, 50 °F, unless the crop names its own. */
const TENDER_NIGHTS_C = 10;

/** The first day of the season whose mean low is warm enough for a tender crop, in a place without frost; its first day where every night is. */
export function firstMildNight({ climate, plan, crop }: SowingContext): Day {
  const { from, to } = seasonOf(plan);
  const least = crop.indoors?.nightFloorC.value ?? TENDER_NIGHTS_C;
  for (let day = from; day <= to; day = plus(day, 1))
    if (climate.usual().air(day).lowC >= least) return day;
  return from;
}
