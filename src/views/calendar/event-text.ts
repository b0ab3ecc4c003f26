import {
  ICalAlarm,
  ICalAlarmType,
  ICalCalendar,
  ICalEvent,
  type ICalEventData,
  ICalEventTransparency,
} from "ical-generator";
import { MS_PER_DAY } from "../../base/index.ts";
import type { Event } from "../events/event.ts";
import { cleanLine, cleanLink, cleanText, shortenLine } from "./clean.ts";
import { foldLongLines } from "./fold.ts";
import { type Revision, wholeSecond } from "./ledger.ts";
import { repairEvent } from "./repair.ts";

const MINUTES_PER_DAY = 1440;
const LONGEST_TITLE = 60;

/** An event in one feed's words, not yet cleaned: its link, which its text ends with, and its reminder [minutes before], or null for none. */
export type EventWording = {
  readonly uid: string;
  readonly title: string;
  readonly text: string;
  readonly link: string | null;
  readonly categories: readonly string[];
  readonly when: Event["when"];
  /** The time zone that hours are written in. */
  readonly clock: string;
  readonly busy: boolean;
  readonly remindMinutesBefore: number | null;
};

/** The library wants one for an event; it asks it for a time zone and a method, and this has neither. */
const NO_CALENDAR = new ICalCalendar();

/**
 * One VEVENT, folded, each line ended by CRLF, the same bytes alone as among others. Times are whole
 * seconds, the rest is cut. Throws for a timed event that doesn't end after it starts, and for a reminder
 * that would ring after the start or, all-day, at midnight.
 * Source: RFC 5545, sections 3.6.1, 3.6.6, 3.8.2.2 and 3.8.7.2.
 */
export function writeEvent(wording: EventWording, revision: Revision): string {
  const title = shortenLine(cleanLine(wording.title), LONGEST_TITLE) || "Garden";
  const event = new ICalEvent(calendarDataOf(wording, title, revision), NO_CALENDAR);
  const alarm = alarmOf(wording, title, event);
  return foldLongLines(repairEvent(event.toString(), { alarm, clock: wording.clock }));
}

function calendarDataOf(
  wording: EventWording,
  title: string,
  { sequence, stamp }: Revision,
): ICalEventData {
  const link = wording.link === null ? null : cleanLink(wording.link);
  const revised = new Date(stamp);
  const { busy, when } = wording;
  return {
    id: wording.uid,
    sequence,
    stamp: revised,
    lastModified: revised,
    ...timesOf(when),
    summary: title,
    transparency:
      busy && when.kind === "timed"
        ? ICalEventTransparency.OPAQUE
        : ICalEventTransparency.TRANSPARENT,
    description: descriptionOf(cleanText(wording.text).trim(), link),
    categories: wording.categories
      .map((name) => ({ name: cleanLine(name) }))
      .filter(({ name }) => name !== ""),
  };
}

function descriptionOf(text: string, link: string | null): string | null {
  if (link === null) return text === "" ? null : text;
  return text === "" ? link : `${text}\n\n${link}`;
}

function timesOf(when: Event["when"]): { start: Date; end: Date; allDay: boolean } {
  if (when.kind === "all day") {
    const start = when.day * MS_PER_DAY;
    return { start: new Date(start), end: new Date(start + MS_PER_DAY), allDay: true };
  }
  const [from, to] = [wholeSecond(when.from), wholeSecond(when.to)];
  if (!(from < to)) throw new RangeError(`ends before it starts: ${when.from} to ${when.to}`);
  return { start: new Date(from), end: new Date(to), allDay: false };
}

function alarmOf(wording: EventWording, title: string, event: ICalEvent): string {
  const minutes = wording.remindMinutesBefore;
  if (minutes === null) return "";
  const atMidnight = wording.when.kind === "all day" && minutes % MINUTES_PER_DAY === 0;
  if (!Number.isInteger(minutes) || minutes <= 0 || atMidnight) {
    throw new RangeError(`no hour for a reminder: ${minutes} minutes before`);
  }
  const data = { type: ICalAlarmType.display, trigger: minutes * 60, description: title };
  return new ICalAlarm(data, event).toString();
}
