import { expect, test } from "vitest";
import {
  bandGradient,
  chanceOfFrost,
  warmthShown,
} from "../../../src/views/pictures/band-gradients.ts";
import { BAND_OPACITY } from "../../../src/views/pictures/palette.ts";
import { planOf, QUARRY } from "../../gardens.ts";
import { GARDENS, on, sketchOf } from "./drawn.ts";
import { parse, under } from "./xml.ts";

const drawn = sketchOf(QUARRY);
const { plan } = drawn;
const SCALE = { from: on("2027-04-01"), to: on("2027-11-30"), leftPx: 16, rightPx: 374 };

test("the chance of frost is one half on both usual dates, next to none in July, none where there is no frost", () => {
  expect(chanceOfFrost(plan, on("2027-05-06"))).toBeCloseTo(0.5, 2);
  expect(chanceOfFrost(plan, on("2027-10-02"))).toBeCloseTo(0.5, 2);
  expect(chanceOfFrost(plan, on("2027-07-20"))).toBeLessThan(0.001);
  expect(chanceOfFrost(planOf(GARDENS["no frost"] ?? ""), on("2027-01-01"))).toBe(0);
});

test("warmth is shown from nothing in frozen ground towards all of it in summer, more under film", () => {
  const [open, film] = [null, plan.beds.find((bed) => bed.warmed) ?? null].map((bed) =>
    warmthShown(drawn, bed),
  );
  expect(open?.(on("2027-02-01"))).toBe(0);
  expect(open?.(on("2027-07-25"))).toBeGreaterThan(0.8);
  expect(film?.(on("2027-06-01"))).toBeGreaterThan(open?.(on("2027-06-01")) ?? 1);
});

test("a wash is as strong as the share of its strongest, and has no stops that change nothing", () => {
  const stops = (share: number) =>
    under(parse(bandGradient("it", "frost", { scale: SCALE, share: () => share })), "stop").map(
      ({ attributes }) => attributes["stop-opacity"],
    );
  expect(stops(1)).toEqual([BAND_OPACITY.frost.toFixed(2), BAND_OPACITY.frost.toFixed(2)]);
  expect(stops(0)).toEqual(["0.00", "0.00"]);
});
