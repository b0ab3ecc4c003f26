import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { gapsIn } from "../../../src/garden/station/gaps.ts";
import { lowsFrom, mildBut } from "../../engine/climate/series.ts";
import { isoDay } from "../../gardens.ts";

const said = (series: Parameters<typeof gapsIn>[0]) => {
  const { days, longest } = gapsIn(series);
  return [days, longest && `${longest.days} from ${isoOf(longest.from)}`];
};

describe("what is missing in a record", () => {
  test("is nothing in a complete one, and in an empty one", () => {
    expect(said(lowsFrom("2020-01-01", "2020-12-31", () => 1))).toEqual([0, null]);
    expect(said([])).toEqual([0, null]);
  });

  test("is days without a row and days without a low, the longest run by its first day", () => {
    const holes = { "2020-03-01": null, "2020-03-02": null, "2020-12-31": null };
    const series = lowsFrom("2020-01-01", "2020-12-31", mildBut(holes));
    expect(said(series)).toEqual([3, "2 from 2020-03-01"]);
    const without = series.filter(
      ({ day }) => day < isoDay("2020-05-01") || day > isoDay("2020-05-10"),
    );
    expect(said(without)).toEqual([13, "10 from 2020-05-01"]);
  });
});
