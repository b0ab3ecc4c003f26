import { describe, expect, test } from "vitest";
import { CLOSE_BED } from "../../../src/engine/practices/close-bed.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";

describe("closing a bed", () => {
  test("comes after its last crop is out, with an inch of compost and the days of raw manure", () => {
    const placed = toldWith(["beet: 1 row", "carrot: 1 row"]);
    const close = ending(placed, "/close-the-bed/1");
    const last = Math.max(
      ...placed.filter(({ task }) => task.sets?.act === "end").map(({ day }) => day),
    );
    expect(close.day).toBeGreaterThan(last);
    expect(wordsOf(close)).toMatch(/compost over it, about …/);
    expect(wordsOf(close)).toContain("120 days");
  });

  test("is nothing where something stands the winter or for years", () => {
    for (const crop of ["garlic: 60 cloves, plant this October", "rhubarb: 2 crowns"])
      expect(
        toldWith([crop]).filter(({ task }) => task.practice === CLOSE_BED.name),
        crop,
      ).toEqual([]);
  });
});
