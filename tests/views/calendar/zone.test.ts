import { describe, expect, test } from "vitest";
import { zoneNames } from "../../../src/base/days/instants.ts";
import { writeCalendar } from "../../../src/views/calendar/write.ts";
import { timeIn, zoneText } from "../../../src/views/calendar/zone.ts";
import { partOf } from "../../depth.ts";
import { readStrictly } from "../../strict.ts";
import { eventOf } from "./events.ts";

const YEAR = { from: Date.UTC(2027, 0, 5), to: Date.UTC(2027, 11, 20) };
const linesOf = (clock: string) => zoneText(clock, YEAR).split("\r\n");
const HOUR = 3_600_000;

describe("the description of a clock", () => {
  test("is a rule for summer and one for winter where every year is alike", () => {
    expect(linesOf("America/Denver")).toEqual([
      "BEGIN:VTIMEZONE",
      "TZID:America/Denver",
      "BEGIN:DAYLIGHT",
      "DTSTART:20260308T020000",
      "TZOFFSETFROM:-0700",
      "TZOFFSETTO:-0600",
      "RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=2SU",
      "END:DAYLIGHT",
      "BEGIN:STANDARD",
      "DTSTART:20261101T020000",
      "TZOFFSETFROM:-0600",
      "TZOFFSETTO:-0700",
      "RRULE:FREQ=YEARLY;BYMONTH=11;BYDAY=1SU",
      "END:STANDARD",
      "END:VTIMEZONE",
      "",
    ]);
  });

  test("says the last week of a month as the last", () => {
    expect(zoneText("Europe/Berlin", YEAR)).toContain("BYMONTH=10;BYDAY=-1SU");
  });

  test("is the standing offset where the clock never changes", () => {
    expect(linesOf("Asia/Kolkata")).toEqual([
      "BEGIN:VTIMEZONE",
      "TZID:Asia/Kolkata",
      "BEGIN:STANDARD",
      "DTSTART:19700101T000000",
      "TZOFFSETFROM:+0530",
      "TZOFFSETTO:+0530",
      "END:STANDARD",
      "END:VTIMEZONE",
      "",
    ]);
  });

  test("has a change of its own where a year is like no other", () => {
    const text = zoneText("Africa/Casablanca", YEAR);
    expect(text).not.toMatch(/RRULE|RDATE/);
    expect(text.match(/BEGIN:DAYLIGHT/g)?.length).toBeGreaterThan(1);
  });

  test("is none for UTC", () => {
    expect(zoneText("UTC", YEAR)).toBe("");
    expect(timeIn("UTC", Date.UTC(2027, 4, 8, 16))).toBe(":20270508T160000Z");
  });

  test("goes back a year before the first event, so that this has an observance", () => {
    const january = { from: Date.UTC(2027, 0, 1, 8), to: Date.UTC(2027, 0, 1, 9) };
    expect(zoneText("America/Denver", january)).toContain("DTSTART:20260308T020000");
  });
});

describe("an instant on a clock", () => {
  test("is local time with the zone's name", () => {
    expect(timeIn("America/Denver", Date.UTC(2027, 4, 8, 16))).toBe(
      ";TZID=America/Denver:20270508T100000",
    );
  });
});

/** Zones with rules of their own: half hours, south of the equator, Ramadan, a change on a Friday, one that gave changes up. */
const ODD = [
  "Australia/Lord_Howe",
  "Africa/Casablanca",
  "Africa/Cairo",
  "America/Santiago",
  "America/Asuncion",
  "America/Nuuk",
  "Asia/Gaza",
  "Asia/Kathmandu",
  "Atlantic/Azores",
  "Europe/Dublin",
  "Pacific/Auckland",
  "Pacific/Chatham",
  "Pacific/Kiritimati",
  "Etc/GMT+5",
];

test.for([...ODD, ...partOf(zoneNames(), 60)])(
  "every hour of two years in %s is read back as the instant it is",
  (clock) => {
    const at = Array.from(
      { length: 180 },
      (_, i) => Date.UTC(2027, 0, 1) + i * (97 * HOUR + 600_000),
    );
    const events = at.map((from, i) =>
      eventOf({ key: `${i}`, when: { kind: "timed", from, to: from + HOUR } }),
    );
    const { text } = writeCalendar({
      ...{ garden: "g", name: "G", events, quiet: true, reader: false, link: null },
      ...{ clock, cause: 0, now: 0, ledger: null },
    });
    const read = readStrictly(new TextEncoder().encode(text)).events;
    expect(read.map(({ start }) => (start.kind === "instant" ? start.at : null))).toEqual(at);
    expect(read.filter(({ zone }) => zone === clock).length).toBeGreaterThan(at.length - 3);
  },
);
