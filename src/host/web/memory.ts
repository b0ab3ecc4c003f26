import type { FeedKey, Polled } from "../store/feeds.ts";

/**
 * As long as what a poll found in the store is good for the next [ms]. Source: house rule: a calendar asks by the hour and
 * never meets it, while one that asks a thousand times a second costs one query a second; and a link that was revoked
 * elsewhere is closed a second later.
 */
const GOOD_FOR_MS = 1000;

/** Feeds remembered at most, the oldest forgotten first: a few megabytes of bodies. */
const MOST = 100;

/** What polls have found of late, by feed; one an isolate. Nothing in it belongs to a request. */
export type Memory = Map<string, { readonly at: number; readonly polled: Polled }>;

const nameOf = ({ garden, link, feed }: FeedKey) => `${garden}/${link}/${feed}`;

/**
 * What was found of a feed less than a second before `now`, where that is enough to answer: with its body, or to a client
 * that holds it (by its print); else null.
 */
export function recall(
  memory: Memory,
  key: FeedKey,
  { now, held }: { readonly now: number; readonly held: string | null },
): Polled | null {
  const known = memory.get(nameOf(key));
  if (!known || now - known.at >= GOOD_FOR_MS || now < known.at) return null;
  const { stored } = known.polled;
  return stored !== null && (stored.packed !== null || stored.print === held) ? known.polled : null;
}

/** Keeps what was found of a feed at an instant [ms]. */
export function cachePoll(memory: Memory, key: FeedKey, polled: Polled, at: number): void {
  memory.delete(nameOf(key));
  memory.set(nameOf(key), { at, polled });
  const [oldest] = memory.keys();
  if (memory.size > MOST && oldest !== undefined) memory.delete(oldest);
}

/** Forgets every feed of a garden, since something of it was changed. */
export function forget(memory: Memory, garden: string): void {
  for (const name of memory.keys()) if (name.startsWith(`${garden}/`)) memory.delete(name);
}
