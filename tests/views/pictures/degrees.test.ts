import { expect, test } from "vitest";
import {
  axisPx,
  degreeLabels,
  readableRange,
  roundDegrees,
  type TemperatureField,
  yOf,
} from "../../../src/views/pictures/degrees.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { labelsOf, on } from "./drawn.ts";
import { parse } from "./xml.ts";

const FIELD: TemperatureField = {
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

test("all of them stand left of the field at their own height, in the room kept for them", () => {
  const sheet = sheetOf("phone");
  const labels = labelsOf(parse(`<g>${degreeLabels("metric", FIELD, sheet).join("")}</g>`));
  expect(labels.map(({ text }) => text)).toEqual(["0 °C", "5 °C", "10 °C", "15 °C", "20 °C"]);
  labels.forEach(({ box }, i) => {
    expect(box.x + box.widthPx).toBeLessThan(FIELD.scale.leftPx);
    expect(box.x).toBeGreaterThanOrEqual(FIELD.scale.leftPx - axisPx("metric", FIELD, sheet));
    expect(Math.abs(box.y + box.heightPx / 2 - yOf(FIELD, 5 * i))).toBeLessThan(3);
  });
});

test("an axis has two round degrees at the least, however little the soil changes", () => {
  const narrow = readableRange("us", { leastC: 22, mostC: 26 });
  expect(roundDegrees("us", { leastC: 22, mostC: 26 }).length).toBeLessThan(2);
  expect(roundDegrees("us", narrow).length).toBe(2);
  expect(narrow.leastC).toBeLessThan(22);
  expect(readableRange("metric", FIELD)).toEqual({ leastC: 0, mostC: 20 });
});
