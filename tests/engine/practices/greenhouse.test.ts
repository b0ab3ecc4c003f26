import { describe, expect, test } from "vitest";
import { GREENHOUSE } from "../../../src/engine/practices/greenhouse.ts";
import { tellOf } from "../../gardens.ts";
import { ending, planWith, toldWith, wordsOf } from "./garden.ts";

describe("the greenhouse", () => {
  const placed = toldWith(["tomato: 6 plants, from seed indoors"]);

  test("has its vents, its shade and its cold nights told once, in that order", () => {
    const days = ["vents", "shade", "cold-nights"].map(
      (step) => ending(placed, `/garden/greenhouse/${step}`).day,
    );
    expect(days).toEqual([...days].sort((a, b) => a - b));
    expect(placed.filter(({ task }) => task.practice === GREENHOUSE.name)).toHaveLength(3);
  });

  test("warns of heaters' fumes", () => {
    expect(wordsOf(ending(placed, "cold-nights"))).toContain("fumes");
  });

  test("is nothing while nothing stands in it", () => {
    const told = toldWith(["beet: 1 row", "tomato: 6 plants, bought"]);
    expect(told.filter(({ task }) => task.practice === GREENHOUSE.name)).toEqual([]);
  });

  test("is nothing where there is none", () => {
    const plain = planWith(["tomato: 6 plants, from seed indoors"]).replace(
      / {2}greenhouse: .*\n/,
      "",
    );
    const told = tellOf(plain, { on: "2027-01-01" }).scheduled;
    expect(told.filter(({ task }) => task.practice === "greenhouse")).toEqual([]);
  });
});
