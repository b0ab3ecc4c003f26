import { NICKNAMES } from "./nicknames.ts";

const COUNT =
  "(?:about |some |both |all |the |our |my |its? |an? |another |few |last |rest |next year's |new )*";
const PIECES =
  "(?:rows?|plants?|m|metres?|ft|feet|foot|in|cm|lbs?|kg|pots?|trays?|cloves?|tubers?|sets?|slips?|crowns?|hills?|seeds?|punnets?|packs?|six-packs?|flats?|heads?|lot|batch)";
const AMOUNT = new RegExp(
  `^${COUNT}(?:(?:\\d+|two|three|four|five|six|eight|ten|twelve) ?)?${COUNT}(?:${PIECES} )?(?:of )?${COUNT}`,
);
const PARTS =
  / (?:seedlings?|seeds?|plants?|transplants?|starts|starters|plugs|sets|slips|cloves|vines|tubers|crowns|rows?|patch|shoots|bulbs)$/;

/** A name without parts of the plant behind it: `pea seedlings` is the peas. */
export function withoutParts(name: string): string {
  const plain = name.replace(/^(?:all )?(?:of )?(?:the|our|my) /, "");
  const whole = plain.replace(PARTS, "").replace(/^seed (?=potato|garlic)/, "");
  return Object.hasOwn(NICKNAMES, whole) ? (NICKNAMES[whole] ?? whole) : whole;
}

/**
 * The ways to read a name in work that was done: as it stands, then without its article and parts of the plant, then
 * without how much of it there was (`2 rows of peas`).
 */
export function meantNames(name: string): readonly string[] {
  const whole = withoutParts(name);
  const less = withoutParts(name.replace(AMOUNT, "").replace(/^the /, ""));
  return [...new Set([name, whole, less])].filter((each) => each !== "");
}
