import { ringsBefore } from "./strict/alarm.ts";
import { eventFaults, linkIn, momentIn } from "./strict/event.ts";
import { headFaults } from "./strict/head.ts";
import { type Fault, linesOf } from "./strict/lines.ts";
import { fault, first } from "./strict/rules.ts";
import { type Component, treeOf } from "./strict/tree.ts";
import { type Moment, plainOf } from "./strict/values.ts";
import { type Zones, zoneFaults, zonesOf } from "./strict/zone.ts";

export type { Fault } from "./strict/lines.ts";
export type { Moment } from "./strict/values.ts";

/**
 * An event as a strict reader takes it. `end` is exclusive. `stamp` is DTSTAMP, and LAST-MODIFIED, in ms;
 * `alarm` is seconds before the start; null where there is none. `zone` is the time zone its hours are told in, null for
 * whole days and UTC; `link`, which its description ends with, and `description` are empty for none.
 */
export type StrictEvent = {
  readonly uid: string;
  readonly sequence: number;
  readonly stamp: number;
  readonly start: Moment;
  readonly end: Moment;
  readonly summary: string;
  readonly description: string;
  readonly zone: string | null;
  readonly link: string;
  readonly categories: readonly string[];
  readonly busy: boolean;
  readonly alarm: number | null;
};

/** A feed read: its events in order, and the values of its own properties by name. */
export type StrictFeed = {
  readonly events: readonly StrictEvent[];
  readonly head: Readonly<Record<string, string>>;
};

/**
 * Every fault of a feed, by name, in line order; none for a first-rate one. It knows nothing of how the
 * feed is made. Stops at the shape of lines and components where that is wrong already.
 */
export function faultsOf(bytes: Uint8Array): readonly Fault[] {
  const { lines, faults } = linesOf(bytes);
  if (lines.length === 0) return faults;
  const { calendar, faults: shape } = treeOf(lines);
  const found = [...faults, ...shape];
  if (calendar !== null && shape.length === 0) {
    const events = calendar.parts.filter((part) => part.name === "VEVENT");
    const described = zoneFaults(calendar);
    found.push(...headFaults(calendar), ...described, ...sharedUids(events));
    const zones = described.length > 0 ? null : zonesOf(calendar);
    if (zones) found.push(...events.flatMap((event) => eventFaults(event, zones)));
  }
  return found.sort((a, b) => a.line - b.line);
}

function sharedUids(events: readonly Component[]): readonly Fault[] {
  const seen = new Set<string>();
  return events.flatMap((event) => {
    const uid = first(event, "UID");
    if (uid === null) return [];
    const again = seen.has(uid.value);
    seen.add(uid.value);
    return again ? [fault("uid-shared", uid)] : [];
  });
}

/** The feed, or a throw that names every fault it has. */
export function readStrictly(bytes: Uint8Array): StrictFeed {
  const faults = faultsOf(bytes);
  if (faults.length > 0) {
    throw new Error(faults.map(({ code, line, is }) => `line ${line}: ${code}: ${is}`).join("\n"));
  }
  const { calendar } = treeOf(linesOf(bytes).lines);
  const zones = calendar ? zonesOf(calendar) : new Map();
  return {
    events: (calendar?.parts ?? [])
      .filter(({ name }) => name === "VEVENT")
      .map((event) => eventOf(event, zones)),
    head: Object.fromEntries((calendar?.properties ?? []).map(({ name, value }) => [name, value])),
  };
}

function eventOf(event: Component, zones: Zones): StrictEvent {
  const saidIn = (name: string) => first(event, name)?.value ?? "";
  const [start, end] = [momentIn(event, "DTSTART", zones), momentIn(event, "DTEND", zones)];
  const stamp = momentIn(event, "DTSTAMP", zones);
  if (start === null || end === null || stamp?.kind !== "instant") throw new Error("unread time");
  return {
    uid: saidIn("UID"),
    sequence: Number(saidIn("SEQUENCE")),
    stamp: stamp.at,
    start,
    end,
    summary: plainOf(saidIn("SUMMARY")),
    description: plainOf(saidIn("DESCRIPTION")),
    zone: first(event, "DTSTART")?.params.TZID ?? null,
    link: linkIn(event),
    categories: listOf(saidIn("CATEGORIES")),
    busy: saidIn("TRANSP") === "OPAQUE",
    alarm: ringsBefore(event),
  };
}

function listOf(value: string): readonly string[] {
  return [...value.matchAll(/(?:\\.|[^,\\])+/gs)].map(([part]) => plainOf(part));
}
