import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { degreesC } from "../../../src/base/quantities/quantity.ts";
import { growthEndOf, lastHarvest } from "../../../src/engine/growth/ending.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { growingOf } from "./growing.ts";

const beet = growingOf(QUARRY, "beet");
const tomato = growingOf(QUARRY, "tomato");

/** The lane without frost, and beds of it under glass, heated or not. */
const mild: SowingContext = {
  ...beet,
  plan: { ...beet.plan, site: { ...planOf(QUARRY).site, firstFrost: null } },
};
const underGlass = (context: SowingContext, keptAboveC: number | null): SowingContext => {
  const keptAbove = keptAboveC === null ? null : degreesC(keptAboveC);
  const bed = context.bed && { ...context.bed, kind: "greenhouse" as const, keptAbove };
  return { ...context, bed, climate: context.climate.at(bed) };
};
const hot = underGlass(tomato, 10);

describe("the last day worth a first harvest", () => {
  const last = (growing: SowingContext) => {
    const day = lastHarvest(growing, isoDay("2027-05-21"));
    return day && isoOf(day);
  };

  test("is the first frost for what it kills", () => {
    expect(last(tomato)).toBe("2027-10-02");
  });

  test("is two weeks after the killing frost for the rest", () => {
    expect(last(beet)).toBe("2027-10-30");
  });

  test("is the killing frost for what is dried to keep", () => {
    expect(last(growingOf(QUARRY, "potato"))).toBe("2027-10-16");
  });

  test("is none where nothing freezes", () => {
    expect(last(mild)).toBeNull();
  });

  test("is under glass the last day of ten hours for tender crops, or the frost that gets in", () => {
    expect(last(hot)).toBe("2027-11-02");
    expect(last(underGlass(tomato, null))).toBe("2027-10-16");
    const { dayHours } = hot.climate;
    expect(dayHours?.(isoDay("2027-11-02"))).toBeGreaterThanOrEqual(10);
    expect(dayHours?.(isoDay("2027-11-03"))).toBeLessThan(10);
  });

  test("is none under glass for what stands the winter there", () => {
    expect(last(underGlass(beet, null))).toBeNull();
  });

  test("is under glass next autumn's for what is sown in short days", () => {
    expect(lastHarvest(hot, isoDay("2027-12-15"))).toBe(isoDay("2028-11-02"));
  });

  test("is none under glass where no day is so short, or no latitude is known", () => {
    const at = (dayHours: SowingContext["climate"]["dayHours"]) =>
      lastHarvest({ ...hot, climate: { ...hot.climate, dayHours } }, isoDay("2027-05-21"));
    expect(at(() => 12)).toBeNull();
    expect(at(null)).toBeNull();
  });
});

describe("the day that ends all growing", () => {
  const ends = (growing: SowingContext) => {
    const day = growthEndOf(growing, isoDay("2027-05-21"));
    return day && isoOf(day);
  };

  test("is the killing frost for what frost kills", () => {
    expect(ends(tomato)).toBe("2027-10-16");
  });

  test("is the killing frost for what is dried to keep: their tops are gone", () => {
    expect(ends(growingOf(QUARRY, "potato"))).toBe("2027-10-16");
  });

  test("is the middle of winter for the rest", () => {
    expect(ends(beet)).toBe("2028-01-17");
  });

  test("is none where nothing freezes, and for hardy crops under glass, which grow on in spring", () => {
    expect(ends(hot)).toBeNull();
    expect(ends(underGlass(beet, null))).toBeNull();
    expect(ends(underGlass(tomato, null))).toBe("2027-10-30");
  });
});
