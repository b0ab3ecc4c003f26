import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { afterWinter, nextAnniversary } from "../../../src/engine/growth/winter.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { daysOf, growingOf } from "./growing.ts";

describe("what stands the winter", () => {
  const garlic = growingOf(QUARRY, "garlic");

  test("counts from the usual last frost of the spring after its planting", () => {
    expect(daysOf(afterWinter(garlic, isoDay("2027-10-27"), [10, 30]))).toBe("05-15 05-25 06-04");
  });

  test("counts from this spring where it went in before it", () => {
    const { usual } = planOf(QUARRY).site.lastFrost ?? { usual: null };
    const ripe = afterWinter(garlic, isoDay("2027-02-10"), [0, 0]);
    expect("usual" in ripe && ripe.usual).toBe(usual);
  });

  test("hangs on the last frost", () => {
    const ripe = afterWinter(garlic, isoDay("2027-10-27"), [10, 30]);
    expect("basis" in ripe && ripe.basis).toEqual(["last frost"]);
  });

  test("has nothing to count from in a place without frost", () => {
    const site = { ...planOf(QUARRY).site, lastFrost: null };
    const warm = growingOf(QUARRY, "garlic", { plan: { site } });
    expect(daysOf(afterWinter(warm, isoDay("2027-10-27"), [10, 30]))).toBe(
      "there is no last frost to count from",
    );
  });
});

describe("the same day of a later year", () => {
  const next = (day: string, from: string) => isoOf(nextAnniversary(isoDay(day), isoDay(from)));

  test("is that year's own where it is still to come", () => {
    expect(next("2027-05-06", "2027-03-01")).toBe("2027-05-06");
  });

  test("is a year on from the day itself", () => {
    expect(next("2027-05-06", "2027-05-06")).toBe("2028-05-05");
  });

  test("is the spring after an autumn", () => {
    expect(next("2027-05-06", "2027-10-27")).toBe("2028-05-05");
  });

  test("reaches back where the day lies years ahead", () => {
    expect(next("2027-05-06", "2025-10-14")).toBe("2026-05-06");
  });
});
