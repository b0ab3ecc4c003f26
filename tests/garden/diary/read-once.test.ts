import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { readOnce } from "../../../src/garden/diary/read-once.ts";
import { on, PLAN } from "../plan/canonical.ts";

test("a clause of a line is read once in a context, and anew in another", () => {
  const line = { day: on(6, 1), text: "x", at: { file: "f", line: 1, column: 1 } };
  const context = { plans: [PLAN], vocabulary: PRACTICES };
  let reads = 0;
  const read = (clause: string, within = context) =>
    readOnce({ line, by: null }, { clause, context: within }, () => {
      reads += 1;
      return null;
    });
  read("peas up");
  read("peas up");
  expect(reads).toBe(1);
  read("beets up");
  expect(reads).toBe(2);
  read("peas up", { ...context });
  expect(reads).toBe(3);
});
