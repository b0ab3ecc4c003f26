const PLAIN = /^[\n -~\u00a0-\u2027\u202a-\ud7ff]*$/;
const LINE_ENDS = /\r\n|[\r\v\f\u0085\u2028\u2029]/g;
const UNSAFE = /\t|\ufeff|\p{Cs}|(?!\n)\p{Cc}/gu;
const ELLIPSIS = "\u2026";

/**
 * Text that may have several lines, made safe for a calendar: every kind of line end (CRLF, CR, vertical
 * tab, form feed, NEL, U+2028, U+2029) becomes \n, a tab a space, a lone surrogate U+FFFD; other control
 * characters and U+FEFF, which a reader may take for a byte order mark, go. What is already plain comes back unchanged; so does the empty text.
 * Source: RFC 5545, section 3.3.11 (TSAFE-CHAR) and section 3.1.4 (UTF-8, which has no surrogates).
 */
export function cleanText(text: string): string {
  if (PLAIN.test(text)) return text;
  return text.replace(LINE_ENDS, "\n").replace(UNSAFE, safeReplacement);
}

function safeReplacement(found: string): string {
  if (found === "\t") return " ";
  return /\p{Cs}/u.test(found) ? "\ufffd" : "";
}

/**
 * The same on one line: line ends become spaces, runs of spaces one, none stand at either end. May be empty.
 */
export function cleanLine(text: string): string {
  const clean = cleanText(text);
  return (/\n| {2}/.test(clean) ? clean.replace(/[ \n]+/g, " ") : clean).trim();
}

/**
 * A line of at most that many code points, cut between what a reader sees as characters and ended with an
 * ellipsis where something was cut. One that fits comes back unchanged.
 * Source: house rule; a lock screen shows about sixty characters.
 */
export function shortenLine(line: string, most: number): string {
  if (line.length <= most || [...line].length <= most) return line;
  let fitting = "";
  let used = 1;
  for (const { segment } of new Intl.Segmenter("en").segment(line)) {
    used += [...segment].length;
    if (used > most) break;
    fitting += segment;
  }
  return `${fitting.trimEnd()}${ELLIPSIS}`;
}

/**
 * A link as a URI: what may not stand in one is percent-encoded, what is already encoded stays.
 * Throws for a link without a scheme or with nothing after it.
 * Source: RFC 3986, sections 2 and 3.1; RFC 5545, section 3.3.13.
 */
export function cleanLink(link: string): string {
  if (!/^[a-z][a-z0-9+.-]*:./i.test(link)) throw new RangeError(`not a link: ${link}`);
  return link
    .replace(/\p{Cs}/gu, "\ufffd")
    .replace(/%(?![0-9A-Fa-f]{2})|[^\w.~:/?#[\]@!$&'()*+,;=%-]/gu, encodeURIComponent);
}
