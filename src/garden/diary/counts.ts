const COUNTS: readonly (readonly [string, number])[] = [
  ["a", 1],
  ["an", 1],
  ["one", 1],
  ["two", 2],
  ["three", 3],
  ["four", 4],
  ["five", 5],
  ["six", 6],
  ["seven", 7],
  ["eight", 8],
  ["nine", 9],
  ["ten", 10],
  ["eleven", 11],
  ["twelve", 12],
  ["fifteen", 15],
  ["twenty", 20],
  ["thirty", 30],
  ["forty", 40],
  ["fifty", 50],
];
const byWord = new Map(COUNTS);

/** How many a word or figures say: `two`, `a`, `12`; null for anything else. */
export function countFrom(word: string): number | null {
  return byWord.get(word) ?? (/^\d{1,3}$/.test(word) ? Number(word) : null);
}
