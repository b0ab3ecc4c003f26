import { editDistance, editDistanceWithin, type Problem } from "../../base/index.ts";
import { coverWords, fixtureWords, plantCoverOf } from "../../crops/index.ts";
import { diagnostic } from "./codes.ts";
import { PLANTED_PARTS } from "./planting-start.ts";
import { leafOf, sliceWords, type TreeEntry, type Words, wordsAt } from "./tree.ts";

/** One form that a part of a phrase can have: an example to offer, its pattern, and the keys it is turned into. */
type PhraseForm = {
  readonly like: string;
  readonly pattern: RegExp;
  /** For each key either the number of the pattern's group that holds its words, or the words themselves. */
  readonly keys: Readonly<Record<string, number | string | true>>;
};

const UNITS = "in|inch|inches|ft|foot|feet|yd|yards?|cm|m|metres?|meters?|[\"']";

const COVERS = coverWords("plants").join("|");

/** The example of what lies over it. */
const UNDER = "under a board";

const FIXTURES = fixtureWords().join("|");

/**
 * The forms that a planting's phrase is made of; each part between commas has one of them. The first that fits a part
 * wins.
 */
export const PHRASE_FORMS: readonly PhraseForm[] = [
  {
    like: "18 plants",
    pattern:
      /^(\d+) (?:(?:young |small )?plants?|slips?|runners?|trees?|bush(?:es)?|canes?|clumps?|heads?|vines?)$/i,
    keys: { plants: 1 },
  },
  { like: "60 cloves", pattern: /^(\d+) cloves?$/i, keys: { cloves: 1 } },
  { like: "60 sets", pattern: /^(\d+) sets?$/i, keys: { sets: 1 } },
  { like: "12 crowns", pattern: /^(\d+) crowns?$/i, keys: { crowns: 1 } },
  { like: "12 tubers", pattern: /^(\d+) (?:seed )?(?:tubers?|potatoes)$/i, keys: { tubers: 1 } },
  { like: "3 rows", pattern: /^(\d+) rows?$/i, keys: { rows: 1 } },
  {
    like: "10 ft",
    pattern: new RegExp(`^([\\d.,/½¼¾ ]+ ?(?:${UNITS}))(?: of row| row| long)?$`, "iu"),
    keys: { length: 1 },
  },
  { like: "72 days", pattern: /^(\d+ days?)(?: to harvest)?$/i, keys: { days: 1 } },
  {
    like: "from seed indoors",
    pattern: /^(?:(?:from |sown? )?(?:seed )?(?:sown )?(?:indoors|inside|under glass))$/i,
    keys: { from: "seed indoors" },
  },
  {
    like: "from seed outdoors",
    pattern:
      /^(?:(?:from |sown? )?(?:seed )?(?:sown )?(?:outdoors|outside|direct|in place|in the ground)|direct sown)$/i,
    keys: { from: "seed outdoors" },
  },
  { like: "from seed", pattern: /^(?:from )?seed$/i, keys: { from: "seed" } },
  {
    like: "bought",
    pattern: /^(?:bought|given|bought plants|bought in|from (?:bought )?plants|as plants)$/i,
    keys: { from: "plants" },
  },
  { like: "from tubers", pattern: /^from (?:seed )?tubers$/i, keys: { from: "tubers" } },
  { like: "winter-sown", pattern: /^winter[- ]sown$/i, keys: { from: "winter-sown" } },
  { like: "from sets", pattern: /^from sets$/i, keys: { from: "sets" } },
  { like: "from crowns", pattern: /^from crowns$/i, keys: { from: "crowns" } },
  { like: "from slips", pattern: /^from (?:slips|runners)$/i, keys: { from: "plants" } },
  { like: "like dill", pattern: /^like (?:an? |the )?(.+)$/i, keys: { like: 1 } },
  { like: "from cloves", pattern: /^from cloves$/i, keys: { from: "cloves" } },
  {
    like: "sprouted first",
    pattern: /^(?:sprouted|chitted|pre-?sprouted)(?: first)?$/i,
    keys: { "sprouted first": true },
  },
  {
    like: "harden off 7 days",
    pattern: /^harden(?:ed)?(?: off)?(?: for| over)? (\d+(?: days)?)$/i,
    keys: { "harden off": 1 },
  },
  { like: "not before 8 Jun", pattern: /^not before (.+)$/i, keys: { "not before": 1 } },
  {
    like: "in since 14 Oct 2026",
    pattern: /^(?:in(?: the ground)?|there) since (.+)$/i,
    keys: { "in since": 1 },
  },
  {
    like: "set out 8 Jun",
    pattern: /^(?:set|planted|plant) out (?:on )?(.+)$/i,
    keys: { "set out": 1 },
  },
  { like: "sow 14 May", pattern: /^(?:sow|sown) (?:on |in )?(.+)$/i, keys: { sow: 1 } },
  {
    like: "plant this October",
    pattern: /^(?:plant|planted) (?:on |in )?(.+)$/i,
    keys: { plant: 1 },
  },
  {
    like: "every 14 days",
    pattern: /^(?:again |sown? (?:again )?)?every (.+)$/i,
    keys: { every: 1 },
  },
  { like: "4 times", pattern: /^(\d+) (?:times|sowings)$/i, keys: { times: 1 } },
  {
    like: UNDER,
    pattern: new RegExp(
      `^(?:under|covered (?:with|by)) (?:an? |the )?((?:${COVERS})(?: and .+)?)$`,
      "i",
    ),
    keys: { under: 1 },
  },
  {
    like: "on a trellis",
    pattern: new RegExp(
      `^(?:on|up|with|in|against|along) (?:an? |the |its |their )?((?:${FIXTURES})(?: and .+)?)$`,
      "i",
    ),
    keys: { has: 1 },
  },
  {
    like: "mulched with straw",
    pattern: /^(?:mulched with|under a mulch of|mulch(?:ed)?:?) (.+)$/i,
    keys: { mulch: 1 },
  },
  { like: "mulched", pattern: /^mulched$/i, keys: { mulch: "mulch" } },
  {
    like: "cut and come again",
    pattern: /^(?:for |as )?(?:a )?cut[- ](?:and|&)[- ]come[- ]again(?: crop)?$/i,
    keys: { "cut and come again": true },
  },
  { like: "after the garlic", pattern: /^after (.+)$/i, keys: { after: 1 } },
  { like: "between the carrot rows", pattern: /^between (.+)$/i, keys: { between: 1 } },
  { like: "without weeding", pattern: /^without (.+)$/i, keys: { without: 1 } },
  { like: "for Imre", pattern: /^for (.+)$/i, keys: { for: 1 } },
  { like: "called second garlic", pattern: /^(?:called|named) (.+)$/i, keys: { name: 1 } },
  { like: "variety early red", pattern: /^variety (.+)$/i, keys: { variety: 1 } },
];

