import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { BEET } from "../../../src/crops/beets.ts";
import { clockOf, packetDaysLeft, packetDaysToUp } from "../../../src/engine/growth/clock.ts";
import { QUARRY } from "../../gardens.ts";
import { always, type Given, growingOf } from "./growing.ts";

/** `from least-days-most` of a clock, or why there is none. */
function told(name: string, given: Given): string {
  const clock = clockOf(growingOf(QUARRY, name, given));
  if ("none" in clock) return clock.none;
  return `${isoOf(clock.usual)} ${clock.least}-${clock.days}-${clock.most}`;
}

const basis = (name: string, given: Given) => {
  const clock = clockOf(growingOf(QUARRY, name, given));
  return "basis" in clock ? clock.basis : [];
};

describe("days to come up that a packet holds", () => {
  test("are the table's at 68 °F", () => {
    expect(packetDaysToUp(growingOf(QUARRY, "beet"))).toBe(6);
    expect(packetDaysToUp(growingOf(QUARRY, "lettuce"))).toBe(3);
  });

  test("are the middle of a tuber's", () => {
    expect(packetDaysToUp(growingOf(QUARRY, "potato"))).toBe(18);
  });

  test("are those of the row that stands in", () => {
    const lima = { kind: "table", row: "bean_lima", standsIn: null } as const;
    expect(packetDaysToUp(growingOf(QUARRY, "beet", { crop: { comesUp: lima } }))).toBe(18);
  });
});

describe("the clock of seed sown outdoors", () => {
  const acts = { start: "2027-05-03", up: "2027-05-20" };

  test("begins when it is up, with the packet's days less those to come up", () => {
    expect(told("beet", { acts })).toBe("2027-05-20 49-54-59");
  });

  test("goes by the plan's own days, with no spread of their own", () => {
    expect(told("beet", { acts, planting: { days: 70 } })).toBe("2027-05-20 64-64-64");
  });

  test("begins early, usual and late as it comes up", () => {
    const plan = { site: always(celsius(50)) };
    const clock = clockOf(growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" }, plan }));
    if ("none" in clock) throw new Error(clock.none);
    expect(isoOf(clock.usual)).toBe("2027-05-20");
    expect(clock.early).toBeLessThan(clock.usual);
    expect(clock.late).toBeGreaterThan(clock.usual);
  });

  test("gives it the weeks of raising where the packet counts from setting out", () => {
    const harvest = { ...BEET.harvest, from: "setting out" } as const;
    const { indoors } = growingOf(QUARRY, "lettuce").crop;
    expect(told("beet", { acts, crop: { harvest, indoors } })).toBe("2027-05-20 77-82-87");
  });

  test("has not begun before it is sown", () => {
    expect(told("beet", {})).toBe("it is not in yet");
  });

  test("hangs on what was seen", () => {
    expect(basis("beet", { acts })).toEqual(["seen"]);
  });
});

describe("the clock of what is set out", () => {
  test("begins that day with the whole packet where that counts from setting out", () => {
    expect(told("tomato", { acts: { "set out": "2027-05-21" }, planting: { days: 70 } })).toBe(
      "2027-05-21 70-70-70",
    );
  });

  test("takes off the days under cover where the packet counts from sowing", () => {
    const planting = { start: "seed indoors", days: 50 } as const;
    const acts = { start: "2027-04-05", "set out": "2027-04-30" };
    expect(told("lettuce", { acts, planting })).toBe("2027-04-30 25-25-25");
    expect(basis("lettuce", { acts, planting })).toEqual(["last frost"]);
  });

  test("takes bought plants to be as old as they would be here", () => {
    const planting = { start: "plants", days: 50 } as const;
    expect(told("lettuce", { acts: { "set out": "2027-04-30" }, planting })).toBe(
      "2027-04-30 22-22-22",
    );
  });

  test("leaves at least a quarter of the packet's days", () => {
    const planting = { start: "seed indoors", days: 40 } as const;
    const acts = { start: "2027-03-01", "set out": "2027-04-30" };
    expect(told("lettuce", { acts, planting })).toBe("2027-04-30 10-10-10");
  });

  test("has not begun before it is set out", () => {
    expect(told("tomato", { acts: { start: "2027-04-09" } })).toBe("it is not in its place yet");
  });
});

describe("the clock of tubers", () => {
  test("begins when they go in, with the whole packet", () => {
    const [least, most] = growingOf(QUARRY, "potato").crop.harvest.days.value;
    const days = Math.round((least + most) / 2);
    expect(told("potato", { acts: { start: "2027-05-03" } })).toBe(
      `2027-05-03 ${least}-${days}-${most}`,
    );
    expect(told("potato", {})).toBe("it is not in its place yet");
  });
});

describe("the packet's days left when seed is up", () => {
  test("are the middle ones, or the plan's own", () => {
    expect(packetDaysLeft(growingOf(QUARRY, "beet"))).toBe(54);
    expect(packetDaysLeft(growingOf(QUARRY, "beet", { planting: { days: 70 } }))).toBe(64);
  });
});
