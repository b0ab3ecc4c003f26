import type { Fault } from "./lines.ts";
import { counted, fault, first } from "./rules.ts";
import type { Component } from "./tree.ts";
import { secondsOf, textFault } from "./values.ts";

const RULE = {
  once: [
    "PRODID",
    "VERSION",
    "NAME",
    "X-WR-CALNAME",
    "COLOR",
    "X-APPLE-CALENDAR-COLOR",
    "REFRESH-INTERVAL",
    "X-PUBLISHED-TTL",
  ],
  maybe: ["CALSCALE"],
  refused: { METHOD: "method" },
} as const;

/**
 * Faults of a calendar's own properties and of what it holds.
 * Source: RFC 5545, sections 3.6, 3.7; RFC 7986, sections 5.1, 5.7, 5.9; a METHOD would demand an
 * ORGANIZER by RFC 5546, section 3.2.1.
 */
export function headFaults(calendar: Component): readonly Fault[] {
  return [
    ...counted(calendar, RULE),
    ...textsOf(calendar),
    ...sameNames(calendar),
    ...versionOf(calendar),
    ...colours(calendar),
    ...refresh(calendar),
    ...parts(calendar),
  ];
}

function textsOf(calendar: Component): readonly Fault[] {
  return calendar.properties.flatMap((property) => {
    if (!["NAME", "X-WR-CALNAME", "PRODID"].includes(property.name)) return [];
    const code = textFault(property.value);
    return code === null ? [] : [fault(code, property)];
  });
}

function sameNames(calendar: Component): readonly Fault[] {
  const [name, other] = [first(calendar, "NAME"), first(calendar, "X-WR-CALNAME")];
  return name && other && name.value !== other.value ? [fault("names-differ", other)] : [];
}

function versionOf(calendar: Component): readonly Fault[] {
  const version = first(calendar, "VERSION");
  return version && version.value !== "2.0" ? [fault("version-not-2", version)] : [];
}

function colours(calendar: Component): readonly Fault[] {
  const [name, hex] = [first(calendar, "COLOR"), first(calendar, "X-APPLE-CALENDAR-COLOR")];
  return [
    ...(name && !/^[a-z]+$/.test(name.value) ? [fault("colour-not-a-name", name)] : []),
    ...(hex && !/^#[0-9A-F]{6}$/.test(hex.value) ? [fault("colour-not-hex", hex)] : []),
  ];
}

function refresh(calendar: Component): readonly Fault[] {
  const [interval, ttl] = [first(calendar, "REFRESH-INTERVAL"), first(calendar, "X-PUBLISHED-TTL")];
  if (!interval || !ttl) return [];
  if (interval.params.VALUE !== "DURATION") return [fault("ttl-without-value", interval)];
  const [a, b] = [secondsOf(interval.value), secondsOf(ttl.value)];
  if (a === null || b === null) return [fault("ttl-not-a-duration", a === null ? interval : ttl)];
  if (a !== b) return [fault("ttl-differs", ttl)];
  return a > 0 ? [] : [fault("ttl-not-positive", interval)];
}

function parts(calendar: Component): readonly Fault[] {
  const strange = calendar.parts.filter(({ name }) => name !== "VEVENT" && name !== "VTIMEZONE");
  const held = calendar.parts.filter(({ name }) => name !== "VTIMEZONE");
  return [
    ...(held.length === 0 ? [fault("no-component", calendar)] : []),
    ...(held.length >= 1000 ? [fault("too-many-events", calendar)] : []),
    ...strange.map((part) => fault(part.name === "VTODO" ? "todo" : "not-an-event", part)),
  ];
}
