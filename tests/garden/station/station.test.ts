import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { samples } from "../../depth.ts";
import { dailySummaries, plainFile, readAs, stationOf, wrongsOf } from "./files.ts";

const withRow = (row: string) => `${plainFile()}${row}\n`;

describe("a station's file", () => {
  test("of a date, a low, a high and rain gives its days in order", () => {
    const { days, unit, unitBy, columnsRead: read, name, latitude } = stationOf(plainFile());
    expect(days).toHaveLength(731);
    expect(days[0]).toMatchObject({ lowC: -6, highC: 5, rainMm: 1 });
    expect([unit, unitBy, name, latitude]).toEqual(["°C", "values", null, null]);
    expect(read).toEqual({ low: "low", high: "high", rain: "rain" });
  });

  test("of NOAA's daily summaries gives its name, its latitude and °F, whatever other columns there are", () => {
    const station = stationOf(dailySummaries());
    expect([station.name, station.latitude, station.unit]).toEqual([
      "STONY POINT, NW US",
      46.6,
      "°F",
    ]);
    expect(station.days[0]).toMatchObject({ highC: null, rainMm: 2.54 });
    expect(station.days[1]?.highC).toBeCloseTo(16.11, 2);
  });

  test("of Canada's daily data gives its days by Date/Time, not by its column of days of the month", () => {
    const [, ...rows] = plainFile().trim().split("\n");
    const head =
      "Longitude (x),Latitude (y),Station Name,Day,Max Temp (°C),Max Temp Flag,Min Temp (°C),Total Precip (mm),Date/Time";
    const canada = rows.map((row) => {
      const [date, low, high, rain] = row.split(",");
      return `-99.9,49.9,BRANDON A,${date?.slice(8)},${high},,${low},${rain},${date}`;
    });
    const { name, latitude, unit, unitBy, days } = stationOf([head, ...canada].join("\n"));
    expect([name, latitude, unit, unitBy, days.length]).toEqual([
      "BRANDON A",
      49.9,
      "°C",
      "head",
      731,
    ]);
    expect(days[0]).toMatchObject({ lowC: -6, highC: 5 });
  });

  test("is in the given unit, else in its column's, else in the one its highs must be in", () => {
    const fahrenheit = plainFile((celsius) => celsius * 1.8 + 32);
    expect(stationOf(fahrenheit).days[0]?.lowC).toBeCloseTo(-6, 9);
    expect(stationOf(plainFile((celsius) => celsius * 10)).days[0]).toMatchObject({
      lowC: -6,
      rainMm: 0.1,
    });
    expect(stationOf(plainFile(), { unit: "°F" })).toMatchObject({ unit: "°F", unitBy: "said" });
    const headed = stationOf(plainFile().replace("low,high", "low (°F),high (°F)"));
    expect([headed.unit, headed.unitBy]).toEqual(["°F", "head"]);
  });

  test("is called by the value its rows were chosen by", () => {
    const [head = "", ...rows] = plainFile().trim().split("\n");
    const two = [`place,${head}`, ...rows.flatMap((row) => [`Mill,${row}`, `Quay,${row}`])].join(
      "\n",
    );
    const { name, days } = stationOf(two, { where: [{ column: "place", value: "Quay" }] });
    expect([name, days.length]).toEqual(["Quay", 731]);
    expect(wrongsOf(two)).toEqual(["several-stations@1:1"]);
  });

  test.each([
    ["no-day", "30 Feb 2022,1,2,0", "no-day@733:1"],
    ["a word for a number", "2022-01-01,cold,2,0", "not-a-number@733:12"],
    ["a low above its high", "2022-01-01,9,2,0", "low-above-high@733:12"],
    ["a low that can't be", "2022-01-01,-99,2,0", "no-such-air@733:12"],
    ["rain below nothing", "2022-01-01,1,2,-3", "no-such-rain@733:16"],
    ["a day twice with other figures", "2020-01-01,1,2,0", "day-twice@733:1"],
  ])("tells %s at its cell", (_, row, told) => {
    expect(wrongsOf(withRow(row))).toEqual([told]);
    expect(readAs(withRow(row)).station).toBeNull();
  });

  test("has a problem where it is under a year", () => {
    const short = plainFile().split("\n");
    expect(wrongsOf(short.slice(0, 365).join("\n"))).toEqual(["under-a-year@1:1"]);
    expect(wrongsOf(short.slice(0, 366).join("\n"))).toEqual([]);
  });

  test("reports twenty rows and how many more are wrong", () => {
    const wrong = plainFile().replaceAll(/^2020-0[12]-/gm, "2020-13-");
    const told = readAs(wrong).problems;
    expect(told).toHaveLength(21);
    expect(told.at(-1)?.is).toBe("40 more rows are wrong like these");
  });

  test("is read or has problems, and never throws, whatever is in it", () => {
    const pieces = fc.constantFrom(
      ...'\n,;\t"#- 0123456789.TM',
      "\r\n",
      "date",
      "low",
      "high",
      "2020-01-01",
    );
    const text = fc.array(pieces, { maxLength: 200 }).map((all) => all.join(""));
    const mangled = fc.tuple(fc.nat(700), fc.nat(40), text).map(([at, cut, piece]) => {
      const file = plainFile();
      return file.slice(0, at) + piece + file.slice(at + cut);
    });
    fc.assert(
      fc.property(fc.oneof(text, fc.string(), mangled), (any) => {
        const { station, problems } = readAs(any);
        return (station === null) === problems.length > 0;
      }),
      { numRuns: samples(300, 100) },
    );
  });

  test("of a hundred years is read, every day of it", () => {
    const rows = plainFile().trim().split("\n").slice(1, 366);
    const years = Array.from({ length: 100 }, (_, y) =>
      rows.map((row) => row.replace("2020", `${1901 + y}`)),
    );
    const long = `date,low,high,rain\n${years
      .flat()
      .filter((row) => !row.includes("-02-29"))
      .join("\n")}`;
    const { days } = stationOf(long);
    expect(isoOf(days[0]?.day ?? (0 as never))).toBe("1901-01-01");
    expect(days).toHaveLength(36_400);
  });
});
