import { Buffer } from "node:buffer";

/** Something wrong in a feed: a stable name, the physical line it stands on (from 1), and what stands there. */
export type Fault = { readonly code: string; readonly line: number; readonly is: string };

/** A content line, unfolded and decoded, with the physical line it begins on (from 1). */
export type Line = { readonly line: number; readonly text: string };

const MOST_BYTES = 1_000_000;
const MOST_OCTETS = 75;

type Raw = { readonly line: number; readonly octets: string };

/**
 * A feed's bytes as content lines, and every fault of bytes, line ends, folds and characters. Goes on as
 * far as it can, so that one fault is told once.
 * Source: RFC 5545, sections 3.1, 3.1.4 and 3.4.
 */
export function linesOf(bytes: Uint8Array): {
  readonly lines: readonly Line[];
  readonly faults: readonly Fault[];
} {
  const faults: Fault[] = [];
  const tell = (code: string, line: number, is: string) => faults.push({ code, line, is });
  if (bytes.length === 0) tell("empty-body", 1, "nothing");
  if (bytes.length > MOST_BYTES) tell("too-big", 1, `${bytes.length} bytes`);
  const octets = withoutMark(octetsOf(bytes), tell);
  if (/^\s*</.test(octets)) {
    tell("html-body", 1, octets.slice(0, 40));
    return { lines: [], faults };
  }
  const physical = physicalLines(octets, tell);
  for (const { line, octets } of physical) {
    if (octets === "") tell("empty-line", line, "an empty line");
    if (octets.length > MOST_OCTETS) tell("line-too-long", line, `${octets.length} octets`);
  }
  return { lines: unfolded(physical, tell), faults };
}

type Tell = (code: string, line: number, is: string) => void;

/** One letter for each byte, so that lines and folds are counted in octets. */
function octetsOf(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString("latin1");
}

function withoutMark(octets: string, tell: Tell): string {
  if (!octets.startsWith("\u00ef\u00bb\u00bf")) return octets;
  tell("byte-order-mark", 1, "EF BB BF");
  return octets.slice(3);
}

function physicalLines(octets: string, tell: Tell): readonly Raw[] {
  const parts = octets.split("\n");
  const last = parts.pop() ?? "";
  if (last !== "") {
    parts.push(last);
    tell("no-final-crlf", parts.length, last.slice(-20));
  }
  return parts.map((part, index) => {
    const line = index + 1;
    const closed = part.endsWith("\r");
    if (!closed && !(last !== "" && line === parts.length)) tell("bare-lf", line, part.slice(-20));
    const inner = closed ? part.slice(0, -1) : part;
    if (inner.includes("\r")) tell("bare-cr", line, "a CR inside the line");
    return { line, octets: inner.replaceAll("\r", "") };
  });
}

function unfolded(physical: readonly Raw[], tell: Tell): readonly Line[] {
  const groups: Raw[][] = [];
  for (const raw of physical) {
    const group = groups.at(-1);
    if (!/^[ \t]/.test(raw.octets)) groups.push([raw]);
    else if (group !== undefined) group.push({ ...raw, octets: raw.octets.slice(1) });
    else tell("fold-without-line", raw.line, "a fold before any line");
  }
  return groups.flatMap((group) => {
    const line = group[0]?.line ?? 1;
    const text = decoded(group.map((raw) => raw.octets).join(""));
    if (text === null) tell("not-utf-8", line, "bytes that are no UTF-8");
    else checkCharacters(group, text, tell);
    return text === null || text === "" ? [] : [{ line, text }];
  });
}

function checkCharacters(group: readonly Raw[], text: string, tell: Tell): void {
  const cut = group.find((raw) => decoded(raw.octets) === null);
  if (cut !== undefined) tell("fold-inside-character", cut.line, "a fold inside a character");
  const found = /(?!\t)[\p{Cc}\p{Zl}\p{Zp}]/u.exec(text);
  const code = found?.[0].charCodeAt(0).toString(16);
  if (found) tell("control-character", group[0]?.line ?? 1, `U+${code?.padStart(4, "0")}`);
}

const UTF_8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
const ASCII = /^[\0-\x7f]*$/;

function decoded(octets: string): string | null {
  if (ASCII.test(octets)) return octets;
  try {
    return UTF_8.decode(Buffer.from(octets, "latin1"));
  } catch {
    return null;
  }
}
