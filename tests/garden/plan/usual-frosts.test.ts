import { describe, expect, it } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { least, planOf, told } from "./canonical.ts";

function usual(latitude: number | null, last: string, first: string): readonly string[] {
  const place = latitude === null ? "" : `latitude: ${latitude}\n  `;
  const { lastFrost, firstFrost } = planOf(
    least("", `${place}last frost: ${last}\n  first frost: ${first}`),
  ).site;
  return [lastFrost, firstFrost].map((dates) => (dates ? isoOf(dates.usual) : "none"));
}

describe("frost dates about New Year", () => {
  // Stations of tests/sources/climate-normals.csv with frost in midwinter only.
  it.each([
    ["Tucson", 32.1, "12 Feb", "4 Dec", "2027-02-12", "2027-12-04"],
    ["San Francisco", 37.6, "1 Jan", "31 Dec", "2027-01-01", "2027-12-31"],
    ["Phoenix", 33.4, "6 Jan", "2 Jan", "2027-01-06", "2028-01-02"],
    ["Hobart", -42.8, "19 Jul", "3 Jul", "2027-07-19", "2028-07-03"],
  ])("of %s lie round the plan's summer", (_, latitude, last, first, ...expected) => {
    expect(usual(latitude, last, first)).toEqual(expected);
    expect(usual(null, last, first)).toEqual(expected);
  });

  it("put a last frost in December into the winter before", () => {
    expect(usual(34, "about 20 Dec", "5 Dec")).toEqual(["2026-12-20", "2027-12-05"]);
    expect(usual(34, "about 20 Dec", "31 Dec")).toEqual(["2026-12-20", "2027-12-31"]);
    expect(usual(34, "about 20 Dec 2026", "2 Jan 2028")).toEqual(["2026-12-20", "2028-01-02"]);
  });

  it("put a last frost of the southern June into the winter before its summer", () => {
    expect(usual(-34, "25 Jun", "20 Jun")).toEqual(["2027-06-25", "2028-06-20"]);
    expect(usual(-38, "10 Jan", "20 Feb")).toEqual(["2028-01-10", "2028-02-20"]);
  });
});

describe("frost dates that no summer lies between", () => {
  it("are refused where the winter is that of the other half of the world", () => {
    expect(told(least("", "latitude: 42\n  last frost: 5 Oct\n  first frost: 10 May"))).toEqual([
      "frosts-crossed@7:16",
    ]);
  });

  it("are taken in the order of the calendar near the equator, which has no winter", () => {
    expect(usual(4, "5 Oct", "10 May")).toEqual(["2027-10-05", "2028-05-10"]);
  });
});
