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
 * How far below that a night must fall to warn of it for plants that a light frost only hurts [K]; and the air at which a plant is one
 * that the first frost kills [°C]. A forecast is as often too cold as too mild, so near its own limit every other warning is in vain;
 * that is worth it for what would be lost, and less so for the rest. Source: house rule, tried on the same years.
 */
const [SURELY_K, TENDER_C] = [0.5, -1.1];

/**
 * How much milder than what would be lost a night must be forecast before its warning is taken back [K]. Source: house rule, tried on
 * the same years: most of how far the forecast of a night is off.
 */
const KEPT_K = 1;

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
    const saidC = saidColder.find((each) => each.day === morning.day)?.lowC ?? null;
    const isStanding =
      saidC !== null && wouldLose(reportAt(saidC)) && wouldLose(reportAt(forecastC - KEPT_K));
    const isWorthIt = (lowC: number) =>
      wouldLose(reportAt(lowC)) || asksForWork(reportAt(lowC + SURELY_K));
    if (isStanding || isWorthIt(forecastC)) return [{ ...night, saidC: null }];
    return saidC !== null && isWorthIt(saidC) ? [{ ...night, saidC }] : [];
  });
}

/** Whether plants would be lost that the first frost kills. */
export function wouldLose({ beds }: FrostTonight): boolean {
  return beds.some(({ plants }) =>
    plants.some(({ need, killsC }) => need.kind !== "leave" && (killsC ?? TENDER_C) > TENDER_C),
  );
}

/** Whether the cold asks for anything; trays that come in every evening are no news. */
export function asksForWork({ beds, trays }: FrostTonight): boolean {
  return (
    beds.some(({ plants }) => plants.some(({ need }) => need.kind !== "leave")) ||
    trays.some(({ need, place }) => need !== "leave" && place !== "out by day")
  );
}
