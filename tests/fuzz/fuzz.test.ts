import { expect, test } from "vitest";
import { DEPTH, samples } from "../depth.ts";
import { KINDS } from "./inputs.ts";
import { READERS } from "./readers.ts";
import { fuzz } from "./run.ts";

test.each(KINDS)("no %s is answered by an exception or half read", (kind) => {
  const each = samples(2000, 30);
  const { kinds, failed } = fuzz(DEPTH.seed, each, undefined, [kind]);
  expect(failed.map(({ input, wrong }) => ({ input, wrong }))).toEqual([]);
  expect(kinds.get(kind)?.tried).toBe(each);
});

test("a seed draws the same again, another draws others, and a run ends when its time is over", () => {
  const drawn = (seed: number) =>
    fuzz(seed, 8, undefined, ["path"])
      .slowest.map((each) => each.input)
      .sort();
  expect(drawn(7)).toEqual(drawn(7));
  expect(drawn(7)).not.toEqual(drawn(8));
  expect(fuzz(7, 12, () => true, ["path"]).kinds.get("path")?.tried).toBe(0);
});

test("a reader that throws is found, with the input that it threw over", () => {
  const { path } = READERS;
  Object.assign(READERS, {
    path: () => {
      throw new Error("a fault of ours");
    },
  });
  const { failed } = fuzz(7, 3, undefined, ["path"]);
  Object.assign(READERS, { path });
  expect(failed.map(({ wrong }) => wrong?.split("\n")[0])).toEqual(
    Array(3).fill("Error: a fault of ours"),
  );
});

test.each([
  "2 May: __proto__",
  "2 May: constructor up",
  "2 May: valueOf ate it",
  "__proto__: carrots up",
])(
  "what the fuzzer once found: a diary's line that is called as every object's own, %s",
  (line) => {
    expect(() => READERS.diary(`  - ${line}`)).not.toThrow();
    expect(() => READERS.diary(line)).not.toThrow();
  },
);
