import { describe, expect, test } from "vitest";
import { type Day, dayOf, dayOrThrow, isoOf, plus } from "../../src/base/days/day.ts";
import { dayHours, dayHoursOf, type Sun, shortDays, sunOf } from "../../src/engine/climate/sun.ts";
import { isoDay } from "../gardens.ts";
import { csvOf, yamlOf } from "./read.ts";

type Row = Readonly<Record<string, string>>;

const ROWS = csvOf("sun-times-usno.csv");
const MOMENTS = {
  begin_civil_utc: "dawn",
  rise_utc: "rise",
  transit_utc: "transit",
  set_utc: "set",
  end_civil_utc: "dusk",
} as const;
type Moment = (typeof MOMENTS)[keyof typeof MOMENTS];

/** The winter of 2024 to 2025, as the dates are printed for. */
const tenHourDays = (latitude: number) => shortDays(dayHoursOf(latitude), dayOrThrow(2024, 7, 1));

const dateOf = (row: Row) => isoDay(row.date ?? "");
const isFar = (row: Row) => Math.abs(Number(row.lat)) > 60;
const nameOf = (row: Row) => `${row.location} ${row.date}`;

/** The sun's days that can touch a row's day of UTC: the day itself and its neighbours. */
function sunsOf(row: Row): readonly Sun[] {
  const spot = { latitude: Number(row.lat), longitude: Number(row.lon) };
  return [-1, 0, 1].map((days) => sunOf(plus(dateOf(row), days), spot));
}

function instantsOf(row: Row, moment: Moment): readonly number[] {
  return sunsOf(row).flatMap((sun) => {
    if (moment === "rise") return sun.kind === "rises" ? [sun.rise] : [];
    if (moment === "set") return sun.kind === "rises" ? [sun.set] : [];
    return sun[moment] ?? [];
  });
}

/** Minutes between a printed time and the nearest of ours. */
function offMinutes(row: Row, column: keyof typeof MOMENTS): number {
  const [hours = 0, minutes = 0] = (row[column] ?? "").split(":").map(Number);
  const printed = dateOf(row) * 86_400_000 + (hours * 60 + minutes) * 60_000;
  const off = instantsOf(row, MOMENTS[column]).map((ours) => Math.abs(ours - printed) / 60_000);
  return Math.min(...off);
}

/** Printed times that ours are farther from than so many minutes. */
function missedBy(rows: readonly Row[], minutes: number): readonly string[] {
  return rows.flatMap((row) =>
    (Object.keys(MOMENTS) as (keyof typeof MOMENTS)[])
      .filter((column) => row[column] !== "" && offMinutes(row, column) > minutes)
      .map((column) => `${nameOf(row)} ${column} by ${offMinutes(row, column)}`),
  );
}

describe("the Naval Observatory's sun times", () => {
  const near = ROWS.filter((row) => !isFar(row));
  const far = ROWS.filter(isFar);

  test("are eleven places on ten days, forty rows of them beyond 60°", () => {
    expect([near.length, far.length]).toEqual([70, 40]);
  });

  test("are met to two minutes up to 60°, and to one as it happens", () => {
    expect(missedBy(near, 2)).toEqual([]);
    expect(missedBy(near, 1)).toEqual([]);
  });

  test("are met beyond 60° where there are any", () => {
    expect(missedBy(far, 2)).toEqual([]);
  });

  test("name the same polar days and nights, and no others", () => {
    const kind = ({ note = "" }: Row) =>
      note.includes("above") ? "never sets" : note.includes("below") ? "never rises" : "rises";
    const wrong = ROWS.filter((row) => sunsOf(row)[1]?.kind !== kind(row));
    expect(wrong.map(nameOf)).toEqual([]);
  });

  test("have no twilight where ours has none that day", () => {
    const inDay = (row: Row) => (at: number) => Math.floor(at / 86_400_000) === dateOf(row);
    const extra = ROWS.filter(
      (row) => row.begin_civil_utc === "" && instantsOf(row, "dawn").some(inDay(row)),
    );
    expect(extra.map(nameOf)).toEqual([]);
  });

  test("give the same length of day, to the four minutes that two days in one row may cost", () => {
    const wrong = ROWS.filter((row) => row.daylength_min !== "").filter((row) => {
      const hours = dayHours(dateOf(row), Number(row.lat));
      return Math.abs(hours * 60 - Number(row.daylength_min)) > (isFar(row) ? 10 : 4);
    });
    expect(wrong.map(nameOf)).toEqual([]);
  });
});

type Means = { readonly lat: number; readonly months: readonly number[] };
type DayLength = {
  readonly usno_los_angeles_monthly_mean_daylight: Means;
  readonly mean_daylight_20N: Means;
  readonly ten_hour_rule: {
    readonly rule: string;
    readonly first_and_last_day_below_10h: Readonly<Record<string, readonly string[] | string>>;
    readonly latitude_limit: { readonly shortest_day_is_10h_at_lat: number };
  };
};

const LENGTHS = yamlOf<DayLength>("day-length.yaml");

function meanHours(year: number, month: number, latitude: number): number {
  const days: Day[] = [];
  for (
    let day = dayOrThrow(year, month, 1);
    dayOf(year, month, days.length + 1);
    day = plus(day, 1)
  )
    days.push(day);
  return days.reduce((sum, day) => sum + dayHours(day, latitude), 0) / days.length;
}

describe("the lengths of days", () => {
  test("at 34 N are the Naval Observatory's monthly means to 0.02 h, halfway between leap years", () => {
    const { lat, months } = LENGTHS.usno_los_angeles_monthly_mean_daylight;
    expect(months).toHaveLength(12);
    const off = months.map((hours, m) => Math.abs(meanHours(2010, m + 1, lat) - hours));
    expect(Math.max(...off)).toBeLessThanOrEqual(0.02);
  });

  test("below ten hours run between the printed dates, a day either way", () => {
    expect(LENGTHS.ten_hour_rule.rule).toContain("below 10 h");
    const dates = LENGTHS.ten_hour_rule.first_and_last_day_below_10h;
    const places = Object.entries(dates).filter(([name]) => name.startsWith("lat"));
    expect(places).toHaveLength(4);
    for (const [name, printed] of places) {
      const ours = tenHourDays(Number(/^lat(\d+)/.exec(name)?.[1]));
      if (!ours || typeof printed === "string") throw new Error(name);
      const [first = "", last = ""] = printed;
      expect(Math.abs(ours.first - isoDay(first)), `${name} ${isoOf(ours.first)}`).toBeLessThan(2);
      expect(Math.abs(ours.last - isoDay(last)), `${name} ${isoOf(ours.last)}`).toBeLessThan(2);
    }
  });

  test("first fall below ten hours at latitude 32.7", () => {
    const limit = LENGTHS.ten_hour_rule.latitude_limit.shortest_day_is_10h_at_lat;
    expect(tenHourDays(limit - 0.1)).toBeNull();
    expect(tenHourDays(limit + 0.1)).not.toBeNull();
  });
});
