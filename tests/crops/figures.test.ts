import { describe, expect, it } from "vitest";
import { CROPS } from "../../src/crops/crops.ts";
import {
  CITE,
  commonPractice,
  derived,
  fromMemory,
  houseRule,
  inchRange,
  published,
  saySource,
} from "../../src/crops/figures.ts";
import { allFigures } from "./walk.ts";

describe("figures and where they come from", () => {
  it("carry their source in one of five kinds", () => {
    const figures = [
      published(1, "A"),
      derived(1, "A", "B"),
      commonPractice(1),
      houseRule(1, "C"),
      fromMemory(1, "D"),
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

  it("of coming up are none from memory", () => {
    const up = allFigures(CROPS).filter(({ path }) => path.includes(".comesUp"));
    expect(up.length).toBeGreaterThan(40);
    expect(up.filter(({ figure }) => figure.source.kind === "memory")).toEqual([]);
  });

  // These are of cuts, repeats, bags, heights and the like; each that is looked up and turned into a published one
  // brings the number down; only a new crop may raise it. Days to harvest are counted apart: `why` tells them as an
  // assumption, and the plan's own days replace them.
  it("from memory are no more than one in ten, days to harvest counted apart", () => {
    const all = allFigures(CROPS);
    const remembered = all.filter(({ figure }) => figure.source.kind === "memory");
    const days = remembered.filter(({ path }) => path.endsWith(".harvest.days"));
    expect(all.length).toBeGreaterThan(1000);
    expect(remembered.length * 10).toBeLessThanOrEqual(all.length);
    expect([remembered.length - days.length, days.length]).toEqual([47, 11]);
  });

  it("of memory and house rules say whose or why, and derived ones how", () => {
    const bare = allFigures(CROPS).filter(({ figure: { source } }) =>
      Object.values(source).some((said) => said.trim() === ""),
    );
    expect(bare).toEqual([]);
  });

  it("cite every title that is kept to be cited", () => {
    const cited = allFigures(CROPS).map(({ figure }) => saySource(figure.source));
    const idle = Object.values(CITE).filter((title) => !cited.some((said) => said.includes(title)));
    expect(idle).toEqual([]);
  });
});
