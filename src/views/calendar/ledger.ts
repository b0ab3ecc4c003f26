const SECOND = 1000;
const TOMBSTONE_MS = 400 * 86_400_000;

/**
 * What a feed last told of one event. `print` stands for everything told, `when` for its days and times
 * alone. `stamp` [ms since 1970 UTC, whole seconds] is the instant it last changed. `text` is its written
 * form; null where the event is gone, kept so that a return never goes back in stamp or sequence.
 */
export type Entry = {
  readonly print: string;
  readonly sequence: number;
  readonly stamp: number;
  readonly when: string;
  readonly text: string | null;
};

/** The ledger of one feed, by event key, keys sorted. A feed that was never written has none (null). */
export type Ledger = { readonly entries: Readonly<Record<string, Entry>> };

/** Which state of an event is told: how often its times have changed, and when [ms] anything last did. */
export type Revision = { readonly sequence: number; readonly stamp: number };

/** One event to be told: its key, prints, and how it is written once its revision is known. */
export type Telling = {
  readonly key: string;
  readonly print: string;
  readonly when: string;
  readonly write: (revision: Revision) => string;
};

/** An instant [ms since 1970 UTC] cut to its whole second, which is all a calendar can say. */
export function wholeSecond(instant: number): number {
  return Math.floor(instant / SECOND) * SECOND;
}

/**
 * The ledger after telling these events. What is unchanged keeps its entry, text included. What changed
 * gets the later of the cause and its old stamp plus one second, since two changes within one second are
 * invisible to GNOME and to ICSx5; its sequence rises only where days or times changed. What is gone
 * stays as a tombstone for 400 days of causes. Telling the same again changes nothing.
 * `cause` is the instant [ms] of the newest reason for a change.
 * Source: RFC 5545, sections 3.8.7.2 to 3.8.7.4; CalConnect, Recurrence Problems and Recommendations, 6.1.
 */
export function advance(
  tellings: readonly Telling[],
  cause: number,
  ledger: Ledger | null,
): { readonly ledger: Ledger; readonly texts: readonly string[] } {
  const now = wholeSecond(cause);
  const old = new Map(Object.entries(ledger?.entries ?? {}));
  const entries: [string, Entry][] = [];
  const texts = tellings.map((telling) => {
    const { entry, text } = tell(telling, now, old.get(telling.key));
    old.delete(telling.key);
    entries.push([telling.key, entry]);
    return text;
  });
  for (const [key, entry] of old) {
    const gone = buried(entry, now);
    if (gone.stamp >= now - TOMBSTONE_MS) entries.push([key, gone]);
  }
  entries.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  return { ledger: { entries: Object.fromEntries(entries) }, texts };
}

function tell(
  { print, when, write }: Telling,
  now: number,
  old: Entry | undefined,
): { readonly entry: Entry; readonly text: string } {
  if (old !== undefined && old.text !== null && old.print === print) {
    return { entry: old, text: old.text };
  }
  const stamp = old === undefined ? now : Math.max(now, old.stamp + SECOND);
  const sequence = old === undefined ? 0 : old.sequence + (old.when === when ? 0 : 1);
  const text = write({ sequence, stamp });
  return { entry: { print, sequence, stamp, when, text }, text };
}

function buried(entry: Entry, now: number): Entry {
  if (entry.text === null) return entry;
  return { ...entry, stamp: Math.max(now, entry.stamp + SECOND), text: null };
}
