import { gunzipSync, gzipSync } from "node:zlib";

/** A text as the store keeps it: gzipped, as base64, since the platform gives blobs back as arrays of numbers. */
export function pack(text: string): string {
  return gzipSync(text).toString("base64");
}

/** The text again. Throws for what `pack` did not make. */
export function unpack(packed: string): string {
  return gunzipSync(gzipped(packed)).toString("utf8");
}

/** The gzipped bytes themselves, to be sent as they are. */
export function gzipped(packed: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(Buffer.from(packed, "base64"));
}
