import { describe, expect, test } from "vitest";
import { partsOf } from "../../../src/base/days/day.ts";
import { monthlyNormalsOf } from "../../../src/garden/station/months.ts";
import { likelySpreadK } from "../../../src/garden/station/spread.ts";
import { lowsFrom } from "../../engine/climate/series.ts";
import { isoDay } from "../../gardens.ts";

const monthly = (from: string, to: string) => lowsFrom(from, to, (day) => partsOf(day).month);

describe("the months of a record", () => {
  test("are means of lows and of highs, January first", () => {
    const { lowC, highC, leftOut } = monthlyNormalsOf(monthly("2020-01-01", "2021-12-31"));
    expect(lowC).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    expect(highC[0]).toBe(11);
    expect(leftOut).toBe(0);
  });

  test("count each year once, however many of its days are there", () => {
    const series = lowsFrom("2020-01-01", "2021-12-31", (day) => {
      const { year, date } = partsOf(day);
      return year === 2020 ? 0 : date > 26 ? null : 10;
    });
    expect(monthlyNormalsOf(series).lowC[0]).toBe(5);
  });

  test("leave out and count a month with under four days in five", () => {
    const holes = (last: number) =>
      lowsFrom("2020-01-01", "2021-12-31", (day) => {
        const { year, month, date } = partsOf(day);
        return year === 2020 && month === 4 && date > last ? null : year - 2020;
      });
    expect(monthlyNormalsOf(holes(24))).toMatchObject({ leftOut: 0 });
    expect(monthlyNormalsOf(holes(24)).lowC[3]).toBe(0.5);
    expect(monthlyNormalsOf(holes(23))).toMatchObject({ leftOut: 1 });
    expect(monthlyNormalsOf(holes(23)).lowC[3]).toBe(1);
  });

  test("are null where no year has one whole", () => {
    expect(monthlyNormalsOf(monthly("2020-03-01", "2020-12-31")).lowC.slice(0, 3)).toEqual([
      null,
      null,
      3,
    ]);
  });

  test("spread by the deviation of n - 1 from three years on, drawn towards the usual one", () => {
    const yearly = (to: string) =>
      lowsFrom("2020-01-01", to, (day) => [0, 1, 5][partsOf(day).year - 2020] ?? 0);
    expect(monthlyNormalsOf(yearly("2021-12-31")).spreadK).toBeNull();
    const { spreadK } = monthlyNormalsOf(yearly("2022-12-31"));
    expect(spreadK).toHaveLength(12);
    expect(spreadK?.[6]).toBeCloseTo(likelySpreadK(Math.sqrt(7), 3), 9);
  });

  test("have the rain of a whole month, missing days as wet as the others", () => {
    const wet = monthly("2020-01-01", "2020-12-31").map((daily) => ({
      ...daily,
      rainMm: daily.day === isoDay("2020-01-05") ? null : 2,
    }));
    expect(monthlyNormalsOf(wet).rainMm?.slice(0, 2)).toEqual([62, 58]);
    expect(monthlyNormalsOf(monthly("2020-01-01", "2020-12-31")).rainMm).toBeNull();
  });
});
