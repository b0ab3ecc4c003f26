import {
  type Day,
  type DaySpan,
  dayOf,
  earliest,
  latest,
  partsOf,
  plus,
  weekdayOf,
} from "../../base/index.ts";

/** The parts of a repeat rule (RFC 5545, 3.3.10) that name days; weekdays `MO` to `SU`, with a number before it the so-manieth. */
export type RepeatRule = {
  readonly freq: "DAILY" | "WEEKLY" | "MONTHLY" | "YEARLY";
  readonly interval: number;
  readonly count: number | null;
  /** The last day on which it may begin, inclusive. */
  readonly until: Day | null;
  readonly byDay: readonly string[];
  readonly byMonthDay: readonly number[];
  readonly byMonth: readonly number[];
  /** Which of the days of a period, from its first (1) or its last (-1). */
  readonly bySetPos: readonly number[];
  /** The day that a week begins on, Monday 1. */
  readonly weekStart: number;
};

/** What may be looked at before reading is given up; counted down. */
export type Budget = { left: number };

const WEEKDAYS = ["MO", "TU", "WE", "TH", "FR", "SA", "SU"] as const;

/**
 * The days within a span on which something begins that began on a day and repeats, in day order; the first day counts
 * whether the rule has it or not. Periods before the span are passed over in one step unless the rule counts. Null where
 * the budget does not suffice.
 */
export function repeatedDays(
  first: Day,
  rule: RepeatRule,
  within: DaySpan,
  budget: Budget,
): readonly Day[] | null {
  const days: Day[] = first >= within.from && first <= within.to ? [first] : [];
  const end = earliest(within.to, rule.until ?? within.to);
  let counted = 1;
  for (let period = firstPeriod(first, rule, within.from); ; period++) {
    const start = periodStart(first, rule, period);
    if (start > end) return days;
    budget.left -= rule.freq === "YEARLY" ? 12 : 1;
    if (budget.left < 0) return null;
    for (const day of daysOf(first, rule, start)) {
      if (day <= first) continue;
      if (day > end) return days;
      counted += 1;
      if (rule.count !== null && counted > rule.count) return days;
      if (day >= within.from) days.push(day);
    }
  }
}

/** The period from which anything can lie in the span: that of the first day where all must be counted. */
function firstPeriod(first: Day, { freq, interval, count }: RepeatRule, from: Day): number {
  if (count !== null || from <= first) return 0;
  const longest = { DAILY: 1, WEEKLY: 7, MONTHLY: 31, YEARLY: 366 }[freq];
  return Math.max(0, Math.floor((from - first) / (longest * interval)) - 1);
}

/** The first day of a period, counted from that of the first day. */
function periodStart(first: Day, { freq, interval, weekStart }: RepeatRule, period: number): Day {
  const by = period * interval;
  if (freq === "DAILY") return plus(first, by);
  if (freq === "WEEKLY") return plus(first, 7 * by - ((weekdayOf(first) - weekStart + 7) % 7));
  const { year, month } = partsOf(first);
  const months = freq === "MONTHLY" ? month - 1 + by : 12 * by;
  return monthsOn(year, months);
}

/** The first of a month so many months after January of a year. */
const monthsOn = (year: number, months: number): Day =>
  (Date.UTC(2000, (year - 2000) * 12 + months, 1) / 86_400_000) as Day;

/** The days of the period that begins on a day, in day order, before and after the first one. */
function daysOf(first: Day, rule: RepeatRule, start: Day): readonly Day[] {
  const days = candidates(first, rule, start);
  if (rule.bySetPos.length === 0) return days;
  const chosen = rule.bySetPos.map((at) => days[at > 0 ? at - 1 : days.length + at]);
  return days.filter((day) => chosen.includes(day));
}

