import { type Day, partsOf } from "../../base/index.ts";
import { countFrom } from "./counts.ts";
import { dayBehind } from "./when.ts";

const NO_RAIN = [
  /^last (?:measurable |proper |real )?rain(?: was| on)? (?<span>\w+ \w+)$/,
  /^(?:still |again )?(?:no|not a drop of|hardly any|zero|not any) rain(?: at all| whatsoever| here)? (?:since|for|in|all|this|these|over|during) (?:the )?(?:last |past )?(?<span>.+)$/,
  /^(?:still )?(?:no|not a drop of) rain (?<span>this week|all week)$/,
  /^(?:it )?(?:has |have )?(?:still )?(?:not|hasn't|didn't|did not|has not) (?:rain|rained)(?: at all| properly)? (?:since|for|in|all|this|over) (?:the )?(?:last |past )?(?<span>.+)$/,
  /^(?:bone |very |so )?dry (?:for|since) (?:the )?(?:last |past )?(?<span>.+)$/,
  /^(?<span>.+?) (?:without|with no|of no) (?:any )?rain$/,
];
const DAYS: Readonly<Record<string, number>> = { day: 1, week: 7, fortnight: 14, month: 30 };
/** Days of drought that a line is believed [days]. Source: house rule; more is a figure of speech. */
const MOST_DAYS = 120;

/** The days up to and with a line's own on which, it says, no rain fell; null where it says nothing of the kind. */
export function dryDaysIn(text: string, day: Day): number | null {
  for (const pattern of NO_RAIN) {
    const span = pattern.exec(text)?.groups?.span;
    const days = span === undefined ? null : daysIn(span, day);
    if (days !== null && days > 0 && days <= MOST_DAYS) return days;
  }
  return null;
}

function daysIn(span: string, day: Day): number | null {
  if (/^(?:all |this |the |whole )*week\b/.test(span)) return DAYS.week ?? null;
  const many = /^(?<count>[\w-]+) (?:whole )?(?<unit>day|week|fortnight|month)s?(?: now)?$/.exec(
    span,
  )?.groups;
  if (many) return (countFrom(many.count ?? "") ?? 0) * (DAYS[many.unit ?? ""] ?? 0);
  if (/^(?:a )?fortnight/.test(span)) return DAYS.fortnight ?? null;
  const since = dayBehind(span, day);
  if (since !== null) return day - since;
  const date = Number(/^(\d{1,2})(?:st|nd|rd|th)\b/.exec(span)?.[1] ?? 0);
  if (date === 0) return null;
  const today = partsOf(day).date;
  return today > date ? today - date : today + (DAYS.month ?? 0) - date;
}
