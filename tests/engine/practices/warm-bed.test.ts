import { describe, expect, test } from "vitest";
import { WARM_BED } from "../../../src/engine/practices/warm-bed.ts";
import { ending, toldWith, wordsOf } from "./garden.ts";

const FILM = "    warmed by: black film\n";

describe("warming the bed", () => {
  test("is two to three weeks before a warm crop goes in, with the soil's own test", () => {
    const placed = toldWith(["tomato: 6 plants, bought"], FILM);
    const out = ending(placed, "/set-out/1").day;
    const warm = ending(placed, "/bed/long-bed/warm-the-bed/1");
    expect([out - warm.task.window.due, out - warm.task.window.latest]).toEqual([21, 14]);
    expect(wordsOf(warm)).toContain("crumbles");
  });

  test("is once for all that wants it there, by the first that goes in", () => {
    const placed = toldWith(["tomato: 6 plants, bought", "pepper: 6 plants, bought"], FILM);
    const warm = placed.filter(({ task }) => task.practice === WARM_BED.name);
    expect(warm).toHaveLength(1);
    expect(wordsOf(ending(placed, "/warm-the-bed/1"))).toMatch(/for \w+ and \w+,/);
    const both = placed.filter(({ task }) => task.practice === "set out");
    const first = Math.min(...both.map(({ day }) => day));
    expect(first - (warm[0]?.task.window.due ?? 0)).toBe(21);
  });

  test("is nothing without film, nor for what is hardy", () => {
    const told = (crop: string, bed = "") =>
      toldWith([crop], bed).filter(({ task }) => task.practice === WARM_BED.name);
    expect(told("tomato: 6 plants, bought")).toEqual([]);
    expect(told("beet: 1 row", FILM)).toEqual([]);
  });
});