function candidates(first: Day, rule: RepeatRule, start: Day): readonly Day[] {
  switch (rule.freq) {
    case "DAILY":
      return [start].filter(
        (day) => isInMonth(day, rule) && isOnDate(day, rule) && isOnWeekday(day, rule),
      );
    case "WEEKLY": {
      const week = [0, 1, 2, 3, 4, 5, 6].map((ahead) => plus(start, ahead));
      const own = rule.byDay.length > 0 ? null : weekdayOf(first);
      return week.filter(
        (day) =>
          isInMonth(day, rule) && (own === null ? isOnWeekday(day, rule) : weekdayOf(day) === own),
      );
    }
    case "MONTHLY":
      return isInMonth(start, rule) ? inMonth(first, rule, start) : [];
    case "YEARLY":
      return inYear(first, rule, partsOf(start).year);
  }
}

function inMonth(first: Day, rule: RepeatRule, start: Day): readonly Day[] {
  const days = daysBetween(start, monthsOn(partsOf(start).year, partsOf(start).month));
  if (rule.byDay.length === 0 && rule.byMonthDay.length === 0)
    return days.filter((day) => partsOf(day).date === partsOf(first).date);
  return days.filter((day) => isOnDate(day, rule) && isNthWeekday(day, rule, days));
}

function inYear(first: Day, rule: RepeatRule, year: number): readonly Day[] {
  const { month, date } = partsOf(first);
  if (rule.byMonth.length > 0)
    return [...rule.byMonth]
      .sort((a, b) => a - b)
      .flatMap((each) => inMonth(first, rule, monthsOn(year, each - 1)));
  if (rule.byMonthDay.length > 0)
    return Array.from({ length: 12 }, (_, i) => inMonth(first, rule, monthsOn(year, i))).flat();
  if (rule.byDay.length > 0) {
    const days = daysBetween(monthsOn(year, 0), monthsOn(year, 12));
    return days.filter((day) => isNthWeekday(day, rule, days));
  }
  const day = dayOf(year, month, date);
  return day === null ? [] : [day];
}

/** The days from one to the day before another. */
const daysBetween = (from: Day, to: Day): readonly Day[] =>
  Array.from({ length: to - from }, (_, ahead) => plus(from, ahead));

const isInMonth = (day: Day, { byMonth }: RepeatRule) =>
  byMonth.length === 0 || byMonth.includes(partsOf(day).month);

function isOnDate(day: Day, { byMonthDay }: RepeatRule): boolean {
  if (byMonthDay.length === 0) return true;
  const { year, month, date } = partsOf(day);
  const length = monthsOn(year, month) - monthsOn(year, month - 1);
  return byMonthDay.includes(date) || byMonthDay.includes(date - length - 1);
}

const isOnWeekday = (day: Day, { byDay }: RepeatRule) =>
  byDay.length === 0 || byDay.some((each) => each.endsWith(WEEKDAYS[weekdayOf(day) - 1] ?? "?"));

/** Whether a day is one of the rule's weekdays, or the so-manieth of them among some days from the first or from the last. */
function isNthWeekday(day: Day, { byDay }: RepeatRule, days: readonly Day[]): boolean {
  if (byDay.length === 0) return true;
  const name = WEEKDAYS[weekdayOf(day) - 1] ?? "?";
  const at = Math.floor((day - (days[0] ?? day)) / 7) + 1;
  const left = Math.floor(((days[days.length - 1] ?? day) - day) / 7) + 1;
  return byDay.some((each) =>
    [name, `${at}${name}`, `+${at}${name}`, `-${left}${name}`].includes(each),
  );
}

/** Spans clipped to another, in day order, those that touch or overlap as one. */
export function mergedSpans(spans: readonly DaySpan[], within: DaySpan): readonly DaySpan[] {
  const merged: DaySpan[] = [];
  const inside = spans
    .map(({ from, to }) => ({ from: latest(from, within.from), to: earliest(to, within.to) }))
    .filter(({ from, to }) => from <= to)
    .sort((a, b) => a.from - b.from || a.to - b.to);
  for (const span of inside) {
    const last = merged[merged.length - 1];
    if (last && span.from <= plus(last.to, 1))
      merged[merged.length - 1] = { from: last.from, to: latest(last.to, span.to) };
    else merged.push(span);
  }
  return merged;
}
