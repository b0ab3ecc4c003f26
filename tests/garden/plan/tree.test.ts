import { describe, expect, it } from "vitest";
import {
  entriesOf,
  entryOf,
  itemsOf,
  leafOf,
  numberUnder,
  plainValueOf,
  sliceWords,
  splitWords,
  type Tree,
  valueUnder,
  type Words,
  wordsAt,
  wordsUnder,
} from "../../../src/garden/plan/tree.ts";
import { treeOf } from "../../../src/garden/plan/yaml.ts";

const where = (offset: number) => ({ file: "f", line: 2, column: 5 + offset });
const words = (text: string): Words => ({ text, at: where(0), where });

function tree(text: string): Tree {
  const found = treeOf(text, "f").tree;
  if (!found) throw new Error("unreadable");
  return found;
}

describe("a file as a tree", () => {
  it("gives each part of words its own column, without the spaces around it", () => {
    const parts = splitWords(words("early red,  18 plants ,x"), /,/);
    expect(parts.map(({ text, at }) => [text, at.column])).toEqual([
      ["early red", 5],
      ["18 plants", 17],
      ["x", 28],
    ]);
    expect(sliceWords(words("a bcd"), 1).where(1).column).toBe(8);
  });

  it("keeps empty parts", () => {
    expect(splitWords(words("a,,b"), /,/).map(({ text }) => text)).toEqual(["a", "", "b"]);
  });

  it("finds values by key, and none for what is given nothing or is no map", () => {
    const plan = tree("a: 1\nb:\nc: [x, 2]\nd: y");
    expect(numberUnder(plan, "a")).toBe(1);
    expect(wordsUnder(plan, "d")?.text).toBe("y");
    expect(numberUnder(plan, "d")).toBeNull();
    expect(valueUnder(plan, "b")).toBeNull();
    expect(entryOf(plan, "b")?.key.at.line).toBe(2);
    expect(valueUnder(null, "a")).toBeNull();
    expect(entriesOf(valueUnder(plan, "c"))).toEqual([]);
  });

  it("takes a single value as a list of one", () => {
    const plan = tree("a: x\nb: [x, y]\nc:");
    expect(itemsOf(valueUnder(plan, "a"))).toHaveLength(1);
    expect(itemsOf(valueUnder(plan, "b"))).toHaveLength(2);
    expect(itemsOf(valueUnder(plan, "c"))).toEqual([]);
  });

  it("becomes plain values without what is given nothing", () => {
    expect(plainValueOf(tree("a: 1\nb:\nc: [x, 2, ~]\nd: {e: true}"))).toEqual({
      a: 1,
      c: ["x", 2, null],
      d: { e: true },
    });
  });

  it("makes words that have one position", () => {
    const at = where(3);
    expect(wordsAt("x", at).where(9)).toEqual(at);
    expect(leafOf(wordsAt("x", at))).toMatchObject({ kind: "words", value: "x", at });
    expect(leafOf(wordsAt("5", at), 5)).toMatchObject({ value: 5 });
  });
});
