import { describe, expect, it } from "vitest";
import { cropOf } from "../../../src/crops/crops.ts";
import { bedShare } from "../../../src/garden/plan/room.ts";
import { least, planOf, told } from "./canonical.ts";

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

describe("the share of a bed that a planting takes", () => {
  const share = (is: string, crop: string) => {
    const plan = planOf(least(`beds:\n  A:\n    is: ${is}\n    crops:\n      - ${crop}`));
    const [planting, room] = [plan.plantings[0], plan.beds[0]];
    const facts = planting && cropOf(planting.crop);
    return planting && room && facts ? bedShare(planting, facts, room) : "no crop";
  };

  it("grows with rows, plants and length, and is whole where the bed is full", () => {
    expect(share("12 x 4 ft", "carrot: 12 rows")).toBeCloseTo(1, 5);
    expect(share("12 x 4 ft", "carrot: 6 rows")).toBeCloseTo(0.5, 5);
    expect(share("12 x 4 ft", "carrot: 36 ft")).toBeCloseTo(0.25, 5);
    expect(share("8 x 4 ft", "garlic: 64 cloves")).toBeCloseTo(0.5, 2);
    expect(share("6 grow bags, 16 in across, 14 in high", "potato: 12 plants")).toBeCloseTo(0.5, 5);
  });

  it("is not known without a size or an amount, nor for rows in bags", () => {
    expect(share("greenhouse", "tomato: 5 plants")).toBeNull();
    expect(share("12 x 4 ft", "carrot")).toBeNull();
    expect(share("6 grow bags, 16 in across, 14 in high", "carrot: 2 rows")).toBeNull();
  });
});
