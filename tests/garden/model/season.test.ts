import { describe, expect, it } from "vitest";
import { dayOrThrow, isoOf } from "../../../src/base/days/day.ts";
import { isSouthern, plusYears, seasonOf } from "../../../src/garden/model/season.ts";
import { least, PLAN, planOf } from "../plan/canonical.ts";

function seasonIn(place: string, year = 2027) {
  const plan = planOf(least("", place).replace("2027", String(year)));
  const { from, to } = seasonOf(plan);
  return [isoOf(from), isoOf(to)];
}

const SOUTH = "latitude: -42.9\n  last frost: about 5 Oct\n  first frost: about 10 May";
const NORTH = "last frost: about 6 May\n  first frost: about 2 Oct";
const MIDWINTER = "latitude: 34\n  last frost: 20 Dec\n  first frost: 2 Jan";
const NONE = "last frost: none\n  first frost: none";

describe("a plan's season", () => {
  it("runs in the north from the middle of one winter to the middle of the next", () => {
    expect(seasonIn(NORTH)).toEqual(["2027-01-18", "2028-01-17"]);
  });

  it("runs in the south over the turn of the year, around the spring its last frost falls in", () => {
    expect(seasonIn(SOUTH)).toEqual(["2027-07-23", "2028-07-22"]);
  });

  it("puts October garlic in its own season in the north and in the one before in the south", () => {
    const garlic = dayOrThrow(2027, 10, 14);
    expect(garlic <= seasonOf(PLAN).to && garlic >= seasonOf(PLAN).from).toBe(true);
  });

  it("is the calendar year without frost, and July to June in the south", () => {
    expect(seasonIn(NONE)).toEqual(["2027-01-01", "2027-12-31"]);
    expect(seasonIn(`latitude: 18\n  ${NONE}`)).toEqual(["2027-01-01", "2027-12-31"]);
    expect(seasonIn(`latitude: -18\n  ${NONE}`)).toEqual(["2027-07-01", "2028-06-30"]);
  });

  it("is a year from winter to winter where frost comes about New Year only", () => {
    const about = (latitude: number, last: string, first: string) =>
      seasonIn(`latitude: ${latitude}\n  last frost: ${last}\n  first frost: ${first}`);
    expect(about(34, "20 Dec", "5 Dec")).toEqual(["2026-12-12", "2027-12-11"]);
    expect(about(33.4, "6 Jan", "2 Jan")).toEqual(["2027-01-04", "2028-01-03"]);
    expect(about(37.6, "1 Jan", "31 Dec")).toEqual(["2026-12-31", "2027-12-30"]);
    expect(about(-42.8, "19 Jul", "3 Jul")).toEqual(["2027-07-11", "2028-07-10"]);
  });

  it("follows the one before without gap or overlap, leap years too", () => {
    for (const place of [NORTH, SOUTH, NONE, MIDWINTER])
      for (let year = 2024; year < 2032; year++) {
        const ends = seasonIn(place, year)[1];
        const begins = seasonIn(place, year + 1)[0];
        expect(Date.parse(begins ?? "") - Date.parse(ends ?? "")).toBe(86_400_000);
      }
  });

  it("takes a place for southern only where its latitude is", () => {
    expect(isSouthern({ latitude: -1 })).toBe(true);
    expect(isSouthern({ latitude: 0 })).toBe(false);
    expect(isSouthern({ latitude: null })).toBe(false);
  });

  it("moves a day by whole years, 29 February to the 28th", () => {
    expect(isoOf(plusYears(dayOrThrow(2028, 2, 29), 1))).toBe("2029-02-28");
    expect(isoOf(plusYears(dayOrThrow(2027, 5, 6), -1))).toBe("2026-05-06");
  });
});
