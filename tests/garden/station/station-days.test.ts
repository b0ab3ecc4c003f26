import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { readStationDays } from "../../../src/garden/station/station-days.ts";
import { tableOf } from "../../../src/garden/station/table.ts";

const COLUMNS = { date: 0, low: 1, high: 2, rain: 3 };
function read(text: string) {
  const table = tableOf(`date,low,high,rain\n${text}`, "s.csv");
  if (!("head" in table)) throw new Error("unread");
  const { lines, problems } = readStationDays(table.rows, COLUMNS);
  return {
    lines: lines.map(({ day, low, high, rain }) => [isoOf(day), low, high, rain]),
    told: problems.map(({ code, at }) => `${code}@${at.line}:${at.column}`),
  };
}

describe("the days of a file's rows", () => {
  test("are dates in figures, year first, with an hour behind them or without", () => {
    const { lines } = read(
      "2020-05-06,1,2,3\n20200507,1,2,3\n2020/05/08,1,2,3\n2020-05-09T00:00,1,2,3",
    );
    expect(lines.map(([day]) => day)).toEqual([
      "2020-05-06",
      "2020-05-07",
      "2020-05-08",
      "2020-05-09",
    ]);
  });

  test("are put in order", () => {
    expect(read("2020-05-07,1,2,3\n2020-05-06,1,2,3").lines.map(([day]) => day)).toEqual([
      "2020-05-06",
      "2020-05-07",
    ]);
  });

  test("have nothing where a station writes that it has nothing, and no rain of a trace", () => {
    const nothing = ["", "NA", "M", "-9999", "-9999.0", "9999.9", "null"];
    for (const cell of nothing)
      expect(read(`2020-05-06,${cell},2,T`).lines).toEqual([["2020-05-06", null, 2, 0]]);
    expect(read("2020-05-06,-3.5,+2").lines).toEqual([["2020-05-06", -3.5, 2, null]]);
  });

  test("are problems at their cell where they are no day or no number", () => {
    expect(
      read("2020-05-06,1,2,3\n2020-02-30,1,2,3\n05/06/2020,1,2,3\n,1,2,3\n2020-05-07,warm,2,3 in")
        .told,
    ).toEqual(["no-day@3:1", "no-day@4:1", "no-day@5:1", "not-a-number@6:12", "not-a-number@6:19"]);
  });

  test("are there once; twice the same is once, with different figures a problem", () => {
    expect(read("2020-05-06,1,2,3\n2020-05-06,1,2,3")).toEqual({
      lines: [["2020-05-06", 1, 2, 3]],
      told: [],
    });
    expect(read("2020-05-06,1,2,3\n2020-05-06,1,9,3").told).toEqual(["day-twice@3:1"]);
  });
});
