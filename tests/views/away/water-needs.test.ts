import { describe, expect, test } from "vitest";
import { areaM2Of, litresOn } from "../../../src/engine/growth/watering.ts";
import { dryWeeksOf } from "../../../src/engine/practices/weekly-need.ts";
import { awayWaterNeedsIn } from "../../../src/views/away/water-needs.ts";
import { wholeGardenOf } from "../../../src/views/away/whole-garden.ts";
import { isoDay } from "../../gardens.ts";
import { awayOf, LUSH } from "./given.ts";

const { plan, season } = awayOf(LUSH);
const whole = wholeGardenOf(plan, season);
const span = (from: string, to: string) => ({
  from: isoDay(`2027-${from}`),
  to: isoDay(`2027-${to}`),
});

describe("what beds want in some days", () => {
  test("is their need of the week, over their ground", () => {
    const week = dryWeeksOf(whole).find(({ monday }) => monday === isoDay("2027-08-02"));
    const south = week?.needs.find(({ bed }) => bed?.key === "south-bed");
    if (!south?.bed || south.mm === null) throw new Error("no need");
    const thirst = awayWaterNeedsIn(whole, span("08-02", "08-08")).find(
      ({ bed }) => bed === "south-bed",
    );
    expect(thirst?.litresAWeek).toBeCloseTo(litresOn(areaM2Of(south.bed) ?? 0, south.mm), 6);
    expect(thirst?.runs).toBeNull();
  });

  test("is that of the driest week they touch", () => {
    const litres = (from: string, to: string) =>
      awayWaterNeedsIn(whole, span(from, to)).find(({ bed }) => bed === "south-bed")?.litresAWeek ??
      0;
    const [first, second] = [litres("08-02", "08-02"), litres("09-13", "09-13")];
    expect(first).not.toBe(second);
    expect(litres("08-02", "09-13")).toBeGreaterThanOrEqual(Math.max(first, second));
  });

  test("is given by drip lines where there are some, in minutes", () => {
    const root = awayWaterNeedsIn(whole, span("07-05", "07-08")).find(
      ({ bed }) => bed === "root-bed",
    );
    expect((root?.runs?.minutes ?? 0) % 10).toBe(0);
    expect(root?.runs?.times).toBeGreaterThan(1);
  });

  test("is nothing in winter", () => {
    expect(awayWaterNeedsIn(whole, span("01-02", "01-09"))).toEqual([]);
  });
});
