import { describe, expect, test } from "vitest";
import { isoOf } from "../../src/days/day.ts";
import {
  type Milestone,
  middle,
  nextYearly,
  reached,
  ripeMilestone,
  upMilestone,
} from "../../src/growth/milestones.ts";
import { celsius } from "../../src/quantities/quantity.ts";
import { isoDay, normalsOf, QUARRY } from "../gardens.ts";
import { type Given, growingOf } from "./growing.ts";

/** `early usual late` of a milestone, or why it has none. */
function days(milestone: Milestone): string {
  if (!reached(milestone)) return milestone.none;
  const { early, usual, late } = milestone;
  return [early, usual, late].map((day) => isoOf(day).slice(5)).join(" ");
}

const up = (name: string, given: Given) => upMilestone(growingOf(QUARRY, name, given));
const ripe = (name: string, given: Given) => ripeMilestone(growingOf(QUARRY, name, given));
const grounds = (milestone: Milestone) => (reached(milestone) ? milestone.grounds : []);

describe("the middle of a range", () => {
  test.each([
    [[14, 22], 18],
    [[21, 28], 25],
    [[7, 7], 7],
  ] as const)("of %j is %d", (range, half) => {
    expect(middle(range)).toBe(half);
  });
});

describe("when it shows above the soil", () => {
  test("is reckoned through soil that warms, three days or a third either side", () => {
    expect(days(up("carrot", { acts: { start: "2027-05-03" } }))).toBe("05-18 05-24 05-30");
    expect(days(up("lettuce", { acts: { start: "2027-05-03" } }))).toBe("05-10 05-13 05-16");
  });

  test("hangs on what the sowing hung on, the soil and the seed's age", () => {
    expect(grounds(up("carrot", { acts: { start: "2027-05-03" } }))).toEqual([
      "last frost",
      "soil",
      "age",
    ]);
  });

  test("is none before it is sown", () => {
    expect(days(up("carrot", {}))).toBe("it is not in yet");
  });

  test("is what was seen, and no longer reckoned", () => {
    const seen = up("carrot", { acts: { start: "2027-05-03", up: "2027-05-24" } });
    expect(days(seen)).toBe("05-24 05-24 05-24");
    expect(reached(seen) && seen.seen).toBe(true);
    expect(grounds(seen)).toEqual(["seen"]);
  });

  test("of tubers is 14 to 22 days after planting", () => {
    expect(days(up("potato", { acts: { start: "2027-05-03" } }))).toBe("05-17 05-21 05-25");
  });

  test("of cloves is in spring, after the winter", () => {
    expect(days(up("garlic", { acts: { start: "2027-10-27" } }))).toBe("04-04 04-24 05-14");
  });

  test("indoors goes by the warmth there and not by the garden's soil", () => {
    const sown = up("tomato", { acts: { start: "2027-04-09" } });
    expect(days(sown)).toBe("04-14 04-17 04-20");
    expect(grounds(sown)).toEqual(["last frost", "age"]);
  });

  test("is none in soil that stays too cold", () => {
    const low = Array(12).fill(celsius(30));
    const high = Array(12).fill(celsius(40));
    const cold = { ...growingOf(QUARRY, "carrot").plan.site, normals: normalsOf(low, high) };
    const milestone = up("carrot", { acts: { start: "2027-05-03" }, plan: { site: cold } });
    expect(days(milestone)).toBe("the soil is too cold for it to come up");
  });

  test("is never told for the day of sowing or before", () => {
    const fast = up("tomato", {
      acts: { start: "2027-06-01" },
      crop: { comesUp: { kind: "table", row: "cucumber", standsIn: null } },
    });
    expect(days(fast).slice(0, 5) > "06-01").toBe(true);
  });
});

describe("when it is first ready", () => {
  test("counts a packet's days from sowing, and cold soil's days on top", () => {
    expect(days(ripe("beet", { acts: { start: "2027-05-03" } }))).toBe("07-12 07-17 07-23");
  });

  test("counts a packet's days from setting out for tomatoes", () => {
    expect(days(ripe("tomato", { acts: { "set out": "2027-05-21" } }))).toBe("07-31 08-02 08-09");
  });

  test("takes the plan's own days before the crop's", () => {
    const given = { acts: { "set out": "2027-05-21" }, planting: { days: 60 } };
    expect(days(ripe("tomato", given))).toBe("07-18 07-20 07-26");
  });

  test("is none before it is in its place", () => {
    expect(days(ripe("tomato", {}))).toBe("it is not in its place yet");
    expect(days(ripe("tomato", { acts: { start: "2027-04-09" } }))).toBe(
      "it is not in its place yet",
    );
  });

  test("is what was seen", () => {
    const acts = { "set out": "2027-05-21", "first ripe": "2027-07-28" };
    expect(days(ripe("tomato", { acts }))).toBe("07-28 07-28 07-28");
  });

  test("moves with the day it was seen up", () => {
    const acts = { start: "2027-05-03", up: "2027-05-30" };
    expect(days(ripe("beet", { acts }))).toBe("07-18 07-23 07-29");
  });

  test("of bought lettuce counts from setting out, less the weeks it was raised", () => {
    const given = { planting: { start: "plants" }, acts: { "set out": "2027-05-10" } } as const;
    expect(days(ripe("lettuce", given))).toBe("05-28 06-04 06-12");
  });

  test("of garlic counts from the last frost of the spring after its planting", () => {
    expect(days(ripe("garlic", { acts: { start: "2027-10-27" } }))).toBe("07-09 07-22 08-03");
  });

  test("of garlic is none in a place without frost", () => {
    const site = { ...growingOf(QUARRY, "garlic").plan.site, lastFrost: null };
    expect(days(ripe("garlic", { acts: { start: "2027-10-27" }, plan: { site } }))).toBe(
      "there is no last frost to count from",
    );
  });
});

describe("the same day of a later year", () => {
  const next = (day: string, from: string) => isoOf(nextYearly(isoDay(day), isoDay(from)));

  test("is that year's own where it is still to come", () => {
    expect(next("2027-05-06", "2027-03-01")).toBe("2027-05-06");
  });

  test("is a year on from the day itself", () => {
    expect(next("2027-05-06", "2027-05-06")).toBe("2028-05-05");
  });

  test("is the spring after an autumn", () => {
    expect(next("2027-05-06", "2027-10-27")).toBe("2028-05-05");
  });

  test("reaches back where the day lies years ahead", () => {
    expect(next("2027-05-06", "2025-10-14")).toBe("2026-05-06");
  });
});
