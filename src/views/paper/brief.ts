/**
 * The first sentences of a text that fit into a number of letters; the first always, so that a short line still says
 * what to do. Empty for no text.
 */
export function firstSentences(text: string, letters: number): string {
  const [first = "", ...rest] = sentencesOf(text);
  let short = first;
  for (const sentence of rest) {
    if (short.length + 1 + sentence.length > letters) break;
    short += ` ${sentence}`;
  }
  return short;
}

/** A text's sentences in their order: each ends where a full stop stands before a capital. `0.5 in` does not end one. */
export function sentencesOf(text: string): readonly string[] {
  return text.split(/(?<=[.!?]) +(?=\p{Lu})/u).filter((sentence) => sentence !== "");
}
