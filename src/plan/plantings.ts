import { cropNamed, cropNames } from "../crops/crops.ts";
import type { Crop } from "../crops/facts.ts";
import type { Place } from "../problems/problem.ts";
import { quantityFrom } from "../quantities/read.ts";
import { tell } from "./codes.ts";
import { type DayReading, readDay, readSpan } from "./dates.ts";
import { namer, slug } from "./names.ts";
import { listed, nearest, offer } from "./nearest.ts";
import { doubtDay, doubtOutside, listOf, personKey } from "./people.ts";
import { type Telling, unclear } from "./place.ts";
import type { Amount, Bed, Person, Planting } from "./plan.ts";
import { namedPractice, PRACTICE_WORDS } from "./practices.ts";
import {
  entriesOf,
  itemsOf,
  numberUnder,
  type Tree,
  under,
  type Words,
  wordsAt,
  wordsUnder,
} from "./tree.ts";

/** What reading plantings needs. */
export type PlantingReading = Telling &
  DayReading & {
    readonly year: number | null;
    readonly people: readonly Person[];
    readonly beds: readonly Bed[];
  };

/** A planting, and the words it is said to follow or stand between, for finding them once all are known. */
export type Found = {
  readonly planting: Planting;
  readonly after: Words | null;
  readonly between: Words | null;
};

/** A planting in key form and the name of its bed, null where it has none. */
type Item = { readonly tree: Tree; readonly bed: string | null };

/**
 * Every planting of a plan in key form, in the order of the file. What a planting does not say is filled from the
 * facts and listed. One without a usable name or crop is left out, with its problem told.
 */
export function readPlantings(tree: Tree, reading: PlantingReading): readonly Found[] {
  const name = namer("planting", reading.told);
  return inFileOrder(tree, reading.beds).flatMap((item) => {
    const found = readPlanting(item, name, reading);
    return found ? [found] : [];
  });
}

function inFileOrder(tree: Tree, beds: readonly Bed[]): readonly Item[] {
  const inBeds = entriesOf(under(tree, "beds")).flatMap(({ key, value }) => {
    const bed = beds.find((known) => known.name === key.text)?.key ?? null;
    return itemsOf(under(value, "crops")).map((item) => ({ tree: item, bed }));
  });
  const others = itemsOf(under(tree, "crops")).map((item) => ({ tree: item, bed: null }));
  const line = ({ tree: { at } }: Item) => at.line * 1e6 + at.column;
  return [...inBeds, ...others].sort((a, b) => line(a) - line(b));
}

function readPlanting(
  { tree, bed }: Item,
  nameOf: (name: Words) => string | null,
  reading: PlantingReading,
): Found | null {
  const written = wordsUnder(tree, "crop");
  if (written === null) return null;
  const crop = cropOfWords(written, reading);
  const key = nameOf(identity(tree, crop?.key ?? written.text));
  if (key === null) return null;
  const what = wordsUnder(tree, "name")?.text ?? written.text;
  const start = readStart(tree, crop, { what, reading });
  return {
    planting: {
      key: `${reading.year ?? 0}/${key}`,
      crop: crop?.key ?? slug(written.text),
      known: crop !== null,
      written: written.text,
      name: wordsUnder(tree, "name")?.text ?? null,
      variety: wordsUnder(tree, "variety")?.text ?? null,
      bed,
      amount: readAmount(tree, what, reading),
      start,
      ...readDays(tree, start, reading),
      days: daysUnder(tree, "days", reading),
      hardenDays: daysUnder(tree, "harden off", reading),
      repeat: readRepeat(tree, crop, { what, reading }),
      under: readCovers(tree, reading),
      sproutedFirst: isTrue(tree, "sprouted first"),
      after: null,
      without: readWithout(tree, reading),
      whose: readWhose(tree, reading),
      at: written.at,
    },
    after: wordsUnder(tree, "after"),
    between: wordsUnder(tree, "between"),
  };
}

/** `was:`, else `name:`, else crop and variety. */
function identity(tree: Tree, crop: string): Words {
  const named = wordsUnder(tree, "was") ?? wordsUnder(tree, "name");
  if (named) return named;
  const at: Place = wordsUnder(tree, "crop")?.at ?? tree.at;
  return wordsAt([crop, wordsUnder(tree, "variety")?.text ?? ""].join(" ").trim(), at);
}

