import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { paceOf } from "../../../src/engine/growth/pace.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { always, type Given, growingOf, seenIn } from "./growing.ts";

const SOWN = isoDay("2027-05-03");

/** The pace of beets sown in soil of 50 °F all year, where they take 17 days, seen up after so many. */
function seenAfter(days: number, more: Given = {}): number {
  const anchors = seenIn({
    "2027/beet": { start: "2027-05-03", up: isoOf(plus(SOWN, days)) },
  });
  const plan = { site: always(celsius(50)) };
  return paceOf(growingOf(QUARRY, "beet", { anchors, plan, ...more }));
}

describe("how the rest of a planting's growth is paced", () => {
  test("is as reckoned where it came up on the day reckoned", () => {
    expect(seenAfter(17)).toBeCloseTo(1, 9);
  });

  test("is half as much longer as coming up took longer", () => {
    expect(seenAfter(20)).toBeCloseTo(1 + 3 / 17 / 2, 9);
    expect(seenAfter(15)).toBeCloseTo(1 - 2 / 17 / 2, 9);
  });

  test("is never off by more than a fifth", () => {
    expect(seenAfter(60)).toBe(1.2);
    expect(seenAfter(5)).toBe(0.8);
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 120 }), (days) => {
        const pace = seenAfter(days);
        return pace >= 0.8 && pace <= 1.2;
      }),
    );
  });

  test("is as reckoned where it was not seen up, or not sown that anybody knows", () => {
    expect(seenAfter(0, { anchors: seenIn({ "2027/beet": { start: "2027-05-03" } }) })).toBe(1);
    expect(seenAfter(0, { anchors: seenIn({ "2027/beet": { up: "2027-05-30" } }) })).toBe(1);
  });

  test("is as reckoned where the day up was only placed", () => {
    const acts = { start: "2027-05-03", up: "2027-06-02" };
    expect(seenAfter(0, { anchors: growingOf(QUARRY, "beet", { acts }).anchors })).toBe(1);
  });

  test("is as reckoned for what is raised indoors, and for tubers", () => {
    expect(seenAfter(60, { planting: { start: "seed indoors" } })).toBe(1);
    const anchors = seenIn({ "2027/potato": { start: "2027-05-03", up: "2027-06-20" } });
    expect(paceOf(growingOf(QUARRY, "potato", { anchors }))).toBe(1);
  });
});
