import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { namer } from "../../../src/garden/plan/names.ts";
import { wordsAt } from "../../../src/garden/plan/tree.ts";

const word = (text: string, line = 1) => wordsAt(text, { file: "f", line, column: 1 });

describe("names and their slugs", () => {
  it("gives each name once and reports the second with the line of the first", () => {
    const told: Problem[] = [];
    const name = namer("planting", told);
    expect(name(word("Carrot", 4))).toBe("carrot");
    expect(name(word("carrot", 9))).toBeNull();
    expect(told.map(({ code, at }) => [code, at.line])).toEqual([["alike", 9]]);
    expect(told[0]?.is).toContain("line 4");
  });

  it("refuses names that a year's own keys begin with, for plantings alone", () => {
    const told: Problem[] = [];
    expect(namer("planting", told)(word("Bed"))).toBeNull();
    expect(namer("bed", told)(word("Bed"))).toBe("bed");
    expect(told.map(({ code }) => code)).toEqual(["name-unfit"]);
  });
});
