import { alarmFaults } from "./alarm.ts";
import type { Fault } from "./lines.ts";
import { counted, fault, first } from "./rules.ts";
import type { Component, Property } from "./tree.ts";
import { type Moment, momentOf, plainOf, textFault } from "./values.ts";
import { instantIn, type Zones } from "./zone.ts";

const REPEATS = {
  RRULE: "repeats",
  RDATE: "repeats",
  EXDATE: "repeats",
  "RECURRENCE-ID": "repeats",
};
const PEOPLE = { ORGANIZER: "people-in-event", ATTENDEE: "people-in-event" };
const RULE = {
  once: ["UID", "DTSTAMP", "LAST-MODIFIED", "SEQUENCE", "DTSTART", "DTEND", "SUMMARY", "TRANSP"],
  maybe: ["DESCRIPTION", "CATEGORIES", "STATUS", "COLOR"],
  refused: { ...REPEATS, ...PEOPLE, DURATION: "end-and-duration", URL: "link-twice" },
};
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

/**
 * Faults of one event, its alarm's included.
 * Source: RFC 5545, sections 3.3.11, 3.3.13, 3.6.1, 3.8.1.11, 3.8.2.2, 3.8.4.7 and 3.8.7.
 */
export function eventFaults(event: Component, zones: Zones): readonly Fault[] {
  return [
    ...counted(event, RULE),
    ...(["UID", "SEQUENCE", "TRANSP", "STATUS", "SUMMARY"] as const).flatMap((name) => {
      const property = first(event, name);
      const code = property && ONE[name](property.value);
      return property && code ? [fault(code, property)] : [];
    }),
    ...texts(event),
    ...linkFaults(event),
    ...stampFaults(event),
    ...timeFaults(event, zones),
    ...alarmFaults(event, momentIn(event, "DTSTART", zones)),
  ];
}

/** Names what is wrong with the value of a property that may be judged alone, or null. */
const ONE = {
  UID: (value: string) => (UUID.test(value) ? null : "uid-not-a-uuid"),
  SEQUENCE: (value: string) => (/^\d+$/.test(value) ? null : "sequence-not-a-number"),
  TRANSP: (value: string) => (/^(OPAQUE|TRANSPARENT)$/.test(value) ? null : "transp-unknown"),
  STATUS: (value: string) => (value === "CONFIRMED" ? null : `status-${value.toLowerCase()}`),
  SUMMARY: summaryFault,
};

function summaryFault(value: string): string | null {
  const plain = plainOf(value);
  if (plain.trim() === "") return "summary-empty";
  if (plain.includes("\n")) return "summary-newline";
  return [...plain].length > 60 ? "summary-too-long" : null;
}

function texts(event: Component): readonly Fault[] {
  return event.properties.flatMap((property) => {
    const { name, value } = property;
    if (!["SUMMARY", "DESCRIPTION", "CATEGORIES"].includes(name)) return [];
    const code = textFault(value, name === "CATEGORIES");
    return code === null ? [] : [fault(code, property)];
  });
}

/** What ends a text, alone in its paragraph, and looks like a link. */
const LAST_LINK = /(?:^|\n\n)([a-z][a-z+.-]*:\/\/\S+)$/i;

/** The link that an event's text ends with; empty for none. */
export function linkIn(event: Component): string {
  return LAST_LINK.exec(plainOf(first(event, "DESCRIPTION")?.value ?? ""))?.[1] ?? "";
}

function linkFaults(event: Component): readonly Fault[] {
  const [text, link] = [first(event, "DESCRIPTION"), linkIn(event)];
  if (!text || link === "") return [];
  if (plainOf(text.value).split(link).length > 2) return [fault("link-twice", text)];
  return /^https?:\/\/[\w.~:/?#[\]@!$&'()*+,;=%-]+$/.test(link) ? [] : [fault("link-bad", text)];
}

function stampFaults(event: Component): readonly Fault[] {
  const stamps = ["DTSTAMP", "LAST-MODIFIED"].flatMap((name) => first(event, name) ?? []);
  const wrong = stamps.flatMap((property) => {
    const moment = momentOf(property.value, false);
    if (moment === "floating-time" || property.params.TZID !== undefined) {
      return [fault("local-stamp", property)];
    }
    return typeof moment === "string" ? [fault(moment, property)] : [];
  });
  const [stamp, modified] = stamps;
  if (wrong.length > 0 || !stamp || !modified || stamp.value === modified.value) return wrong;
  return [fault("stamps-differ", modified)];
}

/** The moment a property of an event says, or null where it says none or a wrong one. */
export function momentIn(
  event: Component,
  name: "DTSTART" | "DTEND" | "DTSTAMP",
  zones: Zones,
): Moment | null {
  const property = first(event, name);
  const moment = property && judged(property, zones);
  return typeof moment === "string" ? null : moment;
}

function judged(property: Property, zones: Zones): Moment | string {
  const isDate = property.params.VALUE === "DATE";
  if (property.params.TZID === undefined) return momentOf(property.value, isDate);
  const at = isDate ? "tzid-on-date" : instantIn(zones, property);
  return typeof at === "string" ? at : { kind: "instant", at };
}

function timeFaults(event: Component, zones: Zones): readonly Fault[] {
  const times = ["DTSTART", "DTEND"].flatMap((name) => first(event, name) ?? []);
  const wrong = times.flatMap((property) => {
    const moment = judged(property, zones);
    return typeof moment === "string" ? [fault(moment, property)] : [];
  });
  const [start, end] = [momentIn(event, "DTSTART", zones), momentIn(event, "DTEND", zones)];
  if (start === null || end === null) return wrong;
  if (start.kind !== end.kind) return [fault("type-mismatch", event)];
  if (!isLater(end, start)) return [fault("end-not-after-start", event)];
  const [zone, other] = times.map(({ params }) => params.TZID);
  if (zone !== other) return [fault("two-clocks", event)];
  const busy = first(event, "TRANSP")?.value === "OPAQUE";
  return start.kind === "date" && busy ? [fault("all-day-busy", event)] : [];
}

function isLater(a: Moment, b: Moment): boolean {
  const numberOf = (moment: Moment) => (moment.kind === "date" ? moment.day : moment.at);
  return numberOf(a) > numberOf(b);
}
