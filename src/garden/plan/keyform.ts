import type { Problem } from "../../base/problems/problem.ts";
import { cropNamed, cropNames } from "../../crops/crops.ts";
import { tell } from "./codes.ts";
import { nearest } from "./nearest.ts";
import { phraseKeys } from "./phrase.ts";
import { PLANTING_KEY_NAMES } from "./shape.ts";
import { type Entry, itemsOf, leaf, part, type Tree, type Words, wordsAt } from "./tree.ts";

/**
 * The same plan with every crop under `beds` and `crops` written as keys, whatever way it was written: a bare
 * word, a word with its phrase, a word with keys, or keys. Tells `said-twice` where phrase and key say the same
 * and what a phrase tells.
 */
export function inKeyForm(tree: Tree, told: Problem[]): Tree {
  return mapKeys(tree, (key, value) => {
    if (key === "crops") return crops(value, told);
    if (key !== "beds") return value;
    return mapKeys(value, (_bed, bed) =>
      mapKeys(bed, (inBed, what) => (inBed === "crops" ? crops(what, told) : what)),
    );
  });
}

function mapKeys(tree: Tree, change: (key: string, value: Tree) => Tree): Tree {
  if (tree.kind !== "map") return tree;
  const entries = tree.entries.map(({ key, value }) => ({ key, value: change(key.text, value) }));
  return { ...tree, entries };
}

function crops(tree: Tree, told: Problem[]): Tree {
  if (tree.kind !== "list") return tree;
  const items = tree.items.filter((item) => item.kind !== "nothing");
  return { ...tree, items: items.map((item) => crop(item, told)) };
}

function crop(item: Tree, told: Problem[]): Tree {
  if (item.kind === "words") return keyed(item.at, bare(item.words, told), told);
  if (item.kind !== "map") return item;
  const named = cropEntry(item.entries);
  if (named === null) return item;
  const others = item.entries.filter((entry) => entry !== named);
  return keyed(item.at, [...fromEntry(named, told), ...others], told);
}

/** `- carrot`, `- carrot, 3 rows`, and in quotes `- "carrot: 3 rows"`. */
function bare(words: Words, told: Problem[]): readonly Entry[] {
  const end = words.text.search(/[,:]/);
  const name = end < 0 ? words : part(words, 0, end);
  const key: Entry = { key: wordsAt("crop", name.at), value: leaf(name) };
  return end < 0 ? [key] : [key, ...phraseKeys(part(words, end + 1), told)];
}

/** The entry whose key is the crop: the first that is no planting's key and no misspelt one. */
function cropEntry(entries: readonly Entry[]): Entry | null {
  if (entries.some(({ key }) => key.text === "crop")) return null;
  const strange = entries.filter(({ key }) => !PLANTING_KEY_NAMES.includes(key.text));
  const known = strange.find(({ key }) => cropNamed(key.text) !== null);
  if (known) return known;
  const unlike = strange.filter(({ key }) => nearerToCrop(key.text));
  return unlike[0] ?? null;
}

function nearerToCrop(text: string): boolean {
  return nearest(text, PLANTING_KEY_NAMES) === null || nearest(text, cropNames()) !== null;
}

function fromEntry({ key, value }: Entry, told: Problem[]): readonly Entry[] {
  const name: Entry = { key: wordsAt("crop", key.at), value: leaf(key) };
  if (value.kind === "map") return [name, ...value.entries];
  if (value.kind === "words") return [name, ...phraseKeys(value.words, told)];
  if (value.kind === "list")
    told.push(
      tell("wrong-type", value.at, `${key.text} is a list`, "Write its parts after commas"),
    );
  return [name];
}

/** Keys that may be said more than once in a phrase: `without weeding, without thinning`. */
const SEVERAL = ["without", "under"];

function keyed(at: Tree["at"], entries: readonly Entry[], told: Problem[]): Tree {
  const kept: Entry[] = [];
  for (const entry of entries) {
    const index = kept.findIndex(({ key }) => key.text === entry.key.text);
    const first = kept[index];
    if (!first) kept.push(entry);
    else if (SEVERAL.includes(entry.key.text))
      kept[index] = { ...first, value: both(first, entry) };
    else told.push(twice(entry.key));
  }
  return { kind: "map", at, entries: kept };
}

function both(first: Entry, second: Entry): Tree {
  const items = [first, second].flatMap(({ value }) => itemsOf(value));
  return { kind: "list", at: first.value.at, items };
}

function twice(key: Words): Problem {
  return tell(
    "said-twice",
    key.at,
    `${key.text} of this planting is said twice`,
    "Keep one of them",
  );
}
