/** A day (days since 1970) or an instant [ms since 1970 UTC]. */
export type Moment =
  | { readonly kind: "date"; readonly day: number }
  | { readonly kind: "instant"; readonly at: number };

const DURATION = /^([+-]?)P(?:(\d+)W|(?:(\d+)D)?(?:T(?=\d)(?:(\d+)H)?(?:(\d+)M)?(?:(\d+)S)?)?)$/;

/**
 * A DATE (`20270506`) or a UTC DATE-TIME (`20270506T080000Z`), or the name of what is wrong with it.
 * Source: RFC 5545, sections 3.3.4 and 3.3.5.
 */
export function momentOf(value: string, isDate: boolean): Moment | string {
  const found = /^(\d{4})(\d{2})(\d{2})(?:T(\d{2})(\d{2})(\d{2})(Z?))?$/.exec(value);
  if (found === null) return "not-a-date";
  const [year = 0, month = 0, date = 0, hour = 0, minute = 0, second = 0] = found
    .slice(1, 7)
    .map((part) => (part === undefined ? 0 : Number(part)));
  const hasTime = found[4] !== undefined;
  if (isDate && hasTime) return "not-a-date";
  if (!isDate && !hasTime) return "date-without-value";
  const at = Date.UTC(year, month - 1, date, hour, minute, second);
  const back = new Date(at).toISOString().replace(/\D/g, "").slice(0, 14);
  if (back !== value.replace(/\D/g, "").padEnd(14, "0")) return "impossible-date";
  if (hasTime && found[7] !== "Z") return "floating-time";
  return isDate ? { kind: "date", day: at / 86_400_000 } : { kind: "instant", at };
}

/** A duration in seconds, negative where it says so; null where it is none. Source: RFC 5545, section 3.3.6. */
export function secondsOf(value: string): number | null {
  const found = DURATION.exec(value);
  if (found === null || /^[+-]?PT?$/.test(value)) return null;
  const [weeks = 0, days = 0, hours = 0, minutes = 0, seconds = 0] = found
    .slice(2)
    .map((part) => Number(part ?? 0));
  const size = ((weeks * 7 + days) * 24 + hours) * 3600 + minutes * 60 + seconds;
  return found[1] === "-" ? -size : size;
}

/** The name of what is wrong with a TEXT value, or null. `list`: commas part it. Source: RFC 5545, section 3.3.11. */
export function textFault(value: string, list = false): string | null {
  const bare = value.replace(/\\[\\;,nN]/g, "");
  if (bare.includes("\\")) return "bad-escape";
  if (bare.includes(";")) return "unescaped-semicolon";
  return bare.includes(",") && !list ? "unescaped-comma" : null;
}

/** What a TEXT value says. */
export function plainOf(value: string): string {
  return value.replace(/\\([\\;,nN])/g, (_, mark: string) => (/n/i.test(mark) ? "\n" : mark));
}
