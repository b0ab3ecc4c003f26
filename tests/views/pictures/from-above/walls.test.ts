import { expect, test } from "vitest";
import { walls } from "../../../../src/views/pictures/from-above/walls.ts";
import { BEDS, bedsSketchOf, contentOf } from "./beds.ts";

const bed = (garden: string, i: number) => {
  const found = bedsSketchOf(BEDS[garden] ?? "", "2027-06-20").plan.beds[i];
  if (!found) throw new Error("no such bed");
  return walls(found, contentOf(found, []));
};

test("a bed has an edge, dashed where its size is not known", () => {
  expect(bed("no sizes, no amounts", 1)).not.toContain("dasharray");
  expect(bed("no sizes, no amounts", 0)).toContain('stroke-dasharray="6 4"');
});

test("a greenhouse has a ridge and bars, a tunnel hoops, and both a second wall", () => {
  const lines = (svg: string) => (svg.match(/pencil-line/g) ?? []).length;
  const [glass, film] = [0, 1].map((i) => bed("glass, film, pots and cloches", i));
  expect([lines(glass ?? ""), lines(film ?? "")]).toEqual([2, 1]);
  expect(glass?.match(/<rect/g)).toHaveLength(2);
  expect(film?.match(/v90/g)?.length ?? film?.match(/v150/g)?.length).toBe(5);
});

test("a cold frame has lights side by side, hinged at its upper edge", () => {
  const frame = bed("glass, film, pots and cloches", 2);
  expect(frame.match(/v60/g)?.length).toBe(2);
  expect(frame).toContain("M100 102.5H235");
});

test("cloches over a bed are dashed hoops", () => {
  expect(bed("glass, film, pots and cloches", 4)).toContain('stroke-dasharray="3 3"');
});

test("a bed that goes on below is torn where it does, and nowhere else", () => {
  const teeth = (svg: string) => (svg.match(/L/g) ?? []).length;
  expect(teeth(bed("a hundred feet beside a pot", 0))).toBeGreaterThan(8);
  expect(teeth(bed("no sizes, no amounts", 1))).toBe(0);
});
