import { describe, expect, it } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import {
  CITE,
  common,
  derived,
  house,
  inchRange,
  memory,
  published,
  saySource,
} from "../../src/crops/figures.ts";
import { allFigures } from "./walk.ts";

describe("figures and where they come from", () => {
  it("carry their source in one of five kinds", () => {
    const figures = [
      published(1, "A"),
      derived(1, "A", "B"),
      common(1),
      house(1, "C"),
      memory(1, "D"),
    ];
    expect(figures.map(({ source }) => saySource(source))).toEqual([
      "A",
      "B (A)",
      "common practice",
      "house rule: C",
      "from memory, unchecked: D",
    ]);
  });

  it("turn a range of inches into centimetres", () => {
    expect(inchRange(1, 2)).toEqual([2.54, 5.08]);
  });

  it("all say whose they are in more than a word", () => {
    for (const { path, figure } of allFigures(CROPS))
      expect(saySource(figure.source).length, path).toBeGreaterThan(10);
    for (const cite of Object.values(CITE)) expect(cite).toMatch(/,/);
  });
});
