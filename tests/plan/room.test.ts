import { describe, expect, it } from "vitest";
import { least, told } from "./canonical.ts";

const bed = (is: string, crop: string) =>
  told(least(`beds:\n  A:\n    is: ${is}\n    crops:\n      - ${crop}`));

describe("room in beds", () => {
  it("holds rows as near as twice the plants' spacing across the bed", () => {
    expect(bed("12 x 4 ft", "carrot: 8 rows")).toEqual([]);
    expect(bed("12 x 4 ft", "carrot: 30 rows")).toEqual(["bed-too-full@11:9"]);
    expect(bed("12 x 4 ft", "beet: 7 rows")).toEqual([]);
  });

  it("holds plants by the square of their spacing", () => {
    expect(bed("12 x 4 ft", "tomato: 21 plants")).toEqual([]);
    expect(bed("12 x 4 ft", "tomato: 22 plants")).toEqual(["bed-too-full@11:9"]);
    expect(bed("8 x 4 ft", "garlic: 128 cloves")).toEqual([]);
    expect(bed("8 x 4 ft", "garlic: 140 cloves")).toEqual(["bed-too-full@11:9"]);
  });

  it("holds three or four potatoes to a bag sixteen inches across", () => {
    expect(bed("6 grow bags, 16 in across, 14 in high", "potato: 18 plants")).toEqual([]);
    expect(bed("6 grow bags, 16 in across, 14 in high", "potato: 24 plants")).toEqual([]);
    expect(bed("6 grow bags, 16 in across, 14 in high", "potato: 30 plants")).toEqual([
      "bed-too-full@11:9",
    ]);
    expect(bed("2 pots, 6 in across, 6 in high", "tomato: 2 plants")).toEqual([]);
  });

  it("is not asked for where size, amount or crop are not known", () => {
    expect(bed("greenhouse", "tomato: 500 plants")).toEqual([]);
    expect(bed("12 x 4 ft", "carrot")).toEqual([]);
    expect(bed("12 x 4 ft", "moonflower: 900 plants")).toEqual(["crop-unknown@11:9"]);
  });
});
