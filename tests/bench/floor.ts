import { createHash } from "node:crypto";
import type { Event } from "../../src/views/events/event.ts";

const ASCII = /^[ -~]*$/;

/**
 * The floor: one VEVENT as the plainest hand would write it. No library, no checks and no cleaning, so it
 * is right only for text without control characters and links that are URIs already. `stamp` is in ms.
 */
export function plainEvent(garden: string, event: Event, link: string, stamp: number): string {
  const title = escaped(event.title);
  const lines = [
    "BEGIN:VEVENT",
    `UID:${uid(garden, event.key)}`,
    "SEQUENCE:0",
    `DTSTAMP:${utc(stamp)}`,
    ...times(event.when),
    `SUMMARY:${title}`,
    `TRANSP:${event.busy ? "OPAQUE" : "TRANSPARENT"}`,
    `DESCRIPTION:${escaped(`${event.text}\n\n${link}`)}`,
    `CATEGORIES:${event.categories.map(escaped).join(",")}`,
    `LAST-MODIFIED:${utc(stamp)}`,
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `TRIGGER:-PT${before(event.remindMinutesBefore ?? 0)}`,
    `DESCRIPTION:${title}`,
    "END:VALARM",
    "END:VEVENT",
    "",
  ];
  return lines.map(folded).join("\r\n");
}

function times(when: Event["when"]): string[] {
  if (when.kind === "timed") return [`DTSTART:${utc(when.from)}`, `DTEND:${utc(when.to)}`];
  const date = (day: number) => utc(day * 86_400_000).slice(0, 8);
  return [`DTSTART;VALUE=DATE:${date(when.day)}`, `DTEND;VALUE=DATE:${date(when.day + 1)}`];
}

function utc(ms: number): string {
  const at = new Date(ms);
  const two = (n: number) => (n < 10 ? `0${n}` : `${n}`);
  const date = `${at.getUTCFullYear()}${two(at.getUTCMonth() + 1)}${two(at.getUTCDate())}`;
  return `${date}T${two(at.getUTCHours())}${two(at.getUTCMinutes())}${two(at.getUTCSeconds())}Z`;
}

function before(minutes: number): string {
  return minutes % 60 === 0 ? `${minutes / 60}H` : `${minutes}M`;
}

function uid(garden: string, key: string): string {
  const hex = createHash("sha256").update(`${garden}\n${key}`).digest("hex");
  const variant = "89ab".charAt(Number.parseInt(hex.charAt(16), 16) & 3);
  return `${hex.slice(0, 8)}-${hex.slice(8, 12)}-8${hex.slice(13, 16)}-${variant}${hex.slice(17, 20)}-${hex.slice(20, 32)}`;
}

function escaped(text: string): string {
  return text.replace(/[\\;,]/g, "\\$&").replace(/\n/g, "\\n");
}

/** At most 74 octets of text a line, never inside a code point; plain ASCII is cut by length. */
function folded(line: string): string {
  if (!ASCII.test(line)) return foldedByOctets(line);
  if (line.length <= 74) return line;
  let out = line.slice(0, 74);
  for (let at = 74; at < line.length; at += 74) out += `\r\n ${line.slice(at, at + 74)}`;
  return out;
}

function foldedByOctets(line: string): string {
  let out = "";
  let octets = 0;
  for (const char of line) {
    const code = char.codePointAt(0) ?? 0;
    const size = code < 0x80 ? 1 : code < 0x800 ? 2 : code < 0x10000 ? 3 : 4;
    octets += size;
    if (octets > 74) {
      out += "\r\n ";
      octets = size;
    }
    out += char;
  }
  return out;
}