const NUMBERS: readonly string[] = ["plants", ...PLANTED_PARTS, "rows", "times"];

/**
 * A phrase such as `early red, 18 plants, sprouted first` as keys, each at its part's place. A first part that is not
 * understood and is no near miss is the variety. Problem: `unknown-word` for any other.
 */
export function phraseKeys(phrase: Words, problems: Problem[]): readonly TreeEntry[] {
  return pieces(phrase).flatMap((piece, index) => {
    const keys = entriesOfPiece(piece);
    if (keys) return keys;
    const near = nearMiss(piece.text);
    if (index === 0 && near === null && piece.text !== "")
      return [{ key: wordsAt("variety", piece.at), value: leafOf(piece) }];
    problems.push(unknownPiece(piece, near));
    return [];
  });
}

/** Parts between commas; a comma before a year (`May 14, 2027`) is not a separator. */
function pieces(phrase: Words): readonly Words[] {
  const found: Words[] = [];
  let from = 0;
  for (const hit of phrase.text.matchAll(/[,;](?!\d)(?! *\d{4}(?: *[,;]|$))/g)) {
    found.push(sliceWords(phrase, from, hit.index));
    from = hit.index + 1;
  }
  return [...found, sliceWords(phrase, from)];
}

function entriesOfPiece(piece: Words): readonly TreeEntry[] | null {
  for (const { pattern, keys } of PHRASE_FORMS) {
    const hit = pattern.exec(piece.text);
    if (hit) return Object.entries(keys).map(([key, from]) => entry(key, from, { piece, hit }));
  }
  return null;
}

type PhraseMatch = { readonly piece: Words; readonly hit: RegExpExecArray };

