import { describe, expect, test } from "vitest";
import {
  fileUnitFrom,
  inC,
  inMm,
  unitOfHead,
  unitOfHighs,
} from "../../../src/garden/station/units.ts";

describe("the unit of a station's file", () => {
  test.each([
    ["°F", "°F"],
    ["f", "°F"],
    ["Celsius", "°C"],
    ["tenths", "tenths"],
    ["kelvin", null],
  ])("said as %s is %s", (word, unit) => {
    expect(fileUnitFrom(word)).toBe(unit);
  });

  test("may be in the column's name", () => {
    expect(unitOfHead("Max Temp (°C)")).toBe("°C");
    expect(unitOfHead("high [F]")).toBe("°F");
    expect(unitOfHead("TMAX")).toBeNull();
    expect(unitOfHead("high (daily)")).toBeNull();
  });

  test.each([
    [[12, 38.2], "°C"],
    [[12, 60], "°C"],
    [[12, 61], "°F"],
    [[12, 140], "°F"],
    [[12, 141], "tenths"],
    [[], "°C"],
  ])("is told by the highs %j: %s", (highs, unit) => {
    expect(unitOfHighs(highs)).toBe(unit);
  });

  test("turns degrees into °C and rain into mm", () => {
    expect([inC(50, "°F"), inC(10, "°C"), inC(-22, "tenths")]).toEqual([10, 10, -2.2]);
    expect([inMm(1, "°F"), inMm(1, "°C"), inMm(25, "tenths")]).toEqual([25.4, 1, 2.5]);
  });
});
