/** How many letters must be changed, added, left out or swapped to make one word of the other; case counts. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(at(last, j) + 1, at(row, j - 1) + 1, at(last, j - 1) + same);
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      if (swapped) least = Math.min(least, at(before, j - 2) + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return at(last, b.length);
}

const at = (row: readonly number[], index: number): number => row[index] ?? 0;

/** The same where it is `limit` or less, else null. Quick for words whose lengths alone differ by more. */
export function editDistanceWithin(a: string, b: string, limit: number): number | null {
  if (Math.abs(a.length - b.length) > limit) return null;
  const far = editDistance(a, b);
  return far <= limit ? far : null;
}

/**
 * The known word nearest to a misspelt one, or null where none is near: at most one letter in three may be
 * wrong, and at most three. Case does not matter; of equally near words one with the same consonants wins (`beat` is
 * beet and not bean), else the first in the list.
 * Source: house rule: beyond a third of its letters a word reads as another word, not as a slip; vowels are misspelt by ear.
 */
export function nearest(word: string, known: readonly string[]): string | null {
  const small = word.toLowerCase().slice(0, 60);
  const limit = Math.min(3, Math.max(1, Math.floor(small.length / 3)));
  let best: { word: string; far: number } | null = null;
  for (const candidate of known) {
    const letters = candidate.toLowerCase();
    const slips = editDistanceWithin(small, letters, limit);
    if (slips === null) continue;
    const far = consonants(letters) === consonants(small) ? slips - 0.5 : slips;
    if (best === null || far < best.far) best = { word: candidate, far };
  }
  return best?.word ?? null;
}

const consonants = (word: string) => word.replace(/[aeiou]/g, "");

/** `Did you mean X` where a known word is near, else the given advice. */
export function suggestion(word: string, known: readonly string[], otherwise: string): string {
  const near = nearest(word, known);
  return near === null ? otherwise : `Did you mean ${near}`;
}
