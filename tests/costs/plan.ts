/**
 * What the platform grants a day. Source: Cloudflare, "Workers: limits", "Durable Objects: limits" and "Durable Objects:
 * pricing", from memory in 2026; to be looked up again before anything is built on them.
 */
export const FREE = {
  requestsADay: 100_000,
  objectRequestsADay: 100_000,
  gigabyteSecondsADay: 13_000,
  rowsReadADay: 5_000_000,
  rowsWrittenADay: 100_000,
  bytes: 5e9,
} as const;

/** A month of the paid plan: what its fee holds, and the price of more [US dollars a million, storage a GB]. Source: as FREE. */
export const PAID = {
  fee: 5,
  requests: { held: 10e6, aMillion: 0.3 },
  cpuMs: { held: 30e6, aMillion: 0.02 },
  objectRequests: { held: 1e6, aMillion: 0.15 },
  gigabyteSeconds: { held: 400_000, aMillion: 12.5 },
  rowsRead: { held: 25e9, aMillion: 0.001 },
  rowsWritten: { held: 50e6, aMillion: 1 },
  gigabytes: { held: 5, aGigabyte: 0.2 },
} as const;

/** Memory that every object is charged for while it runs [GB]. Source: as FREE. */
export const OBJECT_GIGABYTES = 0.128;

/**
 * A garden's day, as it is calculated with. Source: house rule: two people with four calendars that ask every hour, as GNOME's
 * does, every other of them keeping no validator over the night; a busy day of the season.
 */
export const DAY = {
  polls304: 92,
  polls200: 4,
  pages: 4,
  taps: 2,
  /** The day turns: the alarm rings, and the year is built anew. */
  turns: 1,
  saves: 0.1,
} as const;
