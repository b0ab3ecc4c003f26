import { readFileSync } from "node:fs";
import { partsOf, sayDay } from "../../src/base/days/day.ts";
import type { ObservedWeather } from "../../src/engine/climate/climate.ts";
import type { Normals } from "../../src/garden/model/plan.ts";
import { frostRecordOf, type NightDates } from "../../src/garden/station/frost-record.ts";
import { monthlyNormalsOf } from "../../src/garden/station/months.ts";
import { type DailyRecord, dayOfNumber } from "../../src/garden/station/record.ts";
import { isoDay } from "../gardens.ts";

/** The stations of the record, with their latitudes [degrees] and clocks. */
export const STATIONS = [
  { name: "Seattle", latitude: 47.4, clock: "America/Los_Angeles" },
  { name: "New York", latitude: 40.8, clock: "America/New_York" },
] as const;

/** One of them. */
export type Station = (typeof STATIONS)[number];

/** The years that each of them has whole. */
export const YEARS = [2012, 2013, 2014, 2015] as const;

const CSV = new URL("../../node_modules/vega-datasets/data/weather.csv", import.meta.url);

const DAYS: readonly (DailyRecord & { readonly station: string })[] = readFileSync(CSV, "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => {
    const [station = "", iso = "", rain, high, low] = line.split(",");
    return {
      ...{ station, day: isoDay(iso) },
      ...{ lowC: Number(low), highC: Number(high), rainMm: Number(rain) },
    };
  });

const seriesOf = ({ name }: Station, isIn: (year: number) => boolean): readonly DailyRecord[] =>
  DAYS.filter(({ station, day }) => station === name && isIn(partsOf(day).year));

/** What a gardener of a station knows before a year: dates as a plan has them (`3 Mar, 20 Mar, 9 Apr`), and normals. */
export type Known = {
  readonly lastFrost: string;
  readonly firstFrost: string;
  readonly normals: Normals;
};

/** What all years but one say of a station. */
export function knownBefore(station: Station, year: number): Known {
  const others = seriesOf(station, (each) => each !== year);
  const { last, first } = frostRecordOf(others, false);
  const months = monthlyNormalsOf(others);
  return {
    lastFrost: datesSaid(last[32]),
    firstFrost: datesSaid(first[32]),
    normals: {
      ...{ lowC: whole(months.lowC), highC: whole(months.highC) },
      ...{ rainMm: months.rainMm, spreadK: months.spreadK },
    },
  };
}

/** The year's own lows and highs. */
export function observedIn(station: Station, year: number): ObservedWeather {
  return new Map(
    seriesOf(station, (each) => each === year).map(({ day, lowC, highC }) => [
      day,
      { lowC: there(lowC), highC: there(highC) },
    ]),
  );
}

function datesSaid({ early, usual, late }: NightDates): string {
  return [early, usual, late].map((number) => sayDay(dayOfNumber(there(number)))).join(", ");
}

const whole = (values: readonly (number | null)[]) => values.map(there);

function there(value: number | null): number {
  if (value === null) throw new Error("the record has a hole");
  return value;
}
