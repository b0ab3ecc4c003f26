import { describe, expect, it } from "vitest";
import { entriesOf, itemsOf, valueUnder, wordsUnder } from "../../../src/garden/plan/tree.ts";
import {
  MAX_ALIASED,
  MAX_NESTING,
  MAX_PLAN_BYTES,
  MAX_VALUE_LETTERS,
  treeOf,
} from "../../../src/garden/plan/yaml.ts";

const codes = (text: string) =>
  treeOf(text, "f").problems.map(({ code, at }) => `${code}@${at.line}:${at.column}`);

describe("text to tree", () => {
  it("knows line and column of every key and value", () => {
    const { tree } = treeOf("a: x\nb:\n  - y\n  - c: z", "f");
    const entries = entriesOf(tree);
    expect(entries.map(({ key }) => [key.at.line, key.at.column])).toEqual([
      [1, 1],
      [2, 1],
    ]);
    expect(itemsOf(valueUnder(tree, "b")).map(({ at }) => [at.line, at.column])).toEqual([
      [3, 5],
      [4, 5],
    ]);
  });

  it("knows the column of each letter in plain, quoted and folded words", () => {
    const at = (text: string, letter: string) => {
      const words = wordsUnder(treeOf(text, "f").tree, "a");
      const found = words?.where(words.text.indexOf(letter));
      return [found?.line, found?.column];
    };
    expect(at("a: one, two", "two")).toEqual([1, 9]);
    expect(at('a: "one, two"', "two")).toEqual([1, 10]);
    expect(at("a: one,\n   two", "two")).toEqual([2, 4]);
    expect(at("a: >\n  one,\n  two", "two")).toEqual([3, 3]);
    expect(at("a: one,    two", "two")).toEqual([1, 12]);
  });

  it("keeps numbers and words as they were written", () => {
    const { tree } = treeOf("a: 007\nb: 1e3\nc: 2.50\nd: yes", "f");
    expect(["a", "b", "c", "d"].map((key) => wordsUnder(tree, key)?.text)).toEqual([
      "007",
      "1e3",
      "2.50",
      "yes",
    ]);
  });

  it("reports a doubled key at the second and keeps the first, or the one that has a value", () => {
    expect(codes("a: 1\nb: 2\na: 3")).toEqual(["said-twice@3:1"]);
    expect(wordsUnder(treeOf("a:\na: 3", "f").tree, "a")?.text).toBe("3");
  });

  it("refuses what is too large, too deep, too long or expands to too much", () => {
    expect([MAX_PLAN_BYTES, MAX_NESTING, MAX_ALIASED, MAX_VALUE_LETTERS]).toEqual([
      262_144, 30, 2000, 400,
    ]);
    expect(codes(`a: ${"x".repeat(401)}`)).toEqual(["too-long@1:4"]);
    expect(codes(`a: ${"[".repeat(31)}${"]".repeat(31)}`)).toEqual(["too-deep@1:34"]);
    expect(codes("a: &x [*x]")).toEqual(["too-many-aliases@1:8"]);
  });

  it("follows an alias to what it stands for", () => {
    const { tree } = treeOf("a: &p x\nb: *p", "f");
    expect(wordsUnder(tree, "b")?.text).toBe("x");
    expect(codes("a: *nothing")).toEqual(["unreadable@1:4"]);
  });

  it("gives an empty text as nothing, without a problem", () => {
    expect(treeOf("", "f")).toMatchObject({ tree: { kind: "nothing" }, problems: [] });
  });
});
