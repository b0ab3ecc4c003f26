import { createHash } from "node:crypto";

/**
 * The UID of a garden's event: a UUID made of the garden's id and the event's key alone, so that it stays
 * the same when the event moves or is renamed, and tells nobody a title, a person or a host. Lower case.
 * Source: RFC 5545, section 3.8.4.7; RFC 7986, section 5.3; RFC 9562, section 5.8 (version 8, own making).
 */
export function uidOf(garden: string, key: string): string {
  const hex = createHash("sha256").update(`${garden}\n${key}`).digest("hex");
  const variant = VARIANT[Number.parseInt(hex.charAt(16), 16) & 3];
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

const VARIANT = ["8", "9", "a", "b"] as const;
