import { MS_PER_DAY } from "../../base/index.ts";
import type { Event } from "../events/event.ts";
import { type EventWording, writeEvent } from "./event-text.ts";
import { fingerprintOf } from "./fingerprint.ts";
import { headAndFoot } from "./head.ts";
import { advanceLedger, type Ledger, type LedgerEvent } from "./ledger.ts";
import { ringingEvents, ringsAt } from "./reminders.ts";
import { uidOf } from "./uid.ts";
import { zoneText } from "./zone.ts";

/** Raised when the way an event is written changes, so that every event is written anew. */
const FORMAT_VERSION = 2;

/**
 * One feed to be written: the garden's id, the name a calendar shows, the events chosen, in any order, and how they are
 * written. `clock` is the garden's time zone. `link` gives an event's own page; null leaves links out. `cause` is the instant
 * [ms since 1970 UTC] of the newest reason for a change, `now` the instant of writing; `ledger` is null for a feed never written.
 */
export type CalendarInput = {
  readonly garden: string;
  readonly name: string;
  readonly events: readonly Event[];
  readonly quiet: boolean;
  readonly reader: boolean;
  readonly link: ((event: Event) => string) | null;
  readonly clock: string;
  readonly cause: number;
  readonly now: number;
  readonly ledger: Ledger | null;
};

/**
 * The calendar's text and its new ledger. An event that is new or has changed is written without a reminder whose hour has
 * passed, since a program that reads a calendar for the first time would ring them all at once; one that stays keeps its
 * bytes, so that no event is written anew because time passes. Events are ordered by start day (in UTC), then key; each is written alone,
 * and one that has not changed keeps its old text byte for byte. Writing again with the ledger this gives, gives the
 * same text and ledger. Throws for no events at all and for two with one key: both are a programmer's mistake, and an
 * empty calendar leaves old events standing in GNOME.
 * Source: RFC 5545, sections 3.4 and 3.6.
 */
export function writeCalendar(input: CalendarInput): {
  readonly text: string;
  readonly ledger: Ledger;
} {
  if (input.events.length === 0) throw new RangeError("a calendar needs an event");
  const rings = input.quiet ? NONE : ringingEvents(input.events, input.clock);
  const ledgerEvents = inCalendarOrder(input.events).map((event) =>
    ledgerEventOf(event, input, rings.has(event)),
  );
  const { ledger, texts } = advanceLedger(ledgerEvents, input.cause, input.ledger);
  const { head, foot } = headAndFoot(input.name);
  return { text: head + zoneOf(input) + texts.join("") + foot, ledger };
}

const NONE: ReadonlySet<Event> = new Set();

/** What describes the clock of the events that have hours; empty where none has. */
function zoneOf({ events, clock }: CalendarInput): string {
  const times = events.flatMap(({ when }) => (when.kind === "timed" ? [when.from, when.to] : []));
  if (times.length === 0) return "";
  return zoneText(clock, { from: Math.min(...times), to: Math.max(...times) });
}

function inCalendarOrder(events: readonly Event[]): readonly Event[] {
  const sorted = events
    .map((event) => ({ event, day: startDay(event.when) }))
    .sort((a, b) => a.day - b.day || (a.event.key < b.event.key ? -1 : 1))
    .map(({ event }) => event);
  const keys = new Set(sorted.map((event) => event.key));
  if (keys.size < sorted.length) throw new RangeError("two events with one key");
  return sorted;
}

function startDay(when: Event["when"]): number {
  return when.kind === "all day" ? when.day : Math.floor(when.from / MS_PER_DAY);
}

function ledgerEventOf(event: Event, input: CalendarInput, rings: boolean): LedgerEvent {
  const wording = wordingOf(event, input, rings);
  const hasPassed = (ringsAt(event, input.clock) ?? 0) <= input.now;
  const written = hasPassed ? { ...wording, remindMinutesBefore: null } : wording;
  const when = whenOf(event.when);
  return {
    key: event.key,
    fingerprint: wordingFingerprint(wording, when),
    when,
    write: (revision) => writeEvent({ ...written, uid: uidOf(input.garden, event.key) }, revision),
  };
}

function wordingOf(
  event: Event,
  { clock, reader, link }: CalendarInput,
  rings: boolean,
): Omit<EventWording, "uid"> {
  return {
    title: event.title,
    text: reader ? event.readerText : event.text,
    link: link === null ? null : link(event),
    categories: event.categories,
    when: event.when,
    busy: event.busy,
    clock,
    remindMinutesBefore: rings ? event.remindMinutesBefore : null,
  };
}

function wordingFingerprint(wording: Omit<EventWording, "uid">, when: string): string {
  const { title, text, link, busy, clock, remindMinutesBefore, categories } = wording;
  const hours = wording.when.kind === "timed" ? clock : "";
  const rest = `${FORMAT_VERSION} ${when} ${hours} ${busy} ${remindMinutesBefore} ${link === null}`;
  return fingerprintOf([rest, title, text, link ?? "", ...categories]);
}

function whenOf(when: Event["when"]): string {
  return when.kind === "all day" ? `day ${when.day}` : `${when.from} to ${when.to}`;
}
