import { expect, test } from "vitest";
import { differences, mergeTexts } from "../../../src/host/web/differences.ts";

const BASE = "a\nb\nc\nd\ne\nf\ng\nh\ni\nj\n";

test("lines that differ are told in their order, by which side has them", () => {
  expect(differences(BASE, BASE.replace("b", "B"))).toEqual([
    { side: "removed", line: "b" },
    { side: "added", line: "B" },
  ]);
  expect(differences(BASE, BASE)).toEqual([]);
});

test("changes of two people to other lines come together", () => {
  expect(mergeTexts(BASE, BASE.replace("b", "B"), BASE.replace("i", "I"))).toBe(
    BASE.replace("b", "B").replace("i", "I"),
  );
});

test("changes to the same lines do not, and nothing is chosen for anybody", () => {
  expect(mergeTexts(BASE, BASE.replace("b", "B"), BASE.replace("b", "X"))).toBeNull();
});

test("texts that differ in more lines than can be told at once are not told, and not brought together", () => {
  const many = (letter: string) =>
    Array.from({ length: 8000 }, (_, at) => `#${letter}${at}\n`).join("");
  expect(differences(many("a"), many("b"))).toBeNull();
  expect(mergeTexts(many("a"), many("b"), BASE)).toBeNull();
});
