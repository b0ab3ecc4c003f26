import type { TextPosition } from "../../base/index.ts";

/** Some words of the file and the position of each of their letters. */
export type Words = {
  readonly text: string;
  readonly at: TextPosition;
  /** The position of the letter at that offset [letters from 0]. */
  readonly where: (offset: number) => TextPosition;
};

/** A file as keys, lists and words, each with its position; the value of a key may be nothing. */
export type Tree =
  | { readonly kind: "map"; readonly at: TextPosition; readonly entries: readonly TreeEntry[] }
  | { readonly kind: "list"; readonly at: TextPosition; readonly items: readonly Tree[] }
  | {
      readonly kind: "words";
      readonly at: TextPosition;
      readonly value: string | number | boolean;
      readonly words: Words;
    }
  | { readonly kind: "nothing"; readonly at: TextPosition };

/** One key of a map and its value. */
export type TreeEntry = { readonly key: Words; readonly value: Tree };

/** The part of some words from one offset to another (exclusive), without the spaces around it. */
export function sliceWords(words: Words, from: number, to: number = words.text.length): Words {
  const raw = words.text.slice(from, to);
  const start = from + (raw.length - raw.trimStart().length);
  return {
    text: raw.trim(),
    at: words.where(start),
    where: (offset) => words.where(start + offset),
  };
}

/** The parts between separators, in order, without spaces around them; empty parts stay. */
export function splitWords(words: Words, separator: RegExp): readonly Words[] {
  const found: Words[] = [];
  let from = 0;
  for (const hit of words.text.matchAll(new RegExp(separator, "giu"))) {
    found.push(sliceWords(words, from, hit.index));
    from = hit.index + hit[0].length;
  }
  return [...found, sliceWords(words, from)];
}

/** The value of a key of a map, or null where the tree is no map, has no such key or no value for it. */
export function valueUnder(tree: Tree | null, key: string): Tree | null {
  const found = entryOf(tree, key)?.value ?? null;
  return found === null || found.kind === "nothing" ? null : found;
}

/** The entry of that key, or null. */
export function entryOf(tree: Tree | null, key: string): TreeEntry | null {
  if (tree?.kind !== "map") return null;
  return tree.entries.find((entry) => entry.key.text === key) ?? null;
}

/** The entries of a map in the order of the file; none for anything else. */
export function entriesOf(tree: Tree | null): readonly TreeEntry[] {
  return tree?.kind === "map" ? tree.entries : [];
}

/** The items of a list, or a single value as the only item; empty for nothing. */
export function itemsOf(tree: Tree | null): readonly Tree[] {
  if (tree === null || tree.kind === "nothing") return [];
  return tree.kind === "list" ? tree.items : [tree];
}

/** The words of a key, or null where there are none. */
export function wordsUnder(tree: Tree | null, key: string): Words | null {
  const value = valueUnder(tree, key);
  return value?.kind === "words" ? value.words : null;
}

/** The number of a key, or null where there is none. */
export function numberUnder(tree: Tree | null, key: string): number | null {
  const value = valueUnder(tree, key);
  return value?.kind === "words" && typeof value.value === "number" ? value.value : null;
}

/** A tree as plain values, for checking its shape; keys without a value are left out. */
export function plainValueOf(tree: Tree): unknown {
  switch (tree.kind) {
    case "map":
      return Object.fromEntries(
        tree.entries
          .filter(({ value }) => value.kind !== "nothing")
          .map(({ key, value }) => [key.text, plainValueOf(value)]),
      );
    case "list":
      return tree.items.map(plainValueOf);
    case "words":
      return tree.value;
    case "nothing":
      return null;
  }
}

/** Words that are not in the file, with one position for all letters, for what a phrase implies. */
export function wordsAt(text: string, at: TextPosition): Words {
  return { text, at, where: () => at };
}

/** A tree of some words. */
export function leafOf(words: Words, value: string | number | boolean = words.text): Tree {
  return { kind: "words", at: words.at, value, words };
}
