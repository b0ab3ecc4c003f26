import { describe, expect, test } from "vitest";
import { afterWinter } from "../../../src/engine/growth/winter.ts";
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

  test("counts from the equinox in a place without frost, south of the equator from September's", () => {
    const site = { ...planOf(QUARRY).site, lastFrost: null };
    const warm = growingOf(QUARRY, "garlic", { plan: { site } });
    const ripe = afterWinter(warm, isoDay("2027-10-27"), [10, 30]);
    expect(daysOf(ripe)).toBe("03-29 04-08 04-18");
    expect("basis" in ripe && ripe.basis).toEqual(["time of year"]);
  });
});
