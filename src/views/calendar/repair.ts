import { isFirstShowing } from "../../base/index.ts";
import { timeIn } from "./zone.ts";

const ALL_DAY_TWICE =
  "X-MICROSOFT-CDO-ALLDAYEVENT:TRUE\r\nX-MICROSOFT-MSNCALENDAR-ALLDAYEVENT:TRUE\r\n";
const END = "END:VEVENT\r\n";
const FIRST_HOUR = "\r\nDTSTART:";
const HOURS = /\r\n(DTSTART|DTEND):(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z(?=\r\n)/g;

/** What the library leaves out of an event: its alarm (unfolded, empty for none), and the time zone of its hours. */
export type EventRepairs = { readonly alarm: string; readonly clock: string };

/**
 * One event as the library writes it, unfolded, put right: without the two Microsoft properties, its hours on the garden's
 * own clock (in UTC where that shows one of them for the second time), and its alarm after its properties, where the grammar has it. The library would write hours by the process's
 * zone, and its stamps too. Text cannot fool it: inside a value no line end stands.
 * Source: RFC 5545, sections 3.2.19, 3.3.5 and 3.6.1.
 */
export function repairEvent(event: string, { alarm, clock }: EventRepairs): string {
  const plain = onItsClock(without(event, ALL_DAY_TWICE), clock);
  return alarm === "" ? plain : `${plain.slice(0, -END.length)}${alarm}${END}`;
}

/** Whole days have no hours, and most events are whole days. */
function onItsClock(event: string, clock: string): string {
  if (!event.includes(FIRST_HOUR)) return event;
  const hours = [...event.matchAll(HOURS)].map(([, , ...parts]) => instantFrom(parts));
  if (!hours.every((at) => isFirstShowing(at, clock))) return event;
  return event.replace(
    HOURS,
    (_, name, ...parts) => `\r\n${name}${timeIn(clock, instantFrom(parts.slice(0, 6)))}`,
  );
}

function instantFrom(parts: readonly string[]): number {
  const [year = 0, month = 1, date = 1, hour = 0, minute = 0, second = 0] = parts.map(Number);
  return Date.UTC(year, month - 1, date, hour, minute, second);
}

function without(text: string, part: string): string {
  const at = text.indexOf(part);
  return at < 0 ? text : text.slice(0, at) + text.slice(at + part.length);
}
