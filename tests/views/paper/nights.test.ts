import { expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { measuredNightsOf } from "../../../src/views/paper/nights.ts";
import { isoDay, planOf } from "../../gardens.ts";
import { factsOf } from "./paper.ts";
import { LIVED } from "./paper-year.ts";

const nights = (on: string) => measuredNightsOf(planOf(LIVED), factsOf(LIVED), isoDay(on));

test("frosts are the lows at or below freezing, the last of spring and the first of autumn", () => {
  const { lows, soils, lastFrost, firstFrost } = nights("2027-11-15");
  expect(lows.map(({ day }) => isoOf(day))).toEqual(["2027-05-12", "2027-05-22", "2027-09-30"]);
  expect(soils.map(({ bed }) => bed)).toEqual(["south-bed"]);
  expect([lastFrost, firstFrost]).toEqual([isoDay("2027-05-22"), isoDay("2027-09-30")]);
});

test("what comes after today is not told yet", () => {
  const { lows, firstFrost } = nights("2027-05-22");
  expect([lows.length, firstFrost]).toEqual([2, null]);
});
