import { expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { anchorOf } from "../../../src/engine/growth/sowing-context.ts";
import { QUARRY } from "../../gardens.ts";
import { growingOf } from "./growing.ts";

test("a sowing's own anchor is found by its act", () => {
  const growing = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } });
  const found = anchorOf(growing, "start");
  expect(found && isoOf(found.day)).toBe("2027-05-03");
});

test("an act that has not been is null", () => {
  expect(anchorOf(growingOf(QUARRY, "carrot"), "start")).toBeNull();
});

test("the first sowing's anchor is not the second's", () => {
  const growing = growingOf(QUARRY, "lettuce", { acts: { start: "2027-05-03" } });
  expect(anchorOf({ ...growing, sowing: 2 }, "start")).toBeNull();
});
