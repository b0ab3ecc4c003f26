import { describe, expect, test } from "vitest";
import {
  COVERS,
  coverNamed,
  coverWords,
  isPestCover,
  pestCoverIn,
  plantCoverOf,
} from "../../src/crops/covers.ts";

describe("every cover", () => {
  test("has words, and texts in their places", () => {
    for (const { name, words, title, sentence, needs } of COVERS) {
      expect(words.length, name).toBeGreaterThan(0);
      expect(title).toMatch(/^[A-Z]/);
      expect(sentence).toMatch(/^[A-Z].*[a-z]$/);
      expect(needs.length).toBeGreaterThan(2);
      expect(coverNamed(name).name).toBe(name);
    }
  });

  test("over plants is understood by each of its words, in the plural and with an article", () => {
    for (const { name, words } of COVERS.filter(({ over }) => over === "plants"))
      for (const word of words)
        expect([word, `${word}s`, `the ${word}`, `A ${word}`].map(plantCoverOf)).toEqual([
          name,
          name,
          name,
          name,
        ]);
    for (const word of ["film", "roof", ""]) expect(plantCoverOf(word)).toBeNull();
  });

  test("that warms something says how much, least and most", () => {
    for (const { warmsK } of COVERS)
      for (const { value } of Object.values(warmsK ?? {})) {
        expect(value[0]).toBeGreaterThan(0);
        expect(value[1]).toBeGreaterThanOrEqual(value[0]);
      }
  });
});

test("words are those of one place, or of the covers asked for", () => {
  expect(coverWords("plants", isPestCover)).not.toContain("board");
  expect(coverWords("plants")).toContain("boards");
  expect(coverWords("soil")).toContain("black plastic");
});

test("a planting's cover against pests is its net before its fabric", () => {
  expect(pestCoverIn(["board", "fabric", "net"])).toBe("net");
  expect(pestCoverIn(["fabric"])).toBe("fabric");
  expect(pestCoverIn(["board", "cloche"])).toBeNull();
});

test("a cover that is none is an error of the compiler", () => {
  // @ts-expect-error: no cover is called so
  expect(() => coverNamed("umbrella")).toThrow("no cover is called umbrella");
});
