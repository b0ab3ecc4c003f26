import { MS_PER_DAY } from "../../base/index.ts";
import type { Event } from "../events/event.ts";
import { type EventWording, writeEvent } from "./event-text.ts";
import { fingerprintOf } from "./fingerprint.ts";
import { headAndFoot } from "./head.ts";
import { advanceLedger, type Ledger, type LedgerEvent } from "./ledger.ts";
import { uidOf } from "./uid.ts";

/** Raised when the way an event is written changes, so that every event is written anew. */
const FORMAT_VERSION = 1;

/**
 * One feed to be written: the garden's id, the name a calendar shows, the events chosen, in any order, and how they are
 * written. `link` gives an event's own page; null leaves links out. `cause` is the instant [ms since 1970 UTC] of the
 * newest reason for a change; `ledger` is null for a feed never written.
 */
export type CalendarInput = {
  readonly garden: string;
  readonly name: string;
  readonly events: readonly Event[];
  readonly quiet: boolean;
  readonly reader: boolean;
  readonly link: ((event: Event) => string) | null;
  readonly cause: number;
  readonly ledger: Ledger | null;
};

/**
 * The calendar's text and its new ledger. Events are ordered by start day (in UTC), then key; each is written alone,
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
  const ledgerEvents = inCalendarOrder(input.events).map((event) => ledgerEventOf(event, input));
  const { ledger, texts } = advanceLedger(ledgerEvents, input.cause, input.ledger);
  const { head, foot } = headAndFoot(input.name);
  return { text: head + texts.join("") + foot, ledger };
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

function ledgerEventOf(event: Event, input: CalendarInput): LedgerEvent {
  const wording = wordingOf(event, input);
  const when = whenOf(event.when);
  return {
    key: event.key,
    fingerprint: wordingFingerprint(wording, when),
    when,
    write: (revision) => writeEvent({ ...wording, uid: uidOf(input.garden, event.key) }, revision),
  };
}

function wordingOf(
  event: Event,
  { quiet, reader, link }: CalendarInput,
): Omit<EventWording, "uid"> {
  return {
    title: event.title,
    text: reader ? event.readerText : event.text,
    link: link === null ? null : link(event),
    categories: event.categories,
    when: event.when,
    busy: event.busy,
    remindMinutesBefore: quiet ? null : event.remindMinutesBefore,
  };
}

function wordingFingerprint(wording: Omit<EventWording, "uid">, when: string): string {
  const { title, text, link, busy, remindMinutesBefore, categories } = wording;
  const rest = `${FORMAT_VERSION} ${when} ${busy} ${remindMinutesBefore} ${link === null}`;
  return fingerprintOf([rest, title, text, link ?? "", ...categories]);
}

function whenOf(when: Event["when"]): string {
  return when.kind === "all day" ? `day ${when.day}` : `${when.from} to ${when.to}`;
}
