import { applyPatch, diffLines, structuredPatch } from "diff";
import type { Difference } from "./pages/plan.tsx";

/** Changed lines that are looked for at the most: the work grows with their square. */
const BOUND = { maxEditLength: 1000 } as const;

/** The lines in which one text differs from another, in reading order; null where they are too many to tell. */
export function differences(from: string, to: string): readonly Difference[] | null {
  const found = diffLines(from, to, BOUND);
  if (!found) return null;
  return found.flatMap(({ added, removed, value }): readonly Difference[] => {
    if (!added && !removed) return [];
    const lines = value.replace(/\n$/, "").split("\n");
    return lines.map((line) => ({ side: added ? "added" : "removed", line }));
  });
}

/** What was changed from `base` to `theirs`, done to `mine` too; null where both touch the same lines, or too many. */
export function mergeTexts(base: string, theirs: string, mine: string): string | null {
  const patch = structuredPatch("plan", "plan", base, theirs, "", "", BOUND);
  const merged = patch ? applyPatch(mine, patch) : false;
  return merged === false ? null : merged;
}
