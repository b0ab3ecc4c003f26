import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { commonPractice } from "../../../src/crops/figures.ts";
import { naturalEndOf } from "../../../src/engine/growth/bearing.ts";
import { QUARRY } from "../../gardens.ts";
import { growingOf } from "./growing.ts";

const over = (acts: Parameters<typeof growingOf>[2]) => {
  const day = naturalEndOf(growingOf(QUARRY, "tomato", acts));
  return day && isoOf(day);
};
const RIPE = { "set out": "2027-05-28", "first ripe": "2027-08-01" };
const harvest = growingOf(QUARRY, "tomato").crop.harvest;

describe("what is over of itself", () => {
  test("is what has borne for as long as its kind does", () => {
    const crop = { harvest: { ...harvest, bearsDays: commonPractice([14, 21] as const) } };
    expect(over({ acts: RIPE, crop })).toBe("2027-08-22");
  });

  test("is nothing that bears till frost, or that frost may end first", () => {
    expect(over({ acts: RIPE })).toBeNull();
    const crop = { harvest: { ...harvest, bearsDays: commonPractice([30, 60] as const) } };
    expect(over({ acts: RIPE, crop })).toBeNull();
  });

  test("is what is brought in once, when it no longer keeps", () => {
    const crop = { harvest: { ...harvest, kind: "once", holdsDays: commonPractice(5) } } as const;
    expect(over({ acts: RIPE, crop })).toBe("2027-08-06");
  });

  test("is nothing that does not get ready", () => {
    expect(over({ acts: { "set out": "2027-09-20" } })).toBeNull();
    expect(over({})).toBeNull();
  });
});
