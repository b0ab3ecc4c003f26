import { expect, test } from "vitest";
import { drawBags, inBags } from "../../../../src/views/pictures/from-above/draw-bags.ts";
import { BEDS, bedsSketchOf, contentOf, standing } from "./beds.ts";

const POTS = bedsSketchOf(BEDS["glass, film, pots and cloches"] ?? "", "2027-06-20").plan.beds[3];

function drawn(all: Parameters<typeof inBags>[0]) {
  if (!POTS?.bags) throw new Error("no pots");
  return drawBags(POTS.bags, contentOf(POTS, all));
}

const plants = (name: string, count: number) =>
  standing(name, { amount: { kind: "plants", count } });

test("each bag is drawn as one, with its plants in it", () => {
  const { svg, unnamed } = drawn([plants("Peppers", 14)]);
  expect(svg.join("").match(/class="earth"/g)).toHaveLength(7);
  expect(svg.join("").match(/h0/g)).toHaveLength(14);
  expect(unnamed).toEqual(["Peppers"]);
});

test("plantings have their own bags by how many plants they are, and say how many", () => {
  const two = inBags([plants("a", 2), plants("b", 5)], 7);
  expect(two.map(({ first, bags }) => [first, bags])).toEqual([
    [0, 2],
    [2, 5],
  ]);
  expect(drawn([plants("Peppers", 2), plants("Basil", 5)]).unnamed).toEqual([
    "Peppers in 2",
    "Basil in 5",
  ]);
});

test("more plantings than bags share them, and none is lost", () => {
  const many = inBags(
    ["a", "b", "c"].map((name) => plants(name, 1)),
    1,
  );
  expect(many.map(({ first, bags }) => [first, bags])).toEqual([
    [0, 1],
    [0, 1],
    [0, 1],
  ]);
});
