import { expect, test } from "vitest";
import { degreesOf, type Field, roundDegrees, yOf } from "../../src/pictures/degrees.ts";
import { sheetOf } from "../../src/pictures/sheet.ts";
import { on } from "./drawn.ts";

const FIELD: Field = {
  scale: { from: on("2027-04-01"), to: on("2027-11-30"), leftPx: 16, rightPx: 374 },
  topPx: 100,
  lowPx: 300,
  leastC: 0,
  mostC: 20,
};

test("warmer stands higher, and nothing leaves the field", () => {
  expect([0, 10, 20, 30, -5].map((tempC) => yOf(FIELD, tempC))).toEqual([300, 200, 100, 100, 300]);
});

test("round degrees are those of the household", () => {
  expect(roundDegrees("metric", FIELD)).toEqual([0, 5, 10, 15, 20]);
  expect(roundDegrees("us", FIELD).map((tempC) => Math.round(tempC * 1.8 + 32))).toEqual([
    40, 50, 60,
  ]);
});

test("their labels may stand left or right, at their own height", () => {
  const [, five] = degreesOf("metric", FIELD, sheetOf("phone"));
  expect(five?.lines[0]?.[0]?.text).toBe("5 °C");
  expect(five?.places.map(([spot]) => [spot?.x, spot?.from])).toEqual([
    [16, "start"],
    [374, "end"],
  ]);
});
