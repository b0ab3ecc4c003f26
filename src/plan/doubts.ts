import type { Problem } from "../problems/problem.ts";
import type { Plan } from "./plan.ts";
import type { Tree } from "./tree.ts";

/** Doubts. */
export function doubtsOf(_plan: Plan, _tree: Tree): readonly Problem[] {
  return [];
}
