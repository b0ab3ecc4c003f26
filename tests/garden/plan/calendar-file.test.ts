import { describe, expect, test } from "vitest";
import { dayOrThrow, isoOf } from "../../../src/base/days/day.ts";
import { spansIn } from "../../../src/garden/plan/calendar-file.ts";

const YEAR = { from: dayOrThrow(2027, 1, 1), to: dayOrThrow(2027, 12, 31) };
const file = (...lines: readonly string[]) =>
  ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:x", ...lines, "END:VCALENDAR", ""].join("\r\n");
const event = (...lines: readonly string[]) => ["BEGIN:VEVENT", "UID:a", ...lines, "END:VEVENT"];
const days = (...lines: readonly string[]) =>
  spansIn(file(...lines), "America/Denver", YEAR)?.map(
    ({ from, to }) => `${isoOf(from).slice(5)} ${isoOf(to).slice(5)}`,
  );

describe("the days of a calendar's events", () => {
  test("run from the first to the day before the end, which RFC 5545 leaves out", () => {
    expect(days(...event("DTSTART;VALUE=DATE:20270619", "DTEND;VALUE=DATE:20270624"))).toEqual([
      "06-19 06-23",
    ]);
    expect(days(...event("DTSTART;VALUE=DATE:20270619"))).toEqual(["06-19 06-19"]);
    expect(days(...event("DTSTART;VALUE=DATE:20270619", "DURATION:P3D"))).toEqual(["06-19 06-21"]);
  });

  test("of timed events go by the garden's clock, appointments left out", () => {
    expect(days(...event("DTSTART:20270620T030000Z", "DTEND:20270623T020000Z"))).toEqual([
      "06-19 06-22",
    ]);
    expect(days(...event("DTSTART:20270620T150000Z", "DTEND:20270620T170000Z"))).toEqual([]);
  });

  test("of timed events count from twenty hours on", () => {
    const lasting = (end: string) =>
      days(...event("DTSTART:20270620T150000Z", `DTEND:20270621T${end}00Z`));
    expect(lasting("1100")).toEqual(["06-20 06-21"]);
    expect(lasting("1059")).toEqual([]);
  });

  test("come round to the last day that is asked for, and not to the day after", () => {
    const weekly = (from: string) =>
      days(...event(`DTSTART;VALUE=DATE:${from}`, "RRULE:FREQ=WEEKLY"))?.at(-1);
    expect(weekly("20271203")).toBe("12-31 12-31");
    expect(weekly("20271204")).toBe("12-25 12-25");
  });

  test("come round as often as the event does, but for what is left out or moved", () => {
    const weekly = ["DTSTART;VALUE=DATE:20270605", "RRULE:FREQ=WEEKLY;COUNT=3"];
    expect(days(...event(...weekly))).toEqual(["06-05 06-05", "06-12 06-12", "06-19 06-19"]);
    expect(days(...event(...weekly, "EXDATE;VALUE=DATE:20270612"))).toEqual([
      "06-05 06-05",
      "06-19 06-19",
    ]);
    const moved = event("RECURRENCE-ID;VALUE=DATE:20270612", "DTSTART;VALUE=DATE:20270614");
    expect(days(...event(...weekly), ...moved)).toEqual([
      "06-05 06-05",
      "06-14 06-14",
      "06-19 06-19",
    ]);
  });

  test("end with the year that is asked for, however long it repeats", () => {
    const all = days(...event("DTSTART;VALUE=DATE:20200101", "RRULE:FREQ=WEEKLY"));
    expect(all).toHaveLength(52);
  });

  test("are none of what was called off", () => {
    expect(days(...event("DTSTART;VALUE=DATE:20270619", "STATUS:CANCELLED"))).toEqual([]);
  });

  test("are there once where two events have the same", () => {
    const one = event("DTSTART;VALUE=DATE:20270619");
    expect(days(...one, ...one.map((line) => line.replace("UID:a", "UID:b")))).toEqual([
      "06-19 06-19",
    ]);
  });
});

test("what is no calendar is null, whatever it is", () => {
  for (const text of ["", "no calendar", "BEGIN:VEVENT\r\nEND:VEVENT\r\n", "BEGIN:VCALENDAR"])
    expect(spansIn(text, "America/Denver", YEAR), text).toBeNull();
  expect(days()).toEqual([]);
});

test("an event without a start, or with a rule that is none, makes no calendar of it", () => {
  expect(days(...event("SUMMARY:x"))).toBeUndefined();
  expect(days(...event("DTSTART;VALUE=DATE:20270619", "RRULE:FREQ=NEVER"))).toBeUndefined();
  expect(days(...event("DTSTART:soon"))).toBeUndefined();
});
