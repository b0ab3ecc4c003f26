import { expect, test } from "vitest";
import { PASSES } from "../../../src/engine/practices/practice.ts";

test("the passes run from what starts a clock, by what goes out, to the rest", () => {
  expect(PASSES).toEqual(["start", "set out", "rest"]);
});
