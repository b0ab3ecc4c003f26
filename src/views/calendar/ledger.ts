import { MS_PER_DAY } from "../../base/index.ts";

const SECOND = 1000;
const TOMBSTONE_MS = 400 * MS_PER_DAY;
/** A stamp so far behind the cause's is no clock's error of seconds: it came from a clock that ran ahead. Source: house rule. */
const AHEAD_MS = 7 * MS_PER_DAY;

/**
 * What a feed last published of one event. `fingerprint` is of everything in it, `when` of its days and times only.
 * `stamp` [ms since 1970 UTC, whole seconds] is the instant it last changed. `text` is its written form; null where the
 * event is gone, kept so that a return never goes back in stamp or sequence.
 */
export type LedgerEntry = {
  readonly fingerprint: string;
  readonly sequence: number;
  readonly stamp: number;
  readonly when: string;
  readonly text: string | null;
};

/** The ledger of one feed, by event key, keys sorted. A feed that was never written has none (null). */
export type Ledger = { readonly entries: Readonly<Record<string, LedgerEntry>> };

/** A ledger as it may be stored: entries written before they were called fingerprints have a `print`. */
export type StoredLedger = {
  readonly entries: Readonly<
    Record<string, Omit<LedgerEntry, "fingerprint"> & { fingerprint?: string; print?: string }>
  >;
};

/** A stored ledger in today's form; reading changes no revision. */
export function readLedger({ entries }: StoredLedger): Ledger {
  const read: Record<string, LedgerEntry> = {};
  for (const [key, { fingerprint, print, ...rest }] of Object.entries(entries))
    read[key] = { fingerprint: fingerprint ?? print ?? "", ...rest };
  return { entries: read };
}

/** The revision of an event: how often its times have changed, and when [ms] anything last did. */
export type Revision = { readonly sequence: number; readonly stamp: number };

/** One event to be written: its key, fingerprint, and how it is written once its revision is known. */
export type LedgerEvent = {
  readonly key: string;
  readonly fingerprint: string;
  readonly when: string;
  readonly write: (revision: Revision) => string;
};

/** An instant [ms since 1970 UTC] cut to its whole second, which is all a calendar can say. */
export function wholeSecond(instant: number): number {
  return Math.floor(instant / SECOND) * SECOND;
}

/**
 * The ledger after writing these events. An unchanged event keeps its entry with its text. A changed one gets the later
 * of the cause and its old stamp plus one second, because two changes within one second are invisible to GNOME and to
 * ICSx5; its sequence rises only where days or times changed. An event that is gone stays as a tombstone for 400 days
 * of causes. A stamp days ahead of the cause was given by a clock that ran ahead: it comes back to the cause, and the sequence
 * rises, which a client looks at first. Writing the same again changes nothing. `cause` is the instant [ms] of the newest reason for a change.
 * Source: RFC 5545, sections 3.8.7.2 to 3.8.7.4; CalConnect, Recurrence Problems and Recommendations, 6.1.
 */
export function advanceLedger(
  events: readonly LedgerEvent[],
  cause: number,
  ledger: Ledger | null,
): { readonly ledger: Ledger; readonly texts: readonly string[] } {
  const now = wholeSecond(cause);
  const old = new Map(Object.entries(ledger?.entries ?? {}));
  const entries: [string, LedgerEntry][] = [];
  const texts = events.map((event) => {
    const { entry, text } = reviseEntry(event, now, old.get(event.key));
    old.delete(event.key);
    entries.push([event.key, entry]);
    return text;
  });
  for (const [key, entry] of old) {
    const gone = markDeleted(entry, now);
    if (gone.stamp >= now - TOMBSTONE_MS) entries.push([key, gone]);
  }
  entries.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return { ledger: { entries: Object.fromEntries(entries) }, texts };
}

function reviseEntry(
  { fingerprint, when, write }: LedgerEvent,
  now: number,
  old: LedgerEntry | undefined,
): { readonly entry: LedgerEntry; readonly text: string } {
  if (old !== undefined && old.text !== null && old.fingerprint === fingerprint) {
    return { entry: old, text: old.text };
  }
  const rises = old !== undefined && (old.when !== when || isAhead(old, now));
  const sequence = (old?.sequence ?? 0) + (rises ? 1 : 0);
  const stamp = old === undefined ? now : stampAfter(old, now);
  const text = write({ sequence, stamp });
  return { entry: { fingerprint, sequence, stamp, when, text }, text };
}

function markDeleted(entry: LedgerEntry, now: number): LedgerEntry {
  if (entry.text === null && !isAhead(entry, now)) return entry;
  const sequence = entry.sequence + (isAhead(entry, now) ? 1 : 0);
  return { ...entry, sequence, stamp: stampAfter(entry, now), text: null };
}

const isAhead = ({ stamp }: LedgerEntry, now: number) => stamp > now + AHEAD_MS;

const stampAfter = (old: LedgerEntry, now: number) =>
  isAhead(old, now) ? now : Math.max(now, old.stamp + SECOND);
