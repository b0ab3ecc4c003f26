import { describe, expect, test } from "vitest";
import { WARM_BED } from "../../src/practices/warm-bed.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";

const FILM = "    warmed by: black film\n";

describe("warming the bed", () => {
  test("is two to three weeks before a warm crop goes in, with the soil's own test", () => {
    const placed = toldWith(["tomato: 6 plants, bought"], FILM);
    const out = ending(placed, "/set-out/1").day;
    const warm = ending(placed, "/warm-the-bed/1");
    expect([out - warm.task.window.due, out - warm.task.window.latest]).toEqual([21, 14]);
    expect(wordsOf(warm)).toContain("crumbles");
  });

  test("is nothing without film, nor for what is hardy", () => {
    const told = (crop: string, bed = "") =>
      toldWith([crop], bed).filter(({ task }) => task.practice === WARM_BED.name);
    expect(told("tomato: 6 plants, bought")).toEqual([]);
    expect(told("beet: 1 row", FILM)).toEqual([]);
  });
});
