import { faultsOf, readStrictly, type StrictEvent, type StrictFeed } from "./strict.ts";

/** The validators a reader sends: header names in lower case, no header for none. */
export type Ask = Readonly<Record<string, string>>;

/** What a server answers: status, validators as their headers say them, and the body (empty with 304). */
export type Answer = {
  readonly status: number;
  readonly etag: string | null;
  readonly lastModified: string | null;
  readonly bytes: Uint8Array;
};

/** What a reader keeps between two readings: its events by UID, and the validators it was last given. */
export type Kept = {
  readonly shown: ReadonlyMap<string, StrictEvent>;
  readonly etag: string | null;
  readonly lastModified: string | null;
};

/**
 * A model of a calendar program that follows a feed. `take` gives what it keeps after an answer. It throws
 * where the body is a calendar with a fault, since what a program does then is not modelled.
 */
export type Reader = {
  readonly name: string;
  readonly ask: (kept: Kept) => Ask;
  readonly take: (kept: Kept, answer: Answer) => Kept;
};

/** A reader's memory before its first reading. */
export const NOTHING_KEPT: Kept = { shown: new Map(), etag: null, lastModified: null };

/**
 * GNOME Calendar and Evolution. Sends the ETag alone. An event is replaced only where DTSTAMP,
 * LAST-MODIFIED or SEQUENCE differ from the kept one's; what vanished is removed, except that a calendar
 * without an event changes nothing. A body that is no calendar empties it and leaves the old ETag.
 * Source: evolution-data-server, e-cal-cache.c (ecc_dup_component_revision), and runs of 3.46.
 */
export const gnome: Reader = {
  name: "GNOME",
  ask: ({ etag }) => (etag === null ? {} : { "if-none-match": etag }),
  take: (kept, answer) => {
    if (answer.status !== 200) return kept;
    if (!isCalendar(answer.bytes)) return { ...kept, shown: new Map() };
    const validators = { etag: answer.etag, lastModified: answer.lastModified };
    if (!hasEvent(answer.bytes)) return { ...kept, ...validators };
    const isSame = (old: StrictEvent, now: StrictEvent) =>
      old.stamp === now.stamp && old.sequence === now.sequence;
    return { shown: merged(kept, answer, isSame), ...validators };
  },
};

/**
 * ICSx5 on Android. Sends ETag and date. An event it has is skipped unless LAST-MODIFIED is greater than
 * the kept one's; what vanished is removed by UID. A body that is no calendar is an error and changes nothing.
 * Source: bitfireAT/icsx5, ProcessEventsTask.kt.
 */
export const icsx5: Reader = {
  name: "ICSx5",
  ask: ({ etag, lastModified }) => ({
    ...(etag === null ? {} : { "if-none-match": etag }),
    ...(lastModified === null ? {} : { "if-modified-since": lastModified }),
  }),
  take: (kept, answer) => {
    if (answer.status !== 200 || !isCalendar(answer.bytes)) return kept;
    const isSame = (old: StrictEvent, now: StrictEvent) => now.stamp <= old.stamp;
    const { etag, lastModified } = answer;
    return {
      shown: hasEvent(answer.bytes) ? merged(kept, answer, isSame) : new Map(),
      etag,
      lastModified,
    };
  },
};

/**
 * A reader that sends If-Modified-Since alone and takes every body whole, as Thunderbird does where no
 * ETag is given. HTTP dates count whole seconds.
 * Source: RFC 9110, sections 5.6.7 and 13.1.3.
 */
export const dated: Reader = {
  name: "If-Modified-Since alone",
  ask: ({ lastModified }): Ask =>
    lastModified === null ? {} : { "if-modified-since": lastModified },
  take: (kept, answer) => {
    if (answer.status !== 200) return kept;
    const { etag, lastModified, bytes } = answer;
    const shown = isCalendar(bytes) && hasEvent(bytes) ? byUid(bytes) : new Map();
    return { shown, etag, lastModified };
  },
};

/** The three, each biting where the others don't. */
export const READERS: readonly Reader[] = [gnome, icsx5, dated];

/** Events of a feed by UID; what a reader shows should equal it after each reading. */
export function byUid(bytes: Uint8Array): ReadonlyMap<string, StrictEvent> {
  return new Map(read(bytes).events.map((event) => [event.uid, event]));
}

function merged(
  kept: Kept,
  answer: Answer,
  isSame: (old: StrictEvent, now: StrictEvent) => boolean,
): ReadonlyMap<string, StrictEvent> {
  const now = [...byUid(answer.bytes)];
  return new Map(
    now.map(([uid, event]) => {
      const old = kept.shown.get(uid);
      return [uid, old !== undefined && isSame(old, event) ? old : event];
    }),
  );
}

function isCalendar(bytes: Uint8Array): boolean {
  return beginsWith(bytes, "BEGIN:VCALENDAR");
}

function hasEvent(bytes: Uint8Array): boolean {
  return !faultsOfCalendar(bytes).includes("no-component");
}

function beginsWith(bytes: Uint8Array, text: string): boolean {
  return new TextDecoder().decode(bytes.subarray(0, text.length)) === text;
}

/** Feeds read, by the very bytes given: several readers of one body read it once. A memo, nothing more. */
const feeds = new WeakMap<Uint8Array, StrictFeed>();

function read(bytes: Uint8Array): StrictFeed {
  const feed = feeds.get(bytes) ?? readStrictly(bytes);
  feeds.set(bytes, feed);
  return feed;
}

function faultsOfCalendar(bytes: Uint8Array): readonly string[] {
  return feeds.has(bytes) ? [] : faultsOf(bytes).map((fault) => fault.code);
}
