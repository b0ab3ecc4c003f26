import { VALID } from "./valid.ts";

/** A feed's bytes with one fault, and the name it must be refused by. */
export type Faulty = { readonly code: string; readonly how: string; readonly bytes: Uint8Array };

const bytesOf = (text: string) => new TextEncoder().encode(text);

/** The valid feed with the first occurrence of a text replaced. Throws where it doesn't stand in it. */
function swap(code: string, from: string, to: string): Faulty {
  if (!VALID.includes(from)) throw new Error(`not in the valid feed: ${from}`);
  const how = `${from.trim()} becomes ${to.trim().slice(0, 60)}`.replaceAll("\r\n", " / ");
  return { code, how, bytes: bytesOf(VALID.replace(from, () => to)) };
}

/** The valid feed without one line, or with a line put in before another. */
const drop = (code: string, line: string) => swap(code, `${line}\r\n`, "");
const put = (code: string, line: string, before: string) =>
  swap(code, `${before}\r\n`, `${line}\r\n${before}\r\n`);

/** The valid feed with octets put in place of the first occurrence of some text. */
function octets(code: string, how: string, from: string, to: readonly number[]): Faulty {
  const at = VALID.indexOf(from);
  const before = bytesOf(VALID.slice(0, at));
  const after = bytesOf(VALID.slice(at + from.length));
  return { code, how, bytes: Uint8Array.from([...before, ...to, ...after]) };
}

const UID = "UID:0b7f3c1a-5d2e-8a41-9c3b-1f2e3d4c5b6a";
const STAMP = "DTSTAMP:20270501T060000Z";
const MODIFIED = "LAST-MODIFIED:20270501T060000Z";
const START = "DTSTART;VALUE=DATE:20270508";
const END = "DTEND;VALUE=DATE:20270509";
const SUMMARY = "SUMMARY:Thin beets\\, Root bed";
const HOURS = "DTSTART;TZID=America/Denver:20270510T100000";
const HOURS_END = "DTEND;TZID=America/Denver:20270510T110000";
const LINK = "https://example.org/a\\,b/1";
const ALARM_END = "END:VALARM";
const ALARM = "BEGIN:VALARM\r\nACTION:DISPLAY\r\nTRIGGER:-PT1H\r\nDESCRIPTION:x\r\nEND:VALARM";
const ESCAPED_NAME = "NAME:Quarry Lane\\, tasks\r\nX-WR-CALNAME:Quarry Lane\\, tasks";
const VALID_ALARM = VALID.slice(VALID.indexOf("BEGIN:VALARM"), VALID.indexOf("END:VEVENT"));
const SECOND = VALID.slice(VALID.lastIndexOf("BEGIN:VEVENT"), VALID.indexOf("END:VCALENDAR"));
const EVENTS = VALID.slice(VALID.indexOf("BEGIN:VEVENT"), VALID.indexOf("END:VCALENDAR"));

const ZONE = VALID.slice(VALID.indexOf("BEGIN:VTIMEZONE"), VALID.indexOf("BEGIN:VEVENT"));

const OF_BYTES: readonly Faulty[] = [
  { code: "empty-body", how: "no bytes", bytes: new Uint8Array() },
  { code: "html-body", how: "an error page", bytes: bytesOf("<!doctype html><p>Oops</p>\r\n") },
  { code: "byte-order-mark", how: "a BOM first", bytes: bytesOf(`\ufeff${VALID}`) },
  { code: "no-final-crlf", how: "no CRLF at the end", bytes: bytesOf(VALID.slice(0, -2)) },
  swap("bare-lf", "VERSION:2.0\r\n", "VERSION:2.0\n"),
  swap("bare-cr", "Carry the", "Carry\r the"),
  swap("empty-line", "SEQUENCE:2\r\n", "SEQUENCE:2\r\n\r\n"),
  swap("line-too-long", "R\u00fcben \r\n heissen", "R\u00fcben heissen"),
  octets("fold-inside-character", "a fold inside \u00fc", "\u00fc", [0xc3, 13, 10, 32, 0xbc]),
  octets("not-utf-8", "Latin-1", "\u00fc", [0xfc]),
  octets("not-utf-8", "a surrogate's bytes", "\u00fc", [0xed, 0xa0, 0x80]),
  swap("control-character", "Carry the", "Carry\u0000 the"),
  swap("control-character", "Carry the", "Carry\u2028the"),
  swap("control-character", "Carry the", "Carry\u007f the"),
  swap("fold-without-line", "BEGIN:VCALENDAR", " \r\nBEGIN:VCALENDAR"),
  swap("too-big", "so.", `so.${`\r\n ${"x".repeat(74)}`.repeat(13_000)}\r\n `),
];

