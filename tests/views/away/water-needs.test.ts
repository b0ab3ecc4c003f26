import { describe, expect, test } from "vitest";
import { seasonFor } from "../../../src/engine/year.ts";
import { awayWaterNeedsIn } from "../../../src/views/away/water-needs.ts";
import { isoDay } from "../../gardens.ts";
import { awayOf, LUSH, withAway } from "./given.ts";

const { plan, year } = awayOf(withAway(LUSH, "everybody, 1 to 7 Aug"));
const weeks = seasonFor(year, plan).wateringWeeks;
const span = (from: string, to: string) => ({
  from: isoDay(`2027-${from}`),
  to: isoDay(`2027-${to}`),
});

describe("what beds want in some days", () => {
  test("is their need of the week", () => {
    const week = weeks.find(({ monday }) => monday === isoDay("2027-08-02"));
    const south = week?.beds.find(({ bed }) => bed === "south-bed");
    expect(south?.litres).toBeGreaterThan(0);
    const need = awayWaterNeedsIn(weeks, span("08-02", "08-08")).find(
      ({ bed }) => bed === "south-bed",
    );
    expect(need).toEqual({
      kind: "water",
      bed: "south-bed",
      litresAWeek: south?.litres,
      runs: null,
    });
  });

  test("is that of the driest week they touch", () => {
    const litres = (from: string, to: string) =>
      awayWaterNeedsIn(weeks, span(from, to)).find(({ bed }) => bed === "south-bed")?.litresAWeek ??
      0;
    const [first, second] = [litres("08-02", "08-02"), litres("09-13", "09-13")];
    expect(first).not.toBe(second);
    expect(litres("08-02", "09-13")).toBeGreaterThanOrEqual(Math.max(first, second));
  });

  test("is given by drip lines where there are some, in minutes", () => {
    const root = awayWaterNeedsIn(weeks, span("07-05", "07-08")).find(
      ({ bed }) => bed === "root-bed",
    );
    expect((root?.runs?.minutes ?? 0) % 10).toBe(0);
    expect(root?.runs?.times).toBeGreaterThan(1);
  });

  test("is nothing in winter", () => {
    expect(awayWaterNeedsIn(weeks, span("01-02", "01-09"))).toEqual([]);
  });
});
