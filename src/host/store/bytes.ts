import { gunzipSync, gzipSync } from "node:zlib";

/** How hard gzip tries, 1 to 9. Source: house rule; 4 takes six tenths of the time of the usual 6 for a fifteenth more bytes. */
const LEVEL = 4;

/** A text as the store keeps it: gzipped, as base64, since the platform gives blobs back as arrays of numbers. */
export function pack(text: string): string {
  return gzipSync(text, { level: LEVEL }).toString("base64");
}

/** The text again. Throws for what `pack` did not make. */
export function unpack(packed: string): string {
  return gunzipSync(gzipped(packed)).toString("utf8");
}

/** Characters of base64 that hold the last eight bytes of gzip, whatever stands as padding. */
const TAIL = 12;

/**
 * Whether a packed text, or its last twelve characters alone, ends as the packing of `size` plain bytes does: what was
 * cut short does not. Source: RFC 1952, section 2.3.1; gzip ends with the size it unpacks to.
 */
export function endsWhole(packed: string, size: number): boolean {
  const end = Buffer.from(packed.slice(-TAIL), "base64");
  return end.length >= 4 && end.readUInt32LE(end.length - 4) === size;
}

/** What was kept as JSON; null where nothing was, or where it can't be read, as when it was cut short. */
export function parseStoredJson<Kept>(json: string | null): Kept | null {
  try {
    return json === null ? null : JSON.parse(json);
  } catch {
    return null;
  }
}

/** The gzipped bytes themselves, to be sent as they are. */
export function gzipped(packed: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(Buffer.from(packed, "base64"));
}
