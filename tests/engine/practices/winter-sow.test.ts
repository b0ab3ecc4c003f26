import { describe, expect, test } from "vitest";
import { WINTER_SOW } from "../../../src/engine/practices/winter-sow.ts";
import { isoDay } from "../../gardens.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";

const placed = toldWith(["calendula: 6 plants, winter-sown"]);

describe("winter sowing", () => {
  test("has one name in both its passes", () => {
    expect(Object.keys(WINTER_SOW.tasks)).toEqual(["start", "rest"]);
    expect(new Set(placed.map(({ task }) => task.practice))).toContain("winter-sow");
  });

  test("is nine weeks before the usual last frost, in boxes that drain and are never sealed", () => {
    const sow = ending(placed, "/winter-sow/1");
    expect(sow.task.window.due).toBe(isoDay("2027-03-04"));
    expect(wordsOf(sow)).toMatch(
      /holds? below|holes below to drain and above for air, never sealed/,
    );
  });

  test("is on the gardener's own day, and says so", () => {
    const own = ending(toldWith(["calendula: 6 plants, winter-sown, sow 20 Feb"]), "/winter-sow/1");
    expect(own.task.window.due).toBe(isoDay("2027-02-20"));
    expect(wordsOf(own)).toContain("You asked for this day.");
  });

  test("tells the lids on the first usually mild day, between sowing and setting out", () => {
    const lids = ending(placed, "/winter-sow/lids");
    expect(lids.day).toBeGreaterThan(ending(placed, "/winter-sow/1").day);
    expect(lids.task.rhythm).toBe("daily");
  });

  test("is set out four weeks after it is up, and not the day its lids are minded", () => {
    const lids = ending(placed, "/winter-sow/lids");
    expect(ending(placed, "/set-out/1").day - lids.day).toBeGreaterThan(14);
    const fixed = ending(
      toldWith(["calendula: 6 plants, winter-sown, set out 20 Apr"]),
      "/set-out/1",
    );
    expect(fixed.day).toBe(isoDay("2027-04-20"));
  });

  test("leads to setting out without any ladder", () => {
    expect(ending(placed, "/set-out/1").day).toBeGreaterThan(isoDay("2027-04-01"));
    expect(placed.filter(({ task }) => task.practice === "harden off")).toEqual([]);
  });
});
