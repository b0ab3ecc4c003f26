import { getTimes } from "suncalc";
import {
  DAYS_IN_YEAR,
  type Day,
  dayOf,
  dayOrThrow,
  type Minute,
  MS_PER_DAY,
  partsOf,
  plus,
  startOf,
} from "../../base/index.ts";

/** Where on earth: degrees, south and west negative. */
export type GeoPoint = { readonly latitude: number; readonly longitude: number };

/** What every day has: the sun's highest point, and the ends of civil twilight, null where the sun never passes 6° below the horizon. */
type SunTimes = {
  readonly transit: number;
  readonly dawn: number | null;
  readonly dusk: number | null;
};

/**
 * The sun's day, all instants in ms since 1970 UTC. A day of the far north or south on which it never rises may
 * still have its dawn and dusk.
 */
export type Sun = SunTimes &
  (
    | { readonly kind: "rises"; readonly rise: number; readonly set: number }
    | { readonly kind: "never rises" }
    | { readonly kind: "never sets" }
  );

const MS_PER_HOUR = 3_600_000;
const MS_PER_MINUTE = 60_000;

/**
 * The sun's day round the noon of a calendar day where its clock is near the sun's: rise and set of one and the same
 * light, with refraction, seen from the ground. Far east or west of Greenwich they fall on a neighbouring day of UTC.
 * Where clocks run a whole day ahead of the sun (Samoa, Kiribati) it is the next day's sun, a minute or two off.
 * Source: J. Meeus, Astronomical Algorithms, 1991, chapters 15 and 25, as calculated by the library suncalc.
 */
export function sunOf(day: Day, { latitude, longitude }: GeoPoint): Sun {
  const noon = new Date((day + 0.5) * MS_PER_DAY);
  const { sunrise, sunset, solarNoon, dawn, dusk, alwaysUp } = getTimes(noon, latitude, longitude);
  const shared: SunTimes = {
    transit: solarNoon.getTime(),
    dawn: dawn?.getTime() ?? null,
    dusk: dusk?.getTime() ?? null,
  };
  if (sunrise && sunset)
    return { ...shared, kind: "rises", rise: sunrise.getTime(), set: sunset.getTime() };
  return { ...shared, kind: alwaysUp ? "never sets" : "never rises" };
}

/** Degrees that the sun moves in an hour. */
const DEGREES_AN_HOUR = 15;

/**
 * The minute of the day at which the sun sets by the garden's clock; null where it does not. A plan has no longitude,
 * so that of its zone's standard time is used: an hour off at the edges of a wide zone.
 * Source: sunOf; the meridian, house rule.
 */
export function sunsetOn(day: Day, latitude: number, clock: string): Minute | null {
  const known = sunsetsAt(`${latitude}|${clock}`);
  const there = known.get(day);
  if (there !== undefined) return there;
  const minute = calculateSunset(day, latitude, clock);
  known.set(day, minute);
  return minute;
}

/** Sunsets by place, then day, cached, because every build asks for the days of the same sessions again. */
const sunsets = new Map<string, Map<Day, Minute | null>>();

/** Places that are cached, and days of each: more than one garden has, and few enough to stay small. */
const MOST_CACHED = { places: 20, days: 5000 } as const;

function sunsetsAt(place: string): Map<Day, Minute | null> {
  const known = sunsets.get(place);
  if (known && known.size < MOST_CACHED.days) return known;
  if (sunsets.size >= MOST_CACHED.places) sunsets.clear();
  const empty = new Map<Day, Minute | null>();
  sunsets.set(place, empty);
  return empty;
}

function calculateSunset(day: Day, latitude: number, clock: string): Minute | null {
  const { year } = partsOf(day);
  const ahead = (at: Day) => at * MS_PER_DAY - startOf(at, clock);
  const standard = Math.min(ahead(dayOrThrow(year, 1, 1)), ahead(dayOrThrow(year, 7, 1)));
  const longitude = (standard / MS_PER_HOUR) * DEGREES_AN_HOUR;
  const sun = sunOf(day, { latitude, longitude });
  return sun.kind === "rises" ? Math.round((sun.set - startOf(day, clock)) / MS_PER_MINUTE) : null;
}

/**
 * Hours from sunrise to sunset, with refraction [h]; 0 where the sun never rises, 24 where it never sets. Calculated at
 * Greenwich's longitude: elsewhere up to half a day's change off, two minutes at 50°.
 */
export function dayHours(day: Day, latitude: number): number {
  const sun = sunOf(day, { latitude, longitude: 0 });
  switch (sun.kind) {
    case "rises":
      return (sun.set - sun.rise) / MS_PER_HOUR;
    case "never rises":
      return 0;
    case "never sets":
      return 24;
  }
}

/** A year in the middle between two leap years, whose dates represent those of all years. */
const MIDDLE_YEAR = 2026;

/**
 * Day hours of one latitude by date [h], each date calculated once and 29 February as 1 March: the same date of another
 * year differs by three minutes at 60°, less nearer to the equator. The cache is in the returned function.
 */
export function dayHoursOf(latitude: number): (day: Day) => number {
  const known = new Map<number, number>();
  return (day) => {
    const { month, date } = partsOf(day);
    const key = month * 32 + date;
    const hours = known.get(key) ?? dayHours(inMiddleYear(month, date), latitude);
    known.set(key, hours);
    return hours;
  };
}

function inMiddleYear(month: number, date: number): Day {
  return dayOf(MIDDLE_YEAR, month, date) ?? dayOrThrow(MIDDLE_YEAR, 3, 1);
}

/**
 * Below this plants hardly grow. Source: McCollum, University of California, about 2014, after Coleman, The Winter
 * Harvest Handbook, 2009.
 */
const TOO_SHORT_H = 10;

/** First and last day of a spell, both inclusive. */
export type ShortDayPeriod = { readonly first: Day; readonly last: Day };

/**
 * The next days shorter than ten hours after a day of ten hours or more, `from` or the first such day after it; null
 * where no day of a year is so short, nearer to the equator than 32.7°. `hours` as dayHoursOf gives them.
 * Source: McCollum, University of California, about 2014, after Coleman, The Winter Harvest Handbook, 2009.
 */
export function shortDays(hours: (day: Day) => number, from: Day): ShortDayPeriod | null {
  const isShort = (day: Day) => !isLongEnough(hours, day);
  const long = next(from, (day) => !isShort(day));
  const first = long === null ? null : next(long, isShort);
  if (first === null) return null;
  const after = next(first, (day) => !isShort(day));
  return after === null ? null : { first, last: plus(after, -1) };
}

/** The first day of so many hours from a day on, that day included; null where a year has none. Source: as shortDays for TOO_SHORT_H. */
export function longEnoughFrom(
  hours: (day: Day) => number,
  from: Day,
  least = TOO_SHORT_H,
): Day | null {
  return next(from, (day) => hours(day) >= least);
}

/** Whether a day has the ten hours that plants need to grow. Source: as shortDays. */
export function isLongEnough(hours: (day: Day) => number, day: Day): boolean {
  return hours(day) >= TOO_SHORT_H;
}

/** The first day from a day on, within a year, for which a condition is true. */
function next(from: Day, matches: (day: Day) => boolean): Day | null {
  for (let on = 0; on <= DAYS_IN_YEAR + 1; on++) if (matches(plus(from, on))) return plus(from, on);
  return null;
}
