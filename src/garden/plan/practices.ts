import type { Vocabulary } from "../model/vocabulary.ts";

/** The plain name of the practice that a word of the trade means (`thinning`, `earthing up`), or null. */
export function namedPractice(text: string, vocabulary: Vocabulary): string | null {
  const word = text.trim().toLowerCase().replace(/\s+/g, " ");
  const found =
    vocabulary.find(({ name }) => name === word) ??
    vocabulary.find(({ words }) => words.includes(word));
  return found?.name ?? null;
}

/** The plain names of all practices. */
export function practiceNames(vocabulary: Vocabulary): readonly string[] {
  return vocabulary.map(({ name }) => name);
}

/** Every word that `namedPractice` understands, plain names first. */
export function practiceWords(vocabulary: Vocabulary): readonly string[] {
  return [...practiceNames(vocabulary), ...vocabulary.flatMap(({ words }) => words)];
}
