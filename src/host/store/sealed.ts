import { crc32 } from "node:zlib";

/** A check sum over the values of a row, in their order. Source: RFC 1952, section 8: CRC-32; it finds accidents, not intent. */
export function rowSum(values: readonly (string | number | null)[]): number {
  return crc32(JSON.stringify(values));
}

/** A check sum over bytes. */
export function bytesSum(bytes: Uint8Array): number {
  return crc32(bytes);
}

/** A value as JSON with its check sum on a line of its own. */
export function seal(value: unknown): string {
  const json = JSON.stringify(value);
  return `${json}\n${crc32(json).toString(16)}`;
}

/**
 * A sealed value again; null where nothing was stored, or where what is stored is not what was sealed. JSON from before there were seals
 * has no line end, and counts as it is.
 */
export function unseal<Stored>(sealed: string | null): Stored | null {
  if (sealed === null) return null;
  const end = sealed.lastIndexOf("\n");
  const json = end < 0 ? sealed : sealed.slice(0, end);
  if (end >= 0 && crc32(json).toString(16) !== sealed.slice(end + 1)) return null;
  try {
    return JSON.parse(json);
  } catch {
    return null;
  }
}

/** A sealed value for a page. Throws where it can't be read: whoever wanted it mends the store first (`store/damage.ts`). */
export function readable<Stored>(sealed: string): Stored {
  const value = unseal<Stored>(sealed);
  if (value === null) throw new Error("a stored value can't be read");
  return value;
}

/** An instant that was stored [ms since 1970 UTC]; one that no calendar has, as after damage, is 0. */
export function storedInstant(at: number): number {
  return at >= 0 && at < LAST_MS ? at : 0;
}

/** The end of the year 2285 [ms since 1970 UTC]: later instants are none of ours. */
const LAST_MS = 1e13;