function cropOfWords(words: Words, { told }: Telling): Crop | null {
  const crop = cropNamed(words.text);
  if (crop) return crop;
  told.push(
    tell(
      "crop-unknown",
      words.at,
      `${words.text.slice(0, 60)} is not in the crop facts`,
      offer(words.text, cropNames(), "It stays in the plan, without work of its own"),
    ),
  );
  return null;
}

type About = { readonly what: string; readonly reading: PlantingReading };

const STARTS: Readonly<Record<string, Planting["start"] | "seed">> = {
  "seed indoors": "seed indoors",
  indoors: "seed indoors",
  "seed outdoors": "seed outdoors",
  outdoors: "seed outdoors",
  seed: "seed",
  plants: "plants",
  bought: "plants",
  "bought plants": "plants",
  tubers: "tubers",
  cloves: "cloves",
};

function readStart(tree: Tree, crop: Crop | null, about: About): Planting["start"] {
  const words = wordsUnder(tree, "from");
  const said = words && startNamed(words, about.reading);
  const seed = crop?.starts.find((start) => start.startsWith("seed")) ?? "seed outdoors";
  if (words && said) {
    const start = said === "seed" ? seed : said;
    if (!crop || crop.starts.includes(start)) return start;
    about.reading.told.push(
      tell(
        "start-unknown",
        words.at,
        `The facts have no ${crop.one} from ${start}`,
        `It is reckoned from ${crop.starts[0]}; they have ${listed(crop.starts, "or")}`,
      ),
    );
  }
  const usual = crop?.starts[0] ?? guessed(tree);
  about.reading.filled.push({
    what: `${about.what}: from`,
    value: usual,
    why: crop ? "the usual way, by the crop facts" : "the facts do not have the crop",
  });
  return usual;
}

function startNamed(words: Words, { told }: Telling): Planting["start"] | "seed" | null {
  const small = words.text.toLowerCase().replace(/^from /, "");
  const found = Object.hasOwn(STARTS, small) ? STARTS[small] : undefined;
  if (found) return found;
  const names = Object.keys(STARTS);
  told.push(
    tell(
      "unknown-word",
      words.at,
      `${words.text.slice(0, 60)} is no way to begin`,
      offer(small, names, "Write seed indoors, seed outdoors, plants, tubers or cloves"),
    ),
  );
  return null;
}

function guessed(tree: Tree): Planting["start"] {
  if (under(tree, "cloves")) return "cloves";
  if (under(tree, "tubers")) return "tubers";
  return under(tree, "set out") ? "plants" : "seed outdoors";
}

function readAmount(tree: Tree, what: string, reading: PlantingReading): Amount | null {
  const given = ["plants", "cloves", "tubers", "rows", "length"].filter((key) => under(tree, key));
  const second = given[1];
  if (second) {
    const at = under(tree, second)?.at ?? tree.at;
    reading.told.push(
      tell("said-twice", at, `How much is said twice: ${listed(given)}`, "Keep one of them"),
    );
  }
  if (given.length === 0)
    reading.filled.push({
      what: `${what}: how much`,
      value: "nothing",
      why: "the plan does not say",
    });
  const length = wordsUnder(tree, "length");
  if (length) return readLength(length, reading);
  const rows = numberUnder(tree, "rows");
  if (rows !== null) return { kind: "rows", count: rows };
  const count =
    numberUnder(tree, "plants") ?? numberUnder(tree, "cloves") ?? numberUnder(tree, "tubers");
  return count === null ? null : { kind: "plants", count };
}

function readLength(words: Words, { told }: Telling): Amount | null {
  const length = quantityFrom(words.text);
  if (length?.kind === "length" && length.si > 0) return { kind: "length", length };
  told.push(unclear(words, "a length", "10 ft or 3 m"));
  return null;
}

type Dated = Pick<Planting, "fixed" | "within" | "notBefore" | "inSince">;

/** A plant that is bought is planted when it is set out, and so is one raised indoors. */
function readDays(tree: Tree, start: Planting["start"], reading: PlantingReading): Dated {
  const sow = wordsUnder(tree, "sow");
  const plant = wordsUnder(tree, "plant");
  const out = wordsUnder(tree, "set out") ?? (isRaised(start) ? plant : null);
  const begin = sow ?? (isRaised(start) ? null : plant);
  for (const [first, second] of [
    [sow, isRaised(start) ? null : plant],
    [wordsUnder(tree, "set out"), isRaised(start) ? plant : null],
  ] as const)
    if (first && second)
      reading.told.push(tell("said-twice", second.at, "The day is said twice", "Keep one of them"));
  const started = begin && spanOf(begin, reading);
  const planted = out && spanOf(out, reading);
  const wanted = wordsUnder(tree, "not before");
  const since = wordsUnder(tree, "in since");
  const notBefore = wanted && dayOf(wanted, reading);
  return {
    fixed: { start: single(started), out: single(planted) },
    within: started && single(started) === null ? started : null,
    notBefore: notBefore ?? (planted && single(planted) === null ? planted.from : null),
    inSince: since && readDay(since, reading),
  };
}