const OF_SHAPE: readonly Faulty[] = [
  swap("not-a-content-line", "SEQUENCE:2", "SEQUENCE 2"),
  swap("not-a-content-line", "NAME:Quarry", "NA_ME:Quarry"),
  swap("lower-case-name", "SEQUENCE:2", "sequence:2"),
  swap("property-after-component", `${ALARM_END}\r\n`, `${ALARM_END}\r\nSTATUS:CONFIRMED\r\n`),
  drop("unclosed-component", "END:VCALENDAR"),
  swap("end-mismatch", ALARM_END, "END:VTODO"),
  {
    code: "no-calendar",
    how: "an event alone",
    bytes: bytesOf(SECOND),
  },
  { code: "second-calendar", how: "two calendars", bytes: bytesOf(VALID + VALID) },
  { code: "outside-calendar", how: "a line after the end", bytes: bytesOf(`${VALID}X-A:1\r\n`) },
  swap("no-component", ZONE + EVENTS, ""),
  swap("todo", EVENTS, `${EVENTS}BEGIN:VTODO\r\nUID:x\r\nEND:VTODO\r\n`),
  swap("not-an-event", EVENTS, `${EVENTS}BEGIN:VJOURNAL\r\nUID:x\r\nEND:VJOURNAL\r\n`),
];

const OF_HEAD: readonly Faulty[] = [
  drop("prodid-missing", "PRODID:-//Example//Garden//EN"),
  put("prodid-twice", "PRODID:-//A//B//EN", "COLOR:olivedrab"),
  drop("version-missing", "VERSION:2.0"),
  put("version-twice", "VERSION:2.0", "COLOR:olivedrab"),
  swap("version-not-2", "VERSION:2.0", "VERSION:1.0"),
  put("method", "METHOD:PUBLISH", "COLOR:olivedrab"),
  put("unknown-property", "TIMEZONE-ID:America/Denver", "COLOR:olivedrab"),
  swap("name-missing", "NAME:Quarry Lane\\, tasks\r\n", ""),
  swap("names-differ", "X-WR-CALNAME:Quarry", "X-WR-CALNAME:Quarrie"),
  swap("unescaped-comma", ESCAPED_NAME, ESCAPED_NAME.replaceAll("\\", "")),
  drop("color-missing", "COLOR:olivedrab"),
  swap("colour-not-a-name", "COLOR:olivedrab", "COLOR:#6B8E23"),
  swap("colour-not-hex", "#6B8E23", "#6b8e23"),
  drop("refresh-interval-missing", "REFRESH-INTERVAL;VALUE=DURATION:PT4H"),
  drop("x-published-ttl-missing", "X-PUBLISHED-TTL:PT4H"),
  swap("ttl-without-value", "INTERVAL;VALUE=DURATION", "INTERVAL"),
  swap("ttl-differs", "TTL:PT4H", "TTL:PT1H"),
  swap("ttl-not-a-duration", "TTL:PT4H", "TTL:240"),
  swap("ttl-not-positive", "PT4H\r\nX-PUBLISHED-TTL:PT4H", "-PT4H\r\nX-PUBLISHED-TTL:-PT4H"),
];

