import { countFrom } from "./counts.ts";

/** Short and spoken ways to write a word, and the word. */
const SHORT: Readonly<Record<string, string>> = {
  w: "with",
  n: "and",
  dunno: "don't know",
  moisture: "rain",
  deg: "degrees",
  min: "min",
  max: "max",
  avg: "average",
  yr: "year",
  yrs: "years",
  wk: "week",
  wks: "weeks",
  hrs: "hours",
  arvo: "afternoon",
  em: "them",
  "'em": "them",
  yest: "yesterday",
  tmrw: "tomorrow",
  tomorow: "tomorrow",
  approx: "about",
  approximately: "about",
  roughly: "about",
  temp: "temperature",
  precipitation: "rain",
  mil: "mm",
  mils: "mm",
  millimetres: "mm",
  millimeters: "mm",
  dont: "don't",
  doesnt: "doesn't",
  didnt: "didn't",
  isnt: "isn't",
  arent: "aren't",
  wasnt: "wasn't",
  havent: "haven't",
  hasnt: "hasn't",
  cant: "can't",
  couldnt: "couldn't",
  wont: "won't",
  ive: "i've",
  weve: "we've",
  flowring: "flowering",
  floweing: "flowering",
  germinatd: "germinated",
  transplantd: "transplanted",
  wkend: "weekend",
  hardned: "hardened",
  tassles: "tassels",
  tho: "though",
  thru: "through",
  pcs: "plants",
};

/** Signs that dictation writes as words. */
const SPOKEN: readonly (readonly [RegExp, string])[] = [
  [/ (?:full stop|period)\b/g, "."],
  [/ comma\b/g, ","],
  [/ question mark\b/g, "?"],
  [/(?<![\d.])\.(?=\d)/g, "0."],
  [/\bminus (?=\d)/g, "-"],
  [/\bminus (one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen)\b/g, "-$1"],
  [/\bw\/(?=[ \p{L}])/gu, "with"],
  [/\b(batch|lot|sowing|round) (\d{1,2}) of \d{1,2}\b/g, "$1 $2"],
  [/ new line\b/g, "."],
  [/^new line /, ""],
];

/** `-four` in figures. */
function inFigures(text: string): string {
  return text.replace(/(?<=-)[a-z]+/g, (word) => {
    const count = countFrom(word);
    return count === null || word === "a" || word === "an" ? word : String(count);
  });
}

/** `one point five` in figures. */
function withPoints(text: string): string {
  return text.replace(/\b([a-z]+) point ([a-z]+)\b/g, (said, whole: string, part: string) => {
    const [before, behind] = [countFrom(whole), countFrom(part)];
    return before === null || behind === null ? said : `${before}.${behind}`;
  });
}

const WORD = /'?[\p{L}][\p{L}']*\.?/gu;

/** A line of small letters with each word spelt as the readers know it. */
export function spelledOut(text: string): string {
  const said = SPOKEN.reduce(
    (now, [pattern, sign]) => now.replace(pattern, sign),
    withPoints(text),
  );
  return inFigures(said).replace(WORD, (word) => {
    const bare = word.replace(/\.$/, "");
    const known = Object.hasOwn(SHORT, bare) ? SHORT[bare] : undefined;
    return known === undefined ? word : known;
  });
}
