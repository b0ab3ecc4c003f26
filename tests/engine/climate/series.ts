import { type Day, plus } from "../../../src/base/days/day.ts";
import type { DailyRecord } from "../../../src/garden/station/record.ts";
import { isoDay } from "../../gardens.ts";

/** A record from one day to another, both inclusive, with the low [°C] that each day has; highs ten above, no rain. */
export function lowsFrom(
  from: string,
  to: string,
  lowOn: (day: Day) => number | null,
): readonly DailyRecord[] {
  const first = isoDay(from);
  return Array.from({ length: isoDay(to) - first + 1 }, (_, i) => {
    const lowC = lowOn(plus(first, i));
    return { day: plus(first, i), lowC, highC: lowC === null ? null : lowC + 10, rainMm: null };
  });
}

/** A low of 8 °C on every day but those, which have what is given. */
export function mildBut(
  cold: Readonly<Record<string, number | null>>,
): (day: Day) => number | null {
  const lows = new Map(Object.entries(cold).map(([day, low]) => [isoDay(day), low]));
  return (day) => (lows.has(day) ? (lows.get(day) ?? null) : 8);
}
