/** Letters of a failure's number: no two that are read for each other. Source: RFC 4648, section 6, in lower case. */
const LETTERS = "abcdefghijklmnopqrstuvwxyz234567";

/** Letters of a message that are logged. */
const MOST_LETTERS = 500;

/** A number for one failure, which the log has and whoever met it is shown: `k7q2-x4mb`. */
function failureNumber(): string {
  const letters = [...crypto.getRandomValues(new Uint8Array(8))].map((each) => LETTERS[each & 31]);
  return `${letters.slice(0, 4).join("")}-${letters.slice(4).join("")}`;
}

/** The code in a link, 43 letters of base64url, wherever it stands. */
const LINK_CODE = /[A-Za-z0-9_-]{40,}/g;

/**
 * Logs a failure as one line of JSON and gives its number: what failed, the garden, what was thrown and where in the code. A link's code is left
 * out, wherever it stands, since a link is a key.
 */
export function logFailure(failed: string, error: unknown, garden: string | null = null): string {
  const number = failureNumber();
  const said = error instanceof Error ? error.message : String(error);
  const where = error instanceof Error ? (error.stack?.split("\n    at ")[1] ?? null) : null;
  const line = JSON.stringify({ number, failed, garden, said: said.slice(0, MOST_LETTERS), where });
  console.error(line.replaceAll(LINK_CODE, "…"));
  return number;
}
