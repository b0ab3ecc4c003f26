import { describe, expect, it } from "vitest";
import { bedSizeDoubts, repeatDoubts } from "../../../src/engine/doubts/plantings.ts";
import { least, planOf, TEXT } from "../../garden/plan/canonical.ts";

const bed = (is: string, crop: string) =>
  bedSizeDoubts(planOf(least(`beds:\n  A:\n    is: ${is}\n    crops:\n      - ${crop}`))).map(
    ({ code, at }) => `${code}@${at.line}:${at.column}`,
  );

describe("plantings too many for their bed", () => {
  it("are more rows than stand as near as twice the plants' spacing across the bed", () => {
    expect(bed("12 x 4 ft", "carrot: 8 rows")).toEqual([]);
    expect(bed("12 x 4 ft", "carrot: 30 rows")).toEqual(["bed-too-full@11:9"]);
    expect(bed("12 x 4 ft", "beet: 7 rows")).toEqual([]);
  });

  it("are more plants than stand by the square of their spacing", () => {
    expect(bed("12 x 4 ft", "tomato: 21 plants")).toEqual([]);
    expect(bed("12 x 4 ft", "tomato: 22 plants")).toEqual(["bed-too-full@11:9"]);
    expect(bed("8 x 4 ft", "garlic: 128 cloves")).toEqual([]);
    expect(bed("8 x 4 ft", "garlic: 140 cloves")).toEqual(["bed-too-full@11:9"]);
  });

  it("are more than three or four potatoes to a bag sixteen inches across", () => {
    expect(bed("6 grow bags, 16 in across, 14 in high", "potato: 18 plants")).toEqual([]);
    expect(bed("6 grow bags, 16 in across, 14 in high", "potato: 24 plants")).toEqual([]);
    expect(bed("6 grow bags, 16 in across, 14 in high", "potato: 30 plants")).toEqual([
      "bed-too-full@11:9",
    ]);
    expect(bed("2 pots, 6 in across, 6 in high", "tomato: 2 plants")).toEqual([]);
  });

  it("are not known where size, amount or crop are not known", () => {
    expect(bed("greenhouse", "tomato: 500 plants")).toEqual([]);
    expect(bed("12 x 4 ft", "carrot")).toEqual([]);
    expect(bed("12 x 4 ft", "moonflower: 900 plants")).toEqual([]);
  });

  it("are doubted as too small where not one has room", () => {
    const plan = "beds:\n  Open:\n    is: 6 x 1.2 m\n    crops:\n      - plum: 1 tree";
    const [doubt] = bedSizeDoubts(planOf(least(plan)));
    expect(doubt?.is).toBe("Open is too small for plum");
    expect(doubt?.shouldBe).toBe("Give it a larger place, or a bed without a size");
  });

  it("are doubted in words that say what to do", () => {
    const [doubt] = bedSizeDoubts(planOf(TEXT.replace("18 plants", "90 plants")));
    expect(doubt).toMatchObject({
      weight: "doubt",
      is: "90 plants of potato stand in bags that hold about 24",
      shouldBe: "Plant fewer, or give some another bed",
    });
  });
});

describe("plantings sown again", () => {
  const doubts = (crop: string) => repeatDoubts(planOf(least(`crops:\n  - ${crop}\n`)));

  it("are doubted where there are more sowings than the season's feed has", () => {
    expect(doubts("lettuce: 2 rows, every 1 days, 12 times")).toEqual([]);
    expect(doubts("lettuce: 2 rows, every 1 days, 13 times")).toMatchObject([
      {
        code: "too-many-sowings",
        weight: "doubt",
        is: "lettuce is sown 13 times here, and only the first 12 are told",
      },
    ]);
  });

  it("are doubted where they do not grow from seed in their place", () => {
    expect(doubts("tomato: bought, every 14 days")).toMatchObject([
      {
        code: "not-sown-again",
        is: "tomato begins from plants here, which is not done again and again",
      },
    ]);
    expect(doubts("tomato: bought")).toEqual([]);
  });
});
