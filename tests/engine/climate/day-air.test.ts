import { expect, test } from "vitest";
import { meanC } from "../../../src/engine/climate/day-air.ts";

test("a day's mean is midway between its low and its high", () => {
  expect(meanC({ lowC: -2, highC: 9 })).toBe(3.5);
});
