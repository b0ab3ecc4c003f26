import { type DaySpan, joinWords, slug, suggestion } from "../../base/index.ts";
import type { Person } from "../model/plan.ts";
import { diagnostic } from "./codes.ts";
import type { DayReadContext } from "./dates.ts";
import { readHours } from "./hours.ts";
import { namer } from "./names.ts";
import type { ReadLog, WordReadContext } from "./place.ts";
import { namedPractice, practiceNames } from "./practices.ts";
import {
  entriesOf,
  itemsOf,
  splitWords,
  type Tree,
  type TreeEntry,
  valueUnder,
  type Words,
  wordsUnder,
} from "./tree.ts";

/**
 * The hours assumed for a gardening day that is named without hours [minutes of the day]. Source: house rule: a day's
 * daylight work.
 */
const GARDENING_DAY = { from: 9 * 60, to: 17 * 60 } as const;
const WHOLE_DAY = { from: 0, to: 1440 } as const;

/** Kinds of work, beside practices, that a person can leave out. */
const WORK = ["lifting"];

/** The people of a plan in the order of the file. Problems: `alike`, `name-unfit`, `hours-unclear`; doubt: `left-out-unknown`. */
export function readPeople(tree: Tree | null, reading: WordReadContext): readonly Person[] {
  const name = namer("person", reading.problems);
  return entriesOf(tree).flatMap((entry) => {
    const key = name(wordsUnder(entry.value, "was") ?? entry.key);
    return key === null ? [] : [readPerson(entry, key, reading)];
  });
}

function readPerson(
  { key: name, value }: TreeEntry,
  key: string,
  reading: WordReadContext,
): Person {
  const gardens = wordsUnder(value, "gardens");
  const home = wordsUnder(value, "home");
  if (gardens && !/\d/.test(gardens.text))
    reading.filled.push({
      what: `${name.text}'s gardening hours`,
      value: "9 to 17",
      why: "the plan names days without hours",
    });
  return {
    key,
    name: name.text,
    gardens: gardens ? readHours(gardens, GARDENING_DAY, reading.problems) : [],
    home: home ? readHours(home, WHOLE_DAY, reading.problems) : [],
    leaveOut: wordListUnder(value, "leave out").map((words) => work(words, reading)),
  };
}

/** The words of a key that may have several: a list, or one text with commas and `and`. */
export function wordListUnder(tree: Tree, key: string): readonly Words[] {
  return itemsOf(valueUnder(tree, key))
    .flatMap((item) => (item.kind === "words" ? [item.words] : []))
    .flatMap((words) => splitWords(words, / *(?:, *and |,|;| and | & ) */))
    .filter((words) => words.text !== "");
}

function work(words: Words, { problems, vocabulary }: WordReadContext): string {
  const small = words.text.toLowerCase();
  if (WORK.includes(small)) return small;
  const practice = namedPractice(words.text, vocabulary);
  if (practice) return practice;
  problems.push(
    diagnostic(
      "left-out-unknown",
      words.at,
      `${words.text.slice(0, 60)} is no kind of work that is told`,
      suggestion(
        words.text,
        [...WORK, ...practiceNames(vocabulary)],
        "Write lifting, or a practice such as weeding",
      ),
    ),
  );
  return small;
}

/** The key of the person of that name, or null. Problem: `nobody-called`. */
export function personKey(
  words: Words,
  people: readonly Person[],
  { problems }: Pick<ReadLog, "problems">,
): string | null {
  const found = people.find((person) => slug(person.name) === slug(words.text));
  if (found) return found.key;
  const names = people.map(({ name }) => name);
  const advice =
    names.length > 0 ? `Write ${joinWords(names, "or")}` : "Name the people under people";
  problems.push(
    diagnostic(
      "nobody-called",
      words.at,
      `Nobody here is called ${words.text.slice(0, 60)}`,
      suggestion(words.text, names, advice),
    ),
  );
  return null;
}

/** Adds the doubt `outside-season` for days that are wholly outside the plan's season. */
export function doubtOutsideSeason(
  span: DaySpan,
  words: Words,
  { season, problems }: DayReadContext,
): void {
  if (!season || (span.to >= season.from && span.from <= season.to)) return;
  problems.push(
    diagnostic(
      "outside-season",
      words.at,
      `${words.text.slice(0, 60)} lies outside this plan's season`,
      "Check the year, or write it in that year's plan",
    ),
  );
}
