import { describe, expect, test } from "vitest";
import { dayOrThrow, isoOf } from "../../../src/base/days/day.ts";
import { daysIn } from "../../../src/garden/plan/calendar-file.ts";

const YEAR = { from: dayOrThrow(2027, 1, 1), to: dayOrThrow(2027, 12, 31) };
const file = (...lines: readonly string[]) =>
  ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:x", ...lines, "END:VCALENDAR", ""].join("\r\n");
const event = (...lines: readonly string[]) => ["BEGIN:VEVENT", "UID:a", ...lines, "END:VEVENT"];
const days = (...lines: readonly string[]) =>
  daysIn(file(...lines), "America/Denver", YEAR)?.spans.map(
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

describe("a calendar of any size", () => {
  const many = (count: number, ...lines: readonly string[]) =>
    file(...Array.from({ length: count }, () => event(...lines)).flat());
  const cost = (text: string) => {
    const before = process.cpuUsage();
    const found = daysIn(text, "America/Denver", YEAR);
    const { user } = process.cpuUsage(before);
    return { found, ms: user / 1000 };
  };

  test("is read at once where its appointments are shorter than a day, however often they come", () => {
    const { found, ms } = cost(
      many(100, "DTSTART:20150105T090000Z", "DTEND:20150105T100000Z", "RRULE:FREQ=WEEKLY"),
    );
    expect(found).toEqual({ spans: [], unread: 0, tooMuch: false });
    expect(ms).toBeLessThan(250);
  });

  test("has no more days than the season, be it from the year 1 to the year 9999", () => {
    const { found, ms } = cost(many(1, "DTSTART;VALUE=DATE:00010101", "DTEND;VALUE=DATE:99991231"));
    expect(found?.spans).toEqual([YEAR]);
    expect(ms).toBeLessThan(100);
    expect(days(...event("DTSTART;VALUE=DATE:00010105", "RRULE:FREQ=DAILY"))).toEqual([
      "01-01 12-31",
    ]);
  });

  test("says where it has more than is looked at", () => {
    const { found, ms } = cost(
      many(200, "DTSTART;VALUE=DATE:00010101", "RRULE:FREQ=DAILY;COUNT=999999999"),
    );
    expect(found?.tooMuch).toBe(true);
    expect(ms).toBeLessThan(1000);
  });

  test("says how many events come round in a way that is not read", () => {
    const { found } = cost(many(2, "DTSTART;VALUE=DATE:20270601", "RRULE:FREQ=SECONDLY"));
    expect(found).toEqual({ spans: [], unread: 2, tooMuch: false });
  });

  test("is read in a time that grows with its length", () => {
    const { ms } = cost(many(5000, "DTSTART;VALUE=DATE:20270601"));
    expect(ms).toBeLessThan(1500);
  });

  test("has extra days and hours by a zone of its own", () => {
    expect(
      days(...event("DTSTART;VALUE=DATE:20270601", "RDATE;VALUE=DATE:20270610,20270612")),
    ).toEqual(["06-01 06-01", "06-10 06-10", "06-12 06-12"]);
    expect(
      days(
        ...event(
          "DTSTART:20270601T160000Z",
          "DURATION:PT22H",
          "RRULE:FREQ=WEEKLY;UNTIL=20270608T160000Z",
        ),
      ),
    ).toEqual(["06-01 06-02", "06-08 06-09"]);
  });
});

test("what is no calendar is null, whatever it is", () => {
  for (const text of ["", "no calendar", "BEGIN:VEVENT\r\nEND:VEVENT\r\n", "BEGIN:VCALENDAR"])
    expect(daysIn(text, "America/Denver", YEAR), text).toBeNull();
  expect(days()).toEqual([]);
});

test("an event without a start, or with a rule that is none, makes no calendar of it", () => {
  expect(days(...event("SUMMARY:x"))).toBeUndefined();
  expect(days(...event("DTSTART;VALUE=DATE:20270619", "RRULE:FREQ=NEVER"))).toBeUndefined();
  expect(days(...event("DTSTART:soon"))).toBeUndefined();
});