const OF_EVENT: readonly Faulty[] = [
  drop("uid-missing", UID),
  put("uid-twice", UID, SUMMARY),
  swap("uid-shared", "UID:4c9d2e7f-8b1a-8c3d-8e5f-6a7b8c9d0e1f", UID),
  swap("uid-not-a-uuid", UID, "UID:thin-beets@example.org"),
  swap("uid-not-a-uuid", UID, UID.replace("0b7f3c1a", "0B7F3C1A")),
  drop("dtstamp-missing", STAMP),
  put("dtstamp-twice", STAMP, SUMMARY),
  swap("local-stamp", STAMP, "DTSTAMP:20270501T060000"),
  drop("last-modified-missing", MODIFIED),
  swap("local-stamp", MODIFIED, "LAST-MODIFIED:20270501T060000"),
  swap("local-stamp", MODIFIED, "LAST-MODIFIED;TZID=America/Denver:20270501T060000"),
  swap("stamps-differ", MODIFIED, "LAST-MODIFIED:20270501T060001Z"),
  drop("sequence-missing", "SEQUENCE:2"),
  put("sequence-twice", "SEQUENCE:2", SUMMARY),
  swap("sequence-not-a-number", "SEQUENCE:2", "SEQUENCE:-1"),
  drop("dtstart-missing", START),
  put("dtstart-twice", START, SUMMARY),
  drop("dtend-missing", END),
  swap("end-not-after-start", END, "DTEND;VALUE=DATE:20270508"),
  swap("end-not-after-start", HOURS_END, HOURS_END.replace("T11", "T09")),
  swap("type-mismatch", END, "DTEND:20270509T000000Z"),
  put("end-and-duration", "DURATION:P1D", SUMMARY),
  swap("date-without-value", START, "DTSTART:20270508"),
  swap("not-a-date", START, "DTSTART;VALUE=DATE:8 May 2027"),
  swap("not-a-date", START, "DTSTART;VALUE=DATE:20270508T000000Z"),
  swap("impossible-date", START, "DTSTART;VALUE=DATE:20270230"),
  swap("impossible-date", HOURS_END, HOURS_END.replace("T11", "T25")),
  swap("floating-time", HOURS, "DTSTART:20270510T100000"),
  swap("tzid-without-zone", HOURS, HOURS.replace("Denver", "Boise")),
  swap("tzid-on-utc", HOURS, `${HOURS}Z`),
  swap("tzid-on-date", START, "DTSTART;VALUE=DATE;TZID=America/Denver:20270508"),
  swap("two-clocks", HOURS, "DTSTART:20270510T160000Z"),
  swap("zone-begins-too-late", HOURS, HOURS.replace("2027", "2025")),
  put("repeats", "RRULE:FREQ=DAILY;COUNT=3", SUMMARY),
  put("repeats", "EXDATE;VALUE=DATE:20270508", SUMMARY),
  put("people-in-event", "ATTENDEE:mailto:imre@example.org", SUMMARY),
  put("microsoft-property", "X-MICROSOFT-CDO-ALLDAYEVENT:TRUE", SUMMARY),
  put("unknown-property", "X-ALT-DESC:x", SUMMARY),
  drop("summary-missing", SUMMARY),
  put("summary-twice", SUMMARY, "TRANSP:TRANSPARENT"),
  swap("summary-empty", SUMMARY, "SUMMARY: "),
  swap("summary-newline", SUMMARY, "SUMMARY:Thin\\nbeets"),
  swap("summary-too-long", SUMMARY, `SUMMARY:${"beet ".repeat(13)}`),
  swap("unescaped-comma", SUMMARY, "SUMMARY:Thin beets, Root bed"),
  swap("unescaped-semicolon", "in\\; pull", "in; pull"),
  swap("bad-escape", "pull the weakest", "pull \\the weakest"),
  swap("unescaped-semicolon", "CATEGORIES:thin,weed", "CATEGORIES:thin;weed"),
  swap("transp-unknown", "TRANSP:TRANSPARENT", "TRANSP:FREE"),
  swap("all-day-busy", "TRANSP:TRANSPARENT", "TRANSP:OPAQUE"),
  put("status-tentative", "STATUS:TENTATIVE", SUMMARY),
  put("status-cancelled", "STATUS:CANCELLED", SUMMARY),
  put("link-twice", "URL;VALUE=URI:https://example.org/a,b/1", SUMMARY),
  swap("link-twice", "so.\\n\\n", "so. https://example.org/a\\,b/1\\n\\n"),
  swap("link-bad", LINK, "javascript://example.org/1"),
];

