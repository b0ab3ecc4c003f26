import { escape as escapeText, ICalCalendar } from "ical-generator";
import { cleanLine, shortenLine } from "./clean.ts";

const REFRESH_SECONDS = 4 * 3600;

/** A dull garden green, by its name and by its numbers. Source: CSS Color Module Level 3, section 4.3. */
const COLOUR = { name: "olivedrab", hex: "#6B8E23" } as const;

/**
 * The lines before and after the events of a calendar of that name, each ended by CRLF. The name is cleaned and cut to
 * sixty characters; an empty one becomes "Garden". No METHOD: a feed is a snapshot, and without one DTSTAMP means "last
 * revised". The library writes its extra properties after the events and leaves the name unescaped and the last line
 * open; here they stand first, escaped and closed.
 * Source: RFC 5545, sections 3.4, 3.6 and 3.7.2; RFC 7986, sections 5.1, 5.7 and 5.9.
 */
export function headAndFoot(name: string): { readonly head: string; readonly foot: string } {
  const calendar = new ICalCalendar({
    prodId: { company: "Sowbell", product: "Garden calendar", language: "EN" },
    name: escapeText(shortenLine(cleanLine(name) || "Garden", 60), false),
    ttl: REFRESH_SECONDS,
    color: COLOUR.hex,
    x: [["COLOR", COLOUR.name]],
  });
  const foot = "END:VCALENDAR";
  return { head: calendar.toString().slice(0, -foot.length), foot: `${foot}\r\n` };
}
