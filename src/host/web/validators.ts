/** How a body travels. */
export type Coding = "gzip" | "identity";

/**
 * The coding for what a client said it takes; identity where it said nothing, or where gzip has weight 0.
 * Source: RFC 9110, sections 8.4.1.3 and 12.5.3.
 */
export function codingFor(accepted: string | null): Coding {
  const weights = new Map<string, number>();
  for (const said of (accepted ?? "").toLowerCase().split(",")) {
    const [name = "", ...rest] = said.split(";").map((part) => part.trim());
    const weight = rest.find((part) => part.startsWith("q="))?.slice(2) ?? "1";
    weights.set(name === "x-gzip" ? "gzip" : name, Number(weight));
  }
  return (weights.get("gzip") ?? weights.get("*") ?? 0) > 0 ? "gzip" : "identity";
}

/** A strong entity tag, quotes included: of the bytes' print, the epoch and the coding. Source: RFC 9110, section 8.8.3.3. */
export function etagOf(fingerprint: string, epoch: string, coding: Coding): string {
  return `"${fingerprint}.${epoch}${coding === "gzip" ? ".gz" : ""}"`;
}

/** The tags of an If-None-Match, without their `W/`; malformed text gives what can be read of it. */
function tagsOf(header: string): readonly string[] {
  return header.match(/"[\x21\x23-\x7e\x80-\xff]*"/g) ?? [];
}

/** What a client says of the copy it has: the tags it named, and the date; null where it said nothing. */
export type Conditions = { readonly tags: string | null; readonly since: string | null };

/** The conditions that a request's headers set. */
export function conditionsOf(headers: Headers): Conditions {
  return { tags: headers.get("if-none-match"), since: headers.get("if-modified-since") };
}

/**
 * Whether what the client has is what it would get. If-None-Match is compared weakly and goes before
 * If-Modified-Since, even where only the latter fits; a date that can't be read, or is still to come, is no condition.
 * `now` and `lastModified` in ms since 1970 UTC, whole seconds. Source: RFC 9110, sections 13.1.2, 13.1.3 and 13.2.2.
 */
export function isNotModified(
  { tags, since }: Conditions,
  has: { readonly etag: string; readonly lastModified: number; readonly now: number },
): boolean {
  if (tags !== null) return tags.trim() === "*" || tagsOf(tags).includes(has.etag);
  const instant = Date.parse(since ?? "");
  return instant <= has.now + AHEAD_MS && has.lastModified <= instant;
}

/** Whether a client holds any copy at all, and the tag of it where it named exactly one. */
export function heldBy(headers: Headers): { readonly any: boolean; readonly etag: string | null } {
  const [first, ...more] = tagsOf(headers.get("if-none-match") ?? "");
  const any = headers.has("if-none-match") || headers.has("if-modified-since");
  return { any, etag: first !== undefined && more.length === 0 ? first : null };
}

/** Clocks may differ by so much [ms]; what lies further ahead came from a clock that ran ahead. Source: house rule. */
const AHEAD_MS = 86_400_000;

/**
 * When bytes that have just changed were last modified [ms, whole seconds]: now, and at least a second after the last
 * time, since a client counts in seconds. `before` null: they never were anything else. A last time far ahead of now does not
 * count.
 */
export function lastModifiedAt(now: number, before: number | null): number {
  const second = Math.floor(now / 1000) * 1000;
  return before === null || before > now + AHEAD_MS ? second : Math.max(second, before + 1000);
}
