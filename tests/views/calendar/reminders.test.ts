import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/days/day.ts";
import { startOf } from "../../../src/base/days/instants.ts";
import { ringingEvents, ringsAt } from "../../../src/views/calendar/reminders.ts";
import { eventOf, MAY_8, rungOf } from "./events.ts";

const CLOCK = "America/Denver";
const HOUR = 3_600_000;
const keysOf = (events: Iterable<{ readonly key: string }>) =>
  [...events].map(({ key }) => key).sort();

test("a whole day's reminder rings the evening before by the garden's clock, an hour's before it", () => {
  expect(ringsAt(eventOf(), CLOCK)).toBe(startOf(plus(MAY_8, -1), CLOCK) + 18 * HOUR);
  const { when } = rungOf();
  expect(ringsAt(rungOf(), CLOCK)).toBe((when.kind === "timed" ? when.from : 0) - 10 * 60_000);
  expect(ringsAt(eventOf({ remindMinutesBefore: null }), CLOCK)).toBeNull();
});

describe("of more than three reminders of one day", () => {
  test("the three that would cost most ring", () => {
    const events = [1, 100, 10, 10, 1].map((weight, i) => eventOf({ key: `${i}`, weight }));
    expect(keysOf(ringingEvents(events, CLOCK))).toEqual(["1", "2", "3"]);
  });

  test("those with an hour ring before whole days of the same weight", () => {
    const before = plus(MAY_8, 1) as Day;
    const whole = ["a", "b", "c"].map((key) =>
      eventOf({ key, day: before, when: { kind: "all day", day: before } }),
    );
    expect(keysOf(ringingEvents([...whole, rungOf({ key: "timed" })], CLOCK))).toEqual([
      "a",
      "b",
      "timed",
    ]);
  });

  test("none rings for what has no reminder, and other days keep theirs", () => {
    const other = plus(MAY_8, 3) as Day;
    const events = [
      ...[1, 2, 3].map((i) => eventOf({ key: `${i}` })),
      eventOf({ key: "silent", weight: 1000, remindMinutesBefore: null }),
      eventOf({ key: "other", when: { kind: "all day", day: other } }),
    ];
    expect(keysOf(ringingEvents(events, CLOCK))).toEqual(["1", "2", "3", "other"]);
  });
});