const DAYLIGHT = ZONE.slice(ZONE.indexOf("BEGIN:DAYLIGHT"), ZONE.indexOf("BEGIN:STANDARD"));
const OBSERVANCES = ZONE.slice(ZONE.indexOf("BEGIN:DAYLIGHT"), ZONE.indexOf("END:VTIMEZONE"));
const ONSET = "DTSTART:20260308T020000";
const YEARLY = "RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=2SU";

const OF_ZONE: readonly Faulty[] = [
  drop("tzid-missing", "TZID:America/Denver"),
  swap("zone-twice", ZONE, ZONE + ZONE),
  swap("zone-unused", ZONE, ZONE + ZONE.replace("Denver", "Boise")),
  swap("zone-after-event", ZONE + EVENTS, EVENTS + ZONE),
  swap("zone-without-observance", OBSERVANCES, ""),
  swap("zone-unknown-part", DAYLIGHT, DAYLIGHT.replaceAll("DAYLIGHT", "SUMMER")),
  drop("dtstart-missing", ONSET),
  drop("tzoffsetfrom-missing", "TZOFFSETFROM:-0700"),
  drop("tzoffsetto-missing", "TZOFFSETTO:-0600"),
  swap("offset-unread", "TZOFFSETTO:-0600", "TZOFFSETTO:-6"),
  swap("offset-unread", "TZOFFSETTO:-0600", "TZOFFSETTO:-0000"),
  swap("zone-start-not-local", ONSET, `${ONSET}Z`),
  swap("zone-by-dates", YEARLY, "RDATE:20270314T020000"),
  swap("zone-rule-unread", YEARLY, "RRULE:FREQ=YEARLY;BYMONTH=3;BYMONTHDAY=8"),
  swap("zone-start-off-rule", YEARLY, YEARLY.replace("2SU", "1SU")),
];

const OF_ALARM: readonly Faulty[] = [
  put("alarm-twice", ALARM, "BEGIN:VALARM"),
  swap("alarm-not-shown", "ACTION:DISPLAY", "ACTION:AUDIO"),
  drop("action-missing", "ACTION:DISPLAY"),
  drop("trigger-missing", "TRIGGER:-PT6H"),
  put("trigger-twice", "TRIGGER:-PT6H", "ACTION:DISPLAY"),
  drop("alarm-without-description", "DESCRIPTION:Thin beets\\, Root bed"),
  swap("unescaped-comma", "DESCRIPTION:Thin beets\\,", "DESCRIPTION:Thin beets,"),
  swap("alarm-not-before", "TRIGGER:-PT6H", "TRIGGER:PT7H"),
  swap("alarm-at-midnight", "TRIGGER:-PT6H", "TRIGGER:-P1D"),
  swap("alarm-at-midnight", "TRIGGER:-PT6H", "TRIGGER:PT0S"),
  swap("alarm-from-end", "TRIGGER:-PT6H", "TRIGGER;RELATED=END:-PT6H"),
  swap("alarm-absolute", "TRIGGER:-PT6H", "TRIGGER;VALUE=DATE-TIME:20270507T180000Z"),
  swap("alarm-not-a-duration", "TRIGGER:-PT6H", "TRIGGER:-6H"),
  swap("not-an-alarm", VALID_ALARM, VALID_ALARM.replaceAll("VALARM", "VBELL")),
];

const MANY = Array.from({ length: 1000 }, (_, index) =>
  SECOND.replace("4c9d2e7f", String(10_000_000 + index)),
);

/** Every feed with one fault. */
export const FAULTY: readonly Faulty[] = [
  ...OF_BYTES,
  ...OF_SHAPE,
  ...OF_HEAD,
  ...OF_EVENT,
  ...OF_ALARM,
  ...OF_ZONE,
  swap("too-many-events", EVENTS, MANY.join("")),
];
