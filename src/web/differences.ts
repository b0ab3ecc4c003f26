import { applyPatch, diffLines, structuredPatch } from "diff";
import type { Difference } from "./pages/plan.tsx";

/** The lines in which one text differs from another, in reading order. */
export function differences(from: string, to: string): readonly Difference[] {
  return diffLines(from, to).flatMap(({ added, removed, value }): readonly Difference[] => {
    if (!added && !removed) return [];
    const lines = value.replace(/\n$/, "").split("\n");
    return lines.map((line) => ({ side: added ? "added" : "removed", line }));
  });
}

/** What was changed from `base` to `theirs`, done to `mine` too; null where both touch the same lines. */
export function together(base: string, theirs: string, mine: string): string | null {
  const merged = applyPatch(mine, structuredPatch("plan", "plan", base, theirs));
  return merged === false ? null : merged;
}
