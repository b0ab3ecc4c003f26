import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { seasonPlanOn } from "../../../src/engine/beds/season-plan.ts";
import { seasonOf } from "../../../src/garden/model/season.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);

describe("the plan of a day's season", () => {
  test("is the one written for it", () => {
    expect(seasonPlanOn([PLAN], isoDay("2027-07-01"))).toBe(PLAN);
  });

  test.each([2024, 2026, 2028, 2031])(
    "is the nearest with its frosts in %i where none is",
    (year) => {
      const day = isoDay(`${year}-07-01`);
      const plan = seasonPlanOn([PLAN], day);
      expect(plan.year).toBe(year);
      expect(plan.site.lastFrost && isoOf(plan.site.lastFrost.usual)).toBe(`${year}-05-06`);
      expect(plan.site.firstFrost && isoOf(plan.site.firstFrost.usual)).toBe(`${year}-10-02`);
      expect(plan.plantings).toEqual([]);
      const { from, to } = seasonOf(plan);
      expect(from <= day && day <= to).toBe(true);
    },
  );

  test("has no frost where the place has none", () => {
    const site = { ...PLAN.site, lastFrost: null, firstFrost: null };
    const plan = seasonPlanOn([{ ...PLAN, site }], isoDay("2029-07-01"));
    expect([plan.year, plan.site.lastFrost]).toEqual([2029, null]);
  });
});
