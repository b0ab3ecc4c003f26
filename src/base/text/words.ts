/** The text with its first letter large, as a sentence begins. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Words listed as one says them: `a`, `a and b`, `a, b and c`; empty for none. `last` stands before the last of them. */
export function joinWords(words: readonly string[], last: "and" | "or" = "and"): string {
  if (words.length < 2) return words[0] ?? "";
  return `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;
}

/** How many of a thing, in figures: `1 day`, `2 days`. `one` takes an s for any other number than 1. */
export function sayCount(many: number, one: string): string {
  return `${many} ${one}${many === 1 ? "" : "s"}`;
}

/** The first `count` words, then how many are left: `a, b and 3 more`; all of them where none are left. */
export function joinFirst(words: readonly string[], count: number): string {
  const more = words.length - count;
  return more <= 0 ? joinWords(words) : `${words.slice(0, count).join(", ")} and ${more} more`;
}

/**
 * A verb with what it is done to, as a title begins: behind it, or where it has `…`: `Thin beets`, `Thin carrots again`,
 * `Beets: get things ready`.
 */
export function verbWith(verb: string, objects: string): string {
  return capital(wordingWith(verb, objects));
}

/** The same in the midst of a sentence: `thin beets`, `beets: get things ready`; a name that stands first keeps its capital. */
export function verbWithin(verb: string, objects: string): string {
  const wording = wordingWith(verb, objects);
  return verb.startsWith("…") ? wording : wording.charAt(0).toLowerCase() + wording.slice(1);
}

function wordingWith(verb: string, objects: string): string {
  return verb.includes("…") ? verb.replace("…", () => objects) : `${verb} ${objects}`;
}
