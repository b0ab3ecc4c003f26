import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import {
  isReached,
  middle,
  milestoneAfter,
  seenMilestone,
} from "../../../src/engine/growth/milestones.ts";
import { isoDay } from "../../gardens.ts";

const DAY = isoDay("2027-05-06");

describe("the middle of a range", () => {
  test.each([
    [[14, 22], 18],
    [[21, 28], 25],
    [[7, 7], 7],
  ] as const)("of %j is %d", (range, half) => {
    expect(middle(range)).toBe(half);
  });
});

describe("a milestone", () => {
  test("has a day, or none and says why", () => {
    expect(isReached(seenMilestone(DAY))).toBe(true);
    expect(isReached({ none: "it is not in yet" })).toBe(false);
  });

  test("that was seen is that day in every season", () => {
    expect(seenMilestone(DAY)).toEqual({
      early: DAY,
      usual: DAY,
      late: DAY,
      basis: ["seen"],
      seen: true,
    });
  });

  test("of a range of days has its least, middle and most", () => {
    const found = milestoneAfter(DAY, [14, 22], ["age"]);
    const days = isReached(found) && [found.early, found.usual, found.late].map(isoOf);
    expect(days).toEqual(["2027-05-20", "2027-05-24", "2027-05-28"]);
    expect(isReached(found) && [found.basis, found.seen]).toEqual([["age"], false]);
  });
});
