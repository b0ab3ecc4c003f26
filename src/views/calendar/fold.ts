import { foldLines } from "ical-generator";

/** The characters of a line (octets too where all are plain) before it continues on the next. */
const LONGEST = 74;

/** What is more than one octet, or no letter at all. */
const NOT_PLAIN = /[^ -~]/;

/**
 * Lines, ended by CRLF, folded to 74 octets beside the space that one goes on with, never inside a character: the same
 * as the library folds them. It goes character by character; plain lines, which are most, are cut by their length.
 * Source: RFC 5545, section 3.1.
 */
export function foldLongLines(lines: string): string {
  return lines
    .split("\r\n")
    .map((line) => (NOT_PLAIN.test(line) ? foldLines(line) : cutLine(line)))
    .join("\r\n");
}

function cutLine(line: string): string {
  let out = line.slice(0, LONGEST);
  for (let at = LONGEST; at < line.length; at += LONGEST)
    out += `\r\n ${line.slice(at, at + LONGEST)}`;
  return out;
}