const isRaised = (start: Planting["start"]) => start === "plants" || start === "seed indoors";

type SpanOf = NonNullable<ReturnType<typeof readSpan>>;
const single = (span: SpanOf | null) => (span && span.from === span.to ? span.from : null);

function spanOf(words: Words, reading: PlantingReading): SpanOf | null {
  const span = readSpan(words, reading);
  if (span) doubtOutside(span, words, reading);
  return span;
}

function dayOf(words: Words, reading: PlantingReading) {
  const day = readDay(words, reading);
  if (day !== null) doubtDay(day, words, reading);
  return day;
}

const SMALL: readonly string[] = ["zero", "one", "two", "three", "four", "five", "six"];

/** Days that words say: `72`, `72 days`, `2 weeks`, `two weeks`; null for anything else. */
export function daysFrom(text: string): number | null {
  const small = text.trim().toLowerCase();
  if (small === "week") return 7;
  const found = /^(\d+|[a-z]+)(?: (days?|weeks?))?$/.exec(small);
  const word = found?.[1] ?? "";
  const count = /^\d+$/.test(word) ? Number(word) : SMALL.indexOf(word);
  const days = count * (found?.[2]?.startsWith("week") ? 7 : 1);
  return days > 0 && days <= 1000 ? days : null;
}

function daysUnder(tree: Tree, key: string, { told }: Telling): number | null {
  const words = wordsUnder(tree, key);
  const days = words && daysFrom(words.text);
  if (words && days === null)
    told.push(
      tell(
        "quantity-unclear",
        words.at,
        `${words.text.slice(0, 60)} is no number of days`,
        "Write one such as 72 days",
      ),
    );
  return days;
}

function readRepeat(tree: Tree, crop: Crop | null, { what, reading }: About): Planting["repeat"] {
  const every = daysUnder(tree, "every", reading);
  const times = numberUnder(tree, "times");
  if (every !== null) return { everyDays: every, times };
  if (times === null || times < 2 || under(tree, "every")) return null;
  const usual = crop?.repeatEveryDays?.value ?? [14, 14];
  const everyDays = Math.round((usual[0] + usual[1]) / 2);
  reading.filled.push({
    what: `${what}: every`,
    value: `${everyDays} days`,
    why: crop?.repeatEveryDays ? "the crop facts" : "house rule: two weeks",
  });
  return { everyDays, times };
}

const COVERS: Readonly<Record<string, Planting["under"][number]>> = {
  board: "board",
  boards: "board",
  net: "net",
  nets: "net",
  netting: "net",
  fabric: "fabric",
  fleece: "fabric",
  "row cover": "fabric",
};

function readCovers(tree: Tree, { told }: Telling): Planting["under"] {
  return listOf(tree, "under").flatMap((words) => {
    const small = words.text.toLowerCase().replace(/^(?:an?|the) /, "");
    const cover = Object.hasOwn(COVERS, small) ? COVERS[small] : undefined;
    if (cover) return [cover];
    const advice = offer(small, Object.keys(COVERS), "Write a board, a net or fabric");
    told.push(tell("unknown-word", words.at, `${words.text.slice(0, 60)} covers nothing`, advice));
    return [];
  });
}

function readWithout(tree: Tree, { told }: Telling): readonly string[] {
  return listOf(tree, "without").flatMap((words) => {
    const practice = namedPractice(words.text);
    if (practice) return [practice];
    const near = nearest(words.text, PRACTICE_WORDS);
    told.push(
      tell(
        "practice-unknown",
        words.at,
        `${words.text.slice(0, 60)} is no practice that can be left out`,
        near ? `Did you mean ${near}` : "Write one such as weeding, thinning or hilling",
      ),
    );
    return [];
  });
}

function readWhose(tree: Tree, reading: PlantingReading): string | null {
  const words = wordsUnder(tree, "for");
  return words && personKey(words, reading.people, reading);
}

function isTrue(tree: Tree, key: string): boolean {
  const value = under(tree, key);
  return value?.kind === "words" && value.value === true;
}
