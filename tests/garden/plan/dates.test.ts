import { describe, expect, it } from "vitest";
import { dayOrThrow, isoOf } from "../../../src/base/days/day.ts";
import type { Problem } from "../../../src/base/problems/problem.ts";
import {
  dayInSeason,
  monthNamed,
  readDay,
  readSpan,
  readWrittenDate,
} from "../../../src/garden/plan/dates.ts";
import { wordsAt } from "../../../src/garden/plan/tree.ts";

const season = { from: dayOrThrow(2027, 1, 18), to: dayOrThrow(2028, 1, 18) };
const at = { file: "f", line: 1, column: 1 };

function day(text: string): string {
  const told: Problem[] = [];
  const found = readDay(wordsAt(text, at), { season, problems: told });
  return found === null ? (told[0]?.code ?? "nothing told") : isoOf(found);
}

function span(text: string): string {
  const told: Problem[] = [];
  const found = readSpan(wordsAt(text, at), { season, problems: told });
  return found === null
    ? (told[0]?.code ?? "nothing told")
    : `${isoOf(found.from)} ${isoOf(found.to)}`;
}

describe("a day in words", () => {
  it("is read day first, month first, short, long, with a year or as ISO", () => {
    for (const text of [
      "6 May",
      "May 6",
      "6th May",
      "May 6th",
      "6 May 2027",
      "May 6, 2027",
      "about 6 May",
      "Thu 6 May",
      "on 6 May",
      "2027-05-06",
      "6 MAY",
    ])
      expect(day(text), text).toBe("2027-05-06");
    for (const text of ["9 Sept", "9 Sep.", "September 9"])
      expect(day(text), text).toBe("2027-09-09");
  });

  it("falls in the season: a day in January of the year after too", () => {
    expect(day("10 Jan")).toBe("2028-01-10");
    expect(day("20 Jan")).toBe("2027-01-20");
    expect(day("10 Jan 2027")).toBe("2027-01-10");
  });

  it("is refused in figures, with both readings", () => {
    for (const text of ["05-06", "5/6", "5.6.", "05-06-2027"])
      expect(day(text), text).toBe("two-readings");
    const read = readWrittenDate("05-06");
    expect("wrong" in read && read.wrong.is).toBe("05-06 can be 6 May or 5 June");
    expect("wrong" in read && read.wrong.shouldBe).toBe("Write 6 May or 5 June");
    const one = readWrittenDate("14/5");
    expect("wrong" in one && one.wrong.shouldBe).toBe("Write 14 May");
    expect(day("45/46")).toBe("no-such-day");
  });

  it("is refused where the calendar has none", () => {
    for (const text of ["31 Jun", "30 Feb", "0 May", "2027-02-29", "29 Feb 2027"])
      expect(day(text), text).toBe("no-such-day");
    expect(day("29 Feb")).toBe("no-such-day");
  });

  it("offers the nearest month", () => {
    const read = readWrittenDate("6 Mya");
    expect("wrong" in read && read.wrong.shouldBe).toBe("Did you mean 6 May");
    expect(day("soon")).toBe("day-unclear");
  });

  it("is null, and nothing is reported, while the season is not known", () => {
    const told: Problem[] = [];
    expect(readDay(wordsAt("6 May", at), { season: null, problems: told })).toBeNull();
    expect(told).toEqual([]);
  });

  it("is the earlier of two where a season has it twice", () => {
    const long = { from: dayOrThrow(2027, 1, 18), to: dayOrThrow(2028, 1, 19) };
    expect(dayInSeason(long, { month: 1, date: 18, year: null })).toBe(dayOrThrow(2027, 1, 18));
    const short = { from: dayOrThrow(2027, 1, 19), to: dayOrThrow(2028, 1, 17) };
    expect(dayInSeason(short, { month: 1, date: 18, year: null })).toBe(dayOrThrow(2027, 1, 18));
  });

  it("has its month by name or by three letters of it at the least", () => {
    expect(monthNamed("Ma")).toBeNull();
    expect(monthNamed("oct.")).toBe(10);
  });
});

describe("a span in words", () => {
  it("has both its days, the month written once or twice", () => {
    for (const text of [
      "19 to 23 Jun",
      "19 Jun to 23 Jun",
      "Jun 19 to 23",
      "19-23 Jun",
      "19 – 23 Jun",
      "19 Jun - 23 Jun",
    ])
      expect(span(text), text).toBe("2027-06-19 2027-06-23");
  });

  it("may be one day, or run over the turn of the year", () => {
    expect(span("3 May")).toBe("2027-05-03 2027-05-03");
    expect(span("28 Dec to 3 Jan")).toBe("2027-12-28 2028-01-03");
    expect(span("15 Jan to 20 Jan")).toBe("2028-01-15 2028-01-20");
    expect(span("10 Jan to 25 Jan")).toBe("2028-01-10 2028-01-25");
  });

  it("may be a month or a third of it", () => {
    expect(span("this October")).toBe("2027-10-01 2027-10-31");
    expect(span("October")).toBe("2027-10-01 2027-10-31");
    expect(span("early May")).toBe("2027-05-01 2027-05-10");
    expect(span("mid-May")).toBe("2027-05-11 2027-05-20");
    expect(span("late Feb")).toBe("2027-02-21 2027-02-28");
    expect(span("October 2026")).toBe("2026-10-01 2026-10-31");
  });

  it("is refused backwards", () => {
    expect(span("23 to 19 Jun")).toBe("span-backwards");
    expect(span("23 Jun 2027 to 19 Jun 2027")).toBe("span-backwards");
    expect(span("19 to 45 Jun")).toBe("no-such-day");
  });
});
