import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { frostRecordOf, nightDatesOf } from "../../../src/garden/station/frost-record.ts";
import { lowsFrom, mildBut } from "../../engine/climate/series.ts";

describe("early, usual and late nights", () => {
  const years = (nights: readonly (number | "none" | "left out" | "cut off")[]) =>
    nights.map((night, i) => ({ year: 2000 + i, night }));

  test("are those that 10, 50 and 90 of 100 years have had by then", () => {
    const nine = years([91, 92, 93, 94, 95, 96, 97, 98, 99]);
    expect(nightDatesOf(nine, Number.NEGATIVE_INFINITY)).toEqual({
      early: 91,
      usual: 95,
      late: 99,
      years: 9,
      without: 0,
      leftOut: 0,
      cutOff: 0,
    });
  });

  test("count years without before all others in spring and after them in autumn", () => {
    const some = years([91, "none", 99, 95, "left out"]);
    expect(nightDatesOf(some, Number.NEGATIVE_INFINITY)).toMatchObject({
      early: null,
      usual: 93,
      late: 99,
      years: 4,
      without: 1,
      leftOut: 1,
    });
    expect(nightDatesOf(some, Number.POSITIVE_INFINITY)).toMatchObject({
      early: 91,
      usual: 97,
      late: null,
    });
  });

  test("are none where most years go without, and of no years", () => {
    expect(nightDatesOf(years(["none", "none", 40]), Number.NEGATIVE_INFINITY)).toMatchObject({
      early: null,
      usual: null,
      late: 40,
    });
    expect(nightDatesOf(years(["left out", "cut off"]), 0)).toMatchObject({
      usual: null,
      years: 0,
      leftOut: 1,
      cutOff: 1,
    });
  });
});

describe("the frost record of a station", () => {
  test("has nights of 36 °F farther into summer than those of 32 and 28 °F", () => {
    const record = lowsFrom("2020-01-01", "2022-12-31", (day) => {
      const [month = 0, date = 0] = isoOf(day).slice(5).split("-").map(Number);
      return Math.abs(month + date / 31 - 7.5) * 4 * -1 + 12;
    });
    const { last, first } = frostRecordOf(record, false);
    const lasts = [last[28], last[32], last[36]].map(({ usual }) => usual ?? 0);
    const firsts = [first[36], first[32], first[28]].map(({ usual }) => usual ?? 0);
    expect(lasts).toEqual([...lasts].sort((a, b) => a - b));
    expect(firsts).toEqual([...firsts].sort((a, b) => a - b));
    expect(new Set([...lasts, ...firsts]).size).toBe(6);
  });

  test("has none for a place without frost, years counted", () => {
    const { last } = frostRecordOf(lowsFrom("2018-01-01", "2022-12-31", mildBut({})), false);
    expect(last[32]).toMatchObject({
      early: null,
      usual: null,
      late: null,
      years: 4,
      without: 4,
      leftOut: 0,
      cutOff: 1,
    });
  });
});
