import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import type { DailyRecord } from "../../../src/garden/station/record.ts";
import type { Station } from "../../../src/garden/station/station.ts";
import {
  figuresOf,
  monthsMissing,
  sayYears,
  weatherFile,
} from "../../../src/garden/station/weather-file.ts";
import { lowsFrom, mildBut } from "../../engine/climate/series.ts";

const stationOf = (days: readonly DailyRecord[], more: Partial<Station> = {}): Station => ({
  name: null,
  latitude: null,
  days,
  unit: "°C",
  unitBy: "values",
  columnsRead: { low: "low", high: "high", rain: null },
  ...more,
});
const written = (station: Station, latitude: number | null = null) =>
  weatherFile(station, figuresOf(station, latitude), { name: "s.csv" });
const lineOf = (text: string, key: string) =>
  text.split("\n").find((line) => line.startsWith(`${key}:`)) ?? null;

/** Five years, a frost each spring and autumn, a day later each year. */
const FIVE = lowsFrom("2018-01-01", "2022-12-31", (day) => {
  const [year = 0, month = 0, date = 0] = isoOf(day).split("-").map(Number);
  const frosty = (month === 4 && date === year - 2008) || (month === 10 && date === year - 2008);
  return frosty ? -1 : 8;
});

describe("the weather file of a station", () => {
  test("has the years, the months, and nights in words", () => {
    const text = written(stationOf(FIVE, { name: "Stony Point, NW" }));
    expect(lineOf(text, "station")).toBe("station: Stony Point, NW");
    expect(lineOf(text, "years")).toBe("years: 2018 to 2022");
    expect(lineOf(text, "low")?.split(",")).toHaveLength(12);
    expect(lineOf(text, "last frost")).toBe("last frost: [10 Apr, 12 Apr, 14 Apr]");
    expect(lineOf(text, "first frost")).toBe("first frost: [10 Oct, 12 Oct, 14 Oct]");
    expect(lineOf(text, "last night at 28 °F")).toBe("last night at 28 °F: none");
    expect(lineOf(text, "rain")).toBeNull();
  });

  test("is in the degrees of the station's file, rain in inches with °F", () => {
    const wet = FIVE.map((daily) => ({ ...daily, rainMm: 1 }));
    const inF = written(stationOf(wet, { unit: "°F" }));
    expect(lineOf(inF, "in")).toBe("in: °F");
    expect(lineOf(inF, "low")).toMatch(/^low: \[46\.4, /);
    expect(lineOf(inF, "rain")).toMatch(/^rain: \[1\.2, 1\.1, .* # inches a month$/);
    expect(lineOf(written(stationOf(wet, { unit: "tenths" })), "rain")).toMatch(
      /^rain: \[31, 28, .* # mm/,
    );
  });

  test("rounds nights to the careful side, spring's later and autumn's earlier", () => {
    const four = FIVE.filter(({ day }) => isoOf(day) < "2022");
    const text = written(stationOf(four));
    expect(lineOf(text, "last frost")).toBe("last frost: [10 Apr, 12 Apr, 13 Apr]");
    expect(lineOf(text, "first frost")).toBe("first frost: [10 Oct, 11 Oct, 13 Oct]");
  });

  test("has one date, not three, of two years", () => {
    const two = FIVE.filter(({ day }) => isoOf(day) < "2020");
    expect(lineOf(written(stationOf(two)), "last frost")).toBe("last frost: 11 Apr");
    expect(lineOf(written(stationOf(two)), "spread")).toBeNull();
  });

  test("says none for a place without frost, and for the years that go without", () => {
    const mild = lowsFrom(
      "2015-01-01",
      "2022-12-31",
      mildBut({ "2018-02-03": -1, "2020-01-20": -1 }),
    );
    const text = written(stationOf(mild));
    expect(lineOf(text, "last frost")).toBe("last frost: [none, none, 3 Feb]");
    const none = written(stationOf(lowsFrom("2015-01-01", "2022-12-31", () => 8)));
    expect(lineOf(none, "last frost")).toBe("last frost: none");
    expect(lineOf(none, "first night at 36 °F")).toBe("first night at 36 °F: none");
  });

  test("leaves out nights that no year has", () => {
    const holes = lowsFrom("2020-02-01", "2021-06-30", (day) =>
      isoOf(day).endsWith("5") ? null : 8,
    );
    expect(lineOf(written(stationOf(holes)), "last frost")).toBeNull();
  });

  test("has the nights of the south by latitude", () => {
    expect(lineOf(written(stationOf(FIVE), -33), "last frost")).toBe(
      "last frost: [10 Oct, 12 Oct, 13 Oct]",
    );
    expect(lineOf(written(stationOf(FIVE, { latitude: -33 })), "first frost")).toBe(
      "first frost: [10 Apr, 12 Apr, 14 Apr]",
    );
  });

  test("has the latitude that was given, else the file's own, to a kilometre", () => {
    const station = stationOf(FIVE, { latitude: 47.44467 });
    expect(lineOf(written(station), "latitude")).toBe("latitude: 47.44");
    expect(lineOf(written(station, 46.6), "latitude")).toBe("latitude: 46.6");
    expect(lineOf(written(stationOf(FIVE)), "latitude")).toBeNull();
  });

  test("can be read by a plan, whatever the station is called", () => {
    for (const name of ["Quay", "no: yes # {", "null", "12", '"', "Łąka, górna", "- x", "\n\t"]) {
      const text = written(stationOf(FIVE, { name }));
      const plan =
        "garden: x\nyear: 2027\nplace:\n  clock: UTC\n  latitude: 51\n  weather: w.yaml\n";
      const read = readPlan(
        plan,
        { garden: "x", file: "2027.yaml", beside: { "w.yaml": text } },
        PRACTICES,
      );
      expect(read.problems, name).toEqual([]);
      expect(read.plan?.site.lastFrost && isoOf(read.plan.site.lastFrost.usual)).toBe("2027-04-12");
    }
  });

  test("needs every month, and names those that no year has complete", () => {
    const half = stationOf(lowsFrom("2020-03-01", "2020-11-30", () => 1));
    expect(monthsMissing(figuresOf(half, null).months)).toEqual([
      "January",
      "February",
      "December",
    ]);
    expect(monthsMissing(figuresOf(stationOf(FIVE), null).months)).toEqual([]);
    expect(sayYears(half)).toBe("2020");
  });
});
