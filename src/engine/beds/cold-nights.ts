import { type Day, plus } from "../../base/index.ts";
import { type KnownWeather, WARNED_DAYS } from "../../garden/model/index.ts";
import type { YearCourse } from "../year.ts";
import { type FrostTonight, frostTonight } from "./frost-tonight.ts";

/**
 * How far below its figure a night may fall that is forecast that many nights ahead, tonight first [K]. Source: house rule, tried on
 * eight station years (tests/ahead): nine in ten of the nights that ask for work are warned of two days ahead, hardly any is missed.
 */
const OFF_BY_K = [0, 0.5, 1] as const;

/**
 * A night that is forecast, by the day before it, and what the garden needs for it were it colder by `offByK`. `saidC`: how cold
 * [°C] it was said to be when it was warned of, where that warning is to be taken back and nothing is to be done; else null.
 */
export type ColdNight = {
  readonly day: Day;
  readonly forecastC: number;
  readonly offByK: number;
  readonly report: FrostTonight;
  readonly saidC: number | null;
};

/**
 * Those of the next three nights on which the cold asks for something, or was said to and no longer does. In day order; empty
 * where nothing is known of the weather.
 */
export function coldNightsIn(year: YearCourse, weather: KnownWeather | null): readonly ColdNight[] {
  if (weather === null) return [];
  const { asOf, days, saidColder } = weather;
  // The night after a day falls into the early hours of the next.
  const near = days.filter(({ day }) => day > asOf && day <= asOf + WARNED_DAYS);
  return near.flatMap((morning): readonly ColdNight[] => {
    const day = plus(morning.day, -1);
    const forecastC = morning.lowC;
    const offByK = OFF_BY_K[day - asOf] ?? 0;
    const reportAt = (lowC: number) => frostTonight(year, day, lowC - offByK);
    const night = { day, forecastC, offByK, report: reportAt(forecastC) };
    if (asksForWork(night.report)) return [{ ...night, saidC: null }];
    const saidC = saidColder.find((each) => each.day === morning.day)?.lowC ?? null;
    return saidC !== null && asksForWork(reportAt(saidC)) ? [{ ...night, saidC }] : [];
  });
}

/** Whether the cold asks for anything; trays that come in every evening are no news. */
function asksForWork({ beds, trays }: FrostTonight): boolean {
  return (
    beds.some(({ plants }) => plants.some(({ need }) => need.kind !== "leave")) ||
    trays.some(({ need, place }) => need !== "leave" && place !== "out by day")
  );
}
