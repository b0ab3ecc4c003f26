/**
 * What the platform grants and asks. Source: Cloudflare, "Workers: limits", "Workers: pricing", "D1: limits", "D1: pricing",
 * as published in 2026; to be looked up again before anything is built on them.
 */
export const FREE = {
  requestsADay: 100_000,
  cpuMsACall: 10,
  rowsReadADay: 5_000_000,
  rowsWrittenADay: 100_000,
  bytesADatabase: 500e6,
  bytes: 5e9,
} as const;

/** A month of the paid plan: what its fee holds, and the price of more [US dollars a million, storage a GB]. Source: as FREE. */
export const PAID = {
  fee: 5,
  requests: { held: 10e6, aMillion: 0.3 },
  cpuMs: { held: 30e6, aMillion: 0.02 },
  rowsRead: { held: 25e9, aMillion: 0.001 },
  rowsWritten: { held: 50e6, aMillion: 1 },
  gigabytes: { held: 5, aGigabyte: 0.75 },
  bytesADatabase: 10e9,
} as const;

/**
 * A garden's day, as it is reckoned with. Source: house rule: two people with four calendars that ask every hour, as GNOME's
 * does, every other of them keeping no validator over the night; a busy day of the season.
 */
export const DAY = {
  polls304: 92,
  polls200: 4,
  pages: 4,
  taps: 2,
  /** Days turn the horizon, and each feed is written anew. */
  renders: 1,
  saves: 0.1,
} as const;