function entry(key: string, from: number | string | true, { piece, hit }: PhraseMatch): TreeEntry {
  const named = wordsAt(key, piece.at);
  if (from === true) return { key: named, value: leafOf(piece, true) };
  if (typeof from === "string") return { key: named, value: leafOf({ ...piece, text: from }) };
  const text = hit[from] ?? "";
  const start = Math.max(0, piece.text.indexOf(text, from === 1 ? offsetOf(hit, text) : 0));
  const words = sliceWords(piece, start, start + text.length);
  return { key: named, value: NUMBERS.includes(key) ? leafOf(words, Number(text)) : leafOf(words) };
}

/** Nearly every form ends with its group, so the last occurrence is its position. */
function offsetOf(hit: RegExpExecArray, text: string): number {
  return Math.max(0, hit[0].lastIndexOf(text));
}

function unknownPiece(piece: Words, near: string | null): Problem {
  return diagnostic(
    "unknown-word",
    piece.at,
    piece.text === ""
      ? "Nothing stands between two commas"
      : `${piece.text.slice(0, 60)} is not understood`,
    near === null
      ? "Write one such as 18 plants, 3 rows, under a board, from seed indoors; a variety comes first"
      : `Did you mean ${near}`,
  );
}

/** A part of a phrase as it is compared: in lower case, a leading number as `#`, with its first two words. */
type PartWords = { readonly text: string; readonly first: string; readonly second: string };

function partWordsOf(text: string): PartWords {
  const [first = "", second = ""] = text.split(" ");
  return { text: text.slice(0, LONGEST_COMPARED), first, second };
}

/** The letters of a part that are compared with a form. Source: house rule: every form's example is much shorter. */
const LONGEST_COMPARED = 40;

/** A leading number, as it stands in a part. */
const NUMBER = /^[\d.,/½¼¾]+ ?/u;

/** Names that a count may have beside the examples' own, so that a slip in one of them is met too. */
const COUNTED = ["3 m", "3 trees", "3 bushes", "3 runners", "3 slips", "3 sowings"];

const EXAMPLES = [...PHRASE_FORMS.map(({ like }) => like), ...COUNTED].map((like) => ({
  like,
  words: partWordsOf(like.toLowerCase().replace(NUMBER, "# ")),
}));

/**
 * The form that a part nearly is, as its example with the part's own number, or null: a known first word with something
 * else behind it, a number with a misspelt word, or a first word that is misspelt by a letter or two.
 */
export function nearMiss(text: string): string | null {
  const number = NUMBER.exec(text)?.[0].trim() ?? "";
  const part = partWordsOf(text.toLowerCase().replace(NUMBER, "# "));
  let best: { readonly like: string; readonly far: number } | null = null;
  for (const { like, words } of EXAMPLES) {
    const far = farFrom(part, words);
    if (far !== null && (best === null || far < best.far)) best = { like, far };
  }
  if (best?.like === UNDER) return underCover(text);
  if (best) return withNumber(best.like, number);
  return number === "" ? null : withNumber("18 plants", number);
}

/** What lies over it with the cover that was meant, where that is one; else the example. */
function underCover(text: string): string {
  const cover = text.slice(text.indexOf(" ") + 1);
  return plantCoverOf(cover) === null ? UNDER : `under ${cover}`;
}

/** An example with another number, and its word in the singular for one. */
function withNumber(like: string, number: string): string {
  if (number === "" || !NUMBER.test(like)) return like;
  const counted = like.replace(NUMBER, `${number} `);
  return number === "1" ? counted.replace(/^(\S+ \S+?)(?:(?<=sh)e)?s$/, "$1") : counted;
}

/** How different a part is from a form's example; null where it is something else. */
function farFrom(part: PartWords, example: PartWords): number | null {
  const limit = Math.max(1, Math.floor(example.text.length / 4));
  const whole = editDistanceWithin(part.text, example.text, limit);
  if (whole !== null) return whole;
  if (example.first === "#")
    return part.first === "#" ? editDistanceWithin(part.second, example.second, 2) : null;
  const slips = editDistanceWithin(part.first, example.first, slipsAllowed(part, example));
  return slips === null ? null : Math.max(1, slips) + editDistance(part.text, example.text) / 10;
}

/**
 * Wrong letters that a first word may have where more words follow it. Source: house rule: shorter words turn into
 * others.
 */
function slipsAllowed(part: PartWords, { first }: PartWords): number {
  if (!part.text.includes(" ") || first.length < 4) return 0;
  return first.length >= 6 ? 2 : 1;
}
