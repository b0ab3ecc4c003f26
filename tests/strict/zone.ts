import type { Fault } from "./lines.ts";
import { counted, fault, first } from "./rules.ts";
import type { Component, Property } from "./tree.ts";
import { momentOf } from "./values.ts";

/** What a zone's clock does from an onset on [both in ms, the onset as UTC shows its wall time]. */
type Onset = { readonly local: number; readonly beforeMs: number; readonly afterMs: number };

/** Zones of a calendar by their names, each with its onsets in order. */
export type Zones = ReadonlyMap<string, readonly Onset[]>;

const ZONE = { once: ["TZID"], maybe: [], refused: {} } as const;
const OBSERVANCE = {
  once: ["DTSTART", "TZOFFSETFROM", "TZOFFSETTO"],
  maybe: ["RRULE", "TZNAME"],
  refused: { RDATE: "zone-by-dates" },
} as const;

/** The last year to which a rule without an end is followed. */
const LAST_YEAR = 2060;
const WEEKDAYS = ["SU", "MO", "TU", "WE", "TH", "FR", "SA"];
const RULE =
  /^FREQ=YEARLY;BYMONTH=(\d\d?);BYDAY=(-?[1-5])(SU|MO|TU|WE|TH|FR|SA)(?:;UNTIL=(\d{8}T\d{6}Z))?$/;

/**
 * Faults of a calendar's zones: each described once, before the events, by observances whose rules a simple reader follows.
 * Source: RFC 5545, sections 3.6.5 and 3.8.5.3; lists of dates are misread by Outlook (iCalcreator#106).
 */
export function zoneFaults(calendar: Component): readonly Fault[] {
  const zones = zonesIn(calendar);
  const names = zones.map((zone) => first(zone, "TZID")?.value);
  const firstEvent = calendar.parts.findIndex(({ name }) => name === "VEVENT");
  if (firstEvent < 0) return [];
  return zones.flatMap((zone, i) => [
    ...counted(zone, ZONE),
    ...(names.indexOf(names[i]) < i ? [fault("zone-twice", zone)] : []),
    ...(calendar.parts.indexOf(zone) > firstEvent ? [fault("zone-after-event", zone)] : []),
    ...(zone.parts.length === 0 ? [fault("zone-without-observance", zone)] : []),
    ...(isUsed(calendar, names[i]) ? [] : [fault("zone-unused", zone)]),
    ...zone.parts.flatMap(observanceFaults),
  ]);
}

const zonesIn = ({ parts }: Component) => parts.filter(({ name }) => name === "VTIMEZONE");

const isUsed = ({ parts }: Component, name: string | undefined) =>
  parts.some(({ properties }) => properties.some(({ params }) => params.TZID === name));

function observanceFaults(part: Component): readonly Fault[] {
  if (part.name !== "STANDARD" && part.name !== "DAYLIGHT")
    return [fault("zone-unknown-part", part)];
  const numbers = counted(part, OBSERVANCE);
  if (numbers.length > 0) return numbers;
  const offsets = ["TZOFFSETFROM", "TZOFFSETTO"].flatMap((name) => first(part, name) ?? []);
  const wrong = offsets.filter(({ value }) => offsetMs(value) === null);
  if (wrong.length > 0) return wrong.map((property) => fault("offset-unread", property));
  const start = first(part, "DTSTART");
  if (!start || localOf(start) === null) return [fault("zone-start-not-local", start ?? part)];
  const rule = first(part, "RRULE");
  if (rule === null) return [];
  if (!RULE.test(rule.value)) return [fault("zone-rule-unread", rule)];
  return onsetsOf(part)[0]?.local === localOf(start) ? [] : [fault("zone-start-off-rule", rule)];
}

/** `-0600` in milliseconds; null for what is none. */
function offsetMs(value: string): number | null {
  const found = /^([+-])(\d\d)([0-5]\d)$/.exec(value);
  if (!found || value === "-0000") return null;
  const ms = (Number(found[2]) * 60 + Number(found[3])) * 60_000;
  return found[1] === "-" ? -ms : ms;
}

/** A local DATE-TIME as the instant at which UTC shows it; null for what is none. */
function localOf({ value, params }: Property): number | null {
  if (value.endsWith("Z") || params.VALUE === "DATE") return null;
  const moment = momentOf(`${value}Z`, false);
  return typeof moment === "string" || moment.kind !== "instant" ? null : moment.at;
}

/** The zones of a calendar without a fault in them. */
export function zonesOf(calendar: Component): Zones {
  return new Map(
    zonesIn(calendar).map((zone) => [
      first(zone, "TZID")?.value ?? "",
      zone.parts.flatMap(onsetsOf).sort((a, b) => a.local - b.local),
    ]),
  );
}

function onsetsOf(part: Component): readonly Onset[] {
  const [from, to, start] = ["TZOFFSETFROM", "TZOFFSETTO", "DTSTART"].map((name) =>
    first(part, name),
  );
  const local = start ? localOf(start) : null;
  if (!from || !to || local === null) return [];
  const onset = { beforeMs: offsetMs(from.value) ?? 0, afterMs: offsetMs(to.value) ?? 0 };
  const rule = RULE.exec(first(part, "RRULE")?.value ?? "");
  if (!rule) return [{ local, ...onset }];
  const [, month = "1", week = "1", weekday = "SU", until] = rule;
  const end = until ? momentOf(until, false) : null;
  const onsets: Onset[] = [];
  for (let year = new Date(local).getUTCFullYear(); year <= LAST_YEAR; year++) {
    const day = nthWeekday(year, Number(month) - 1, Number(week), WEEKDAYS.indexOf(weekday));
    const at = day + (local % 86_400_000);
    const isOver =
      end !== null &&
      typeof end !== "string" &&
      end.kind === "instant" &&
      at - onset.beforeMs > end.at;
    if (at >= local && !isOver) onsets.push({ local: at, ...onset });
  }
  return onsets;
}

function nthWeekday(year: number, month: number, week: number, weekday: number): number {
  const start =
    week > 0 ? new Date(Date.UTC(year, month, 1)) : new Date(Date.UTC(year, month + 1, 0));
  const off =
    week > 0 ? (weekday - start.getUTCDay() + 7) % 7 : -((start.getUTCDay() - weekday + 7) % 7);
  return start.getTime() + (off + (week > 0 ? week - 1 : week + 1) * 7) * 86_400_000;
}

/**
 * The instant of a local time in a zone: by the last onset that it is not before, which of two hours that a clock shows
 * alike is the first. The name of what is wrong where the zone is not described, or not so early.
 */
export function instantIn(zones: Zones, { value, params }: Property): number | string {
  const onsets = zones.get(params.TZID ?? "");
  if (!onsets) return "tzid-without-zone";
  const moment = momentOf(`${value}Z`, false);
  if (typeof moment === "string") return value.endsWith("Z") ? "tzid-on-utc" : moment;
  if (moment.kind !== "instant") return "date-without-value";
  const last = onsets.findLast(({ local }) => moment.at >= local);
  if (!last) return "zone-begins-too-late";
  return moment.at - last.afterMs;
}
