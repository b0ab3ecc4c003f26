import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { type Day, dayOrThrow, isoOf } from "../../../src/base/days/day.ts";
import { mergedSpans, type RepeatRule, repeatedDays } from "../../../src/garden/plan/repeating.ts";

const FIRST = dayOrThrow(2027, 5, 5);
const WITHIN = { from: dayOrThrow(2027, 1, 1), to: dayOrThrow(2031, 12, 31) };
const RULE: RepeatRule = {
  freq: "DAILY",
  interval: 1,
  count: null,
  until: null,
  byDay: [],
  byMonthDay: [],
  byMonth: [],
  bySetPos: [],
  weekStart: 1,
};
const daysOf = (rule: Partial<RepeatRule>, within = WITHIN, first = FIRST) =>
  repeatedDays(first, { ...RULE, ...rule }, within, { left: 10_000 })?.map((day) => isoOf(day)) ??
  null;

/** The same days by the calendar library's own way, which goes from the first one to the next. */
function byLibrary(rule: Partial<RepeatRule>): readonly string[] {
  const { freq, interval, count, byDay, byMonthDay, byMonth, bySetPos } = { ...RULE, ...rule };
  const parts = [
    `FREQ=${freq};INTERVAL=${interval}`,
    count === null ? null : `COUNT=${count}`,
    byDay.length > 0 ? `BYDAY=${byDay}` : null,
    byMonthDay.length > 0 ? `BYMONTHDAY=${byMonthDay}` : null,
    byMonth.length > 0 ? `BYMONTH=${byMonth}` : null,
    bySetPos.length > 0 ? `BYSETPOS=${bySetPos}` : null,
  ];
  const start = ICAL.Time.fromDateString(isoOf(FIRST));
  const times = ICAL.Recur.fromString(parts.filter((part) => part !== null).join(";")).iterator(
    start,
  );
  const days: string[] = [];
  for (let next = times.next(); next && next.year <= 2031; next = times.next())
    days.push(next.toString());
  return days;
}

describe("the days on which something comes round", () => {
  const RULES: readonly Partial<RepeatRule>[] = [
    {},
    { interval: 3 },
    { byMonth: [6, 7] },
    { byDay: ["SA", "SU"] },
    { freq: "WEEKLY" },
    { freq: "WEEKLY", interval: 2, byDay: ["MO", "WE", "FR"] },
    { freq: "MONTHLY" },
    { freq: "MONTHLY", byMonthDay: [1, 15, -1] },
    { freq: "MONTHLY", byDay: ["2TU", "-1FR"] },
    { freq: "MONTHLY", interval: 5, byMonthDay: [31] },
    { freq: "MONTHLY", byDay: ["FR"], byMonthDay: [13] },
    { freq: "MONTHLY", byDay: ["MO", "TU", "WE", "TH", "FR"], bySetPos: [-1] },
    { freq: "YEARLY" },
    { freq: "YEARLY", byMonth: [7, 8], byMonthDay: [1] },
    { freq: "YEARLY", byMonth: [11], byDay: ["4TH"] },
    { freq: "YEARLY", interval: 2, byMonth: [5], byMonthDay: [5] },
  ];

  test.each(RULES.map((rule) => [JSON.stringify(rule), rule] as const))(
    "are those of %s",
    (_, rule) => {
      // The library leaves out a first day that its rule has not; RFC 5545 has it always.
      const found = byLibrary(rule);
      const first = isoOf(FIRST);
      expect(daysOf(rule)).toEqual(found.includes(first) ? found : [first, ...found]);
    },
  );

  test("of a week are in the months asked for", () => {
    const days = daysOf({ freq: "WEEKLY", byDay: ["SA", "SU"], byMonth: [7] });
    expect(days?.slice(0, 3)).toEqual(["2027-05-05", "2027-07-03", "2027-07-04"]);
  });

  test("are counted from the first", () => {
    expect(daysOf({ count: 3 })).toEqual(["2027-05-05", "2027-05-06", "2027-05-07"]);
    expect(daysOf({ count: 400 }, { from: dayOrThrow(2028, 6, 7), to: WITHIN.to })).toEqual([
      "2028-06-07",
    ]);
    expect(daysOf({ until: dayOrThrow(2027, 5, 6) })).toEqual(["2027-05-05", "2027-05-06"]);
  });

  test("are found years on without a look at the years between", () => {
    const budget = { left: 1000 };
    const within = { from: dayOrThrow(2027, 1, 1), to: dayOrThrow(2027, 1, 3) };
    const first = dayOrThrow(1900, 1, 1);
    expect(repeatedDays(first, RULE, within, budget)).toHaveLength(3);
    expect(budget.left).toBeGreaterThan(990);
  });

  test("end where the budget does, also for a rule that never fits", () => {
    const never = { ...RULE, byMonth: [2], byMonthDay: [30] };
    expect(repeatedDays(FIRST, never, WITHIN, { left: 100 })).toBeNull();
    expect(repeatedDays(FIRST, never, WITHIN, { left: 10_000 })).toEqual([FIRST]);
  });
});

test("spans are clipped, and those that touch are one", () => {
  const span = (from: number, to: number) => ({ from: from as Day, to: to as Day });
  expect(
    mergedSpans([span(8, 9), span(1, 3), span(4, 5), span(2, 2), span(20, 30)], span(3, 25)),
  ).toEqual([span(3, 5), span(8, 9), span(20, 25)]);
  expect(mergedSpans([span(1, 2)], span(3, 4))).toEqual([]);
});
