import { readFileSync } from "node:fs";
import { type Day, partsOf } from "../../src/base/days/day.ts";
import type { ObservedWeather } from "../../src/engine/climate/climate.ts";
import type { DayAir } from "../../src/engine/climate/day-air.ts";
import type { Normals } from "../../src/garden/model/plan.ts";
import { isoDay, normalsOf } from "../gardens.ts";

const rowsOf = (name: string): readonly (readonly string[])[] =>
  readFileSync(new URL(`../../node_modules/vega-datasets/data/${name}`, import.meta.url), "utf8")
    .trim()
    .split("\n")
    .slice(1)
    .map((line) => line.split(","));

/** Lows and highs [°C] of a station, every day of 2012 to 2015. */
function daysAt(station: string): ObservedWeather {
  return new Map(
    rowsOf("weather.csv")
      .filter(([place]) => place === station)
      .map(([, iso = "", , high, low]): [Day, DayAir] => [
        isoDay(iso),
        { lowC: Number(low), highC: Number(high) },
      ]),
  );
}

/** Seattle's days. */
export const SEATTLE = daysAt("Seattle");

/** New York's days. */
export const NEW_YORK = daysAt("New York");

/** The months' means of lows and highs of a station's days, January first. */
export function normalsIn(days: ObservedWeather): Normals {
  const mean = (m: number, of: (air: DayAir) => number) => {
    const own = [...days].filter(([day]) => partsOf(day).month === m + 1);
    return own.reduce((sum, [, air]) => sum + of(air), 0) / own.length;
  };
  const twelve = (of: (air: DayAir) => number) => Array.from({ length: 12 }, (_, m) => mean(m, of));
  return normalsOf(
    twelve(({ lowC }) => lowC),
    twelve(({ highC }) => highC),
  );
}

/** The mean of Seattle's hourly normals of each month, 1981 to 2010 [°C], January first. */
export function hourlyMeans(): readonly number[] {
  const hours = rowsOf("seattle-weather-hourly-normals.csv").map(([at = "", , degrees]) => ({
    month: partsOf(isoDay(at.slice(0, 10))).month,
    degrees: Number(degrees),
  }));
  return Array.from({ length: 12 }, (_, m) => {
    const own = hours.filter(({ month }) => month === m + 1);
    return own.reduce((sum, { degrees }) => sum + degrees, 0) / own.length;
  });
}
