import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { greatHeatOf } from "../../../src/engine/growth/heat.ts";
import { QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { always, growingOf } from "./growing.ts";

const MILD = withCrops("mediterranean", ["tomato: 3 plants", "eggplant: 3 plants"]);
const OUT = { acts: { "set out": "2027-04-01" } };

describe("great heat", () => {
  test("comes in spells where usual summers stay under what drops flowers", () => {
    const heat = greatHeatOf(growingOf(MILD, "tomato", OUT));
    expect(heat?.comes).toBe("hot spells");
    expect(heat && isoOf(heat.from)).toMatch(/^2027-07-/);
    expect(heat && isoOf(heat.to)).toMatch(/^2027-(08|09)-/);
    expect(heat && heat.to - heat.sowAgain).toBe(34);
  });

  test("comes every summer where usual days are over it", () => {
    const site = { ...always(24.5, 36), lastFrost: null, firstFrost: null };
    expect(greatHeatOf(growingOf(MILD, "tomato", { ...OUT, plan: { site } }))?.comes).toBe(
      "every summer",
    );
  });

  test("is none in a cool summer, nor for what sets in any heat, nor before it is in its place", () => {
    expect(
      greatHeatOf(growingOf(QUARRY, "tomato", { acts: { "set out": "2027-05-21" } })),
    ).toBeNull();
    expect(greatHeatOf(growingOf(MILD, "eggplant", OUT))).toBeNull();
    expect(greatHeatOf(growingOf(MILD, "tomato"))).toBeNull();
  });
});
