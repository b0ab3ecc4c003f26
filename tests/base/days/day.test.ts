import { describe, expect, it } from "vitest";
import {
  dayFromIso,
  dayOf,
  dayOrThrow,
  earliest,
  isoOf,
  latest,
  MONTHS,
  midway,
  monthStart,
  partsOf,
  plus,
  sayDay,
  sayWeekday,
  shortWeekday,
  WEEKDAYS,
  weekdayOf,
} from "../../../src/base/days/day.ts";

describe("days", () => {
  it("count from 1 January 1970", () => {
    expect([
      dayOrThrow(1970, 1, 1),
      dayOrThrow(1970, 1, 2),
      dayOrThrow(1969, 12, 31),
      dayOrThrow(2000, 3, 1),
    ]).toEqual([0, 1, -1, 11_017]);
  });

  it("are null where the calendar has none, and thrown where one must be", () => {
    for (const [y, m, d] of [
      [2027, 2, 29],
      [2027, 6, 31],
      [2027, 13, 1],
      [2027, 0, 1],
      [2027, 5, 0],
      [1900, 2, 29],
    ] as const)
      expect(dayOf(y, m, d)).toBeNull();
    expect(dayOf(2028, 2, 29)).not.toBeNull();
    expect(() => dayOrThrow(2027, 2, 29)).toThrow(RangeError);
  });

  it("are the same after taking apart and putting together, year after year", () => {
    for (let day = dayOrThrow(2024, 1, 1); day < dayOrThrow(2032, 1, 1); day = plus(day, 1)) {
      const { year, month, date } = partsOf(day);
      expect(dayOrThrow(year, month, date)).toBe(day);
      expect(dayFromIso(isoOf(day))).toBe(day);
    }
  });

  it("move by whole days, fractions to the nearest", () => {
    const day = dayOrThrow(2027, 2, 27);
    expect([plus(day, 2), plus(day, -27), plus(day, 1.4), plus(day, 1.5)].map(isoOf)).toEqual([
      "2027-03-01",
      "2027-01-31",
      "2027-02-28",
      "2027-03-01",
    ]);
  });

  it("know their weekday, Monday first", () => {
    expect(WEEKDAYS[weekdayOf(dayOrThrow(2027, 5, 8)) - 1]).toBe("Saturday");
    expect(WEEKDAYS[weekdayOf(dayOrThrow(1970, 1, 1)) - 1]).toBe("Thursday");
    expect(WEEKDAYS[weekdayOf(dayOrThrow(1969, 12, 29)) - 1]).toBe("Monday");
  });

  it("know the first of a month, months away too", () => {
    const day = dayOrThrow(2027, 12, 31);
    expect([monthStart(day), monthStart(day, 1), monthStart(day, -12)].map(isoOf)).toEqual([
      "2027-12-01",
      "2028-01-01",
      "2026-12-01",
    ]);
  });

  it("have a middle, the earlier where it falls between days", () => {
    expect(midway(dayOrThrow(2027, 1, 1), dayOrThrow(2027, 1, 4))).toBe(dayOrThrow(2027, 1, 2));
    expect(midway(dayOrThrow(1969, 12, 30), dayOrThrow(1969, 12, 31))).toBe(
      dayOrThrow(1969, 12, 30),
    );
  });

  it("have an earliest and a latest, but not of none", () => {
    const [a, b] = [dayOrThrow(2027, 1, 1), dayOrThrow(2027, 2, 1)];
    expect([earliest(b, a), latest(a, b)]).toEqual([a, b]);
    expect(() => earliest()).toThrow(RangeError);
    expect(() => latest()).toThrow(RangeError);
  });

  it("are read from ISO alone", () => {
    for (const text of ["2027-5-6", "2027-02-30", "06-05-2027", "2027-05-06T00", ""])
      expect(dayFromIso(text)).toBeNull();
  });

  it("are written as a person says them", () => {
    expect([
      sayDay(dayOrThrow(2027, 5, 6)),
      sayDay(dayOrThrow(2027, 9, 30)),
      sayDay(dayOrThrow(2027, 6, 1), true),
    ]).toEqual(["6 May", "30 Sep", "1 June 2027"]);
    expect(MONTHS.map((_, month) => sayDay(dayOrThrow(2027, month + 1, 1)))).toEqual([
      ...["1 Jan", "1 Feb", "1 Mar", "1 Apr", "1 May", "1 June"],
      ...["1 July", "1 Aug", "1 Sep", "1 Oct", "1 Nov", "1 Dec"],
    ]);
  });

  it("are said with their weekday, Monday to Sunday", () => {
    const week = [3, 4, 5, 6, 7, 8, 9].map((date) => dayOrThrow(2027, 5, date));
    expect(week.map(shortWeekday)).toEqual(["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"]);
    expect(sayWeekday(dayOrThrow(2027, 5, 8))).toBe("Saturday 8 May");
    expect(sayWeekday(dayOrThrow(1969, 12, 31))).toBe("Wednesday 31 Dec");
  });
});
