import { nearest, type Problem } from "../../base/index.ts";
import { cropNamed, cropNames } from "../../crops/index.ts";
import { diagnostic } from "./codes.ts";
import { phraseKeys } from "./phrase.ts";
import { PLANTING_KEY_NAMES } from "./shape.ts";
import {
  itemsOf,
  leafOf,
  sliceWords,
  type Tree,
  type TreeEntry,
  type Words,
  wordsAt,
} from "./tree.ts";

/**
 * The same plan with every crop under `beds` and `crops` written as keys, however it was written: a bare word, a word
 * with its phrase, a word with keys, or keys. Problems: `said-twice` where phrase and key give the same thing, and
 * those of phrases.
 */
export function inKeyForm(tree: Tree, problems: Problem[]): Tree {
  return mapKeys(tree, (key, value) => {
    if (key === "crops") return crops(value, problems);
    if (key !== "beds") return value;
    return mapKeys(value, (_bed, bed) =>
      mapKeys(bed, (inBed, what) => (inBed === "crops" ? crops(what, problems) : what)),
    );
  });
}

function mapKeys(tree: Tree, change: (key: string, value: Tree) => Tree): Tree {
  if (tree.kind !== "map") return tree;
  const entries = tree.entries.map(({ key, value }) => ({ key, value: change(key.text, value) }));
  return { ...tree, entries };
}

function crops(tree: Tree, problems: Problem[]): Tree {
  if (tree.kind !== "list") return tree;
  const items = tree.items.filter((item) => item.kind !== "nothing");
  return { ...tree, items: items.map((item) => crop(item, problems)) };
}

function crop(item: Tree, problems: Problem[]): Tree {
  if (item.kind === "words") return keyed(item.at, bare(item.words, problems), problems);
  if (item.kind !== "map") return item;
  const named = cropEntry(item.entries);
  if (named === null) return item;
  const others = item.entries.filter((entry) => entry !== named);
  return keyed(item.at, [...fromEntry(named, problems), ...others], problems);
}

/** `- carrot`, `- carrot, 3 rows`, and in quotes `- "carrot: 3 rows"`. */
function bare(words: Words, problems: Problem[]): readonly TreeEntry[] {
  const end = words.text.search(/[,:]/);
  const name = end < 0 ? words : sliceWords(words, 0, end);
  const key: TreeEntry = { key: wordsAt("crop", name.at), value: leafOf(name) };
  return end < 0 ? [key] : [key, ...phraseKeys(sliceWords(words, end + 1), problems)];
}

/** The entry whose key is the crop: the first that is neither a planting's key nor a misspelt one. */
function cropEntry(entries: readonly TreeEntry[]): TreeEntry | null {
  if (entries.some(({ key }) => key.text === "crop")) return null;
  const strange = entries.filter(({ key }) => !PLANTING_KEY_NAMES.includes(key.text));
  const known = strange.find(({ key }) => cropNamed(key.text) !== null);
  if (known) return known;
  const unlike = strange.filter(({ key }) => nearerToCrop(key.text));
  return unlike[0] ?? null;
}

function nearerToCrop(text: string): boolean {
  const near = nearest(text, [...PLANTING_KEY_NAMES, ...cropNames()]);
  return near === null || !PLANTING_KEY_NAMES.includes(near);
}

function fromEntry({ key, value }: TreeEntry, problems: Problem[]): readonly TreeEntry[] {
  const name: TreeEntry = { key: wordsAt("crop", key.at), value: leafOf(key) };
  if (value.kind === "map") return [name, ...value.entries];
  if (value.kind === "words") return [name, ...phraseKeys(value.words, problems)];
  if (value.kind === "list")
    problems.push(
      diagnostic("wrong-type", value.at, `${key.text} is a list`, "Write its parts after commas"),
    );
  return [name];
}

/** Keys that a phrase may have more than once: `without weeding, without thinning`. */
const SEVERAL = ["without", "under", "has"];

function keyed(at: Tree["at"], entries: readonly TreeEntry[], problems: Problem[]): Tree {
  const merged: TreeEntry[] = [];
  for (const entry of entries) {
    const index = merged.findIndex(({ key }) => key.text === entry.key.text);
    const first = merged[index];
    if (!first) merged.push(entry);
    else if (SEVERAL.includes(entry.key.text))
      merged[index] = { ...first, value: both(first, entry) };
    else problems.push(twice(entry.key));
  }
  return { kind: "map", at, entries: merged };
}

function both(first: TreeEntry, second: TreeEntry): Tree {
  const items = [first, second].flatMap(({ value }) => itemsOf(value));
  return { kind: "list", at: first.value.at, items };
}

function twice(key: Words): Problem {
  return diagnostic(
    "said-twice",
    key.at,
    `${key.text} of this planting is said twice`,
    "Keep one of them",
  );
}
