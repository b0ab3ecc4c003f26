import { describe, expect, test } from "vitest";
import { crowdedDoubts } from "../../src/beds/crowded.ts";
import { sketchOf } from "../pictures/drawn.ts";

const PLACE = `garden: Quarry Lane
year: 2027
place: { clock: America/Denver, latitude: 46.6, last frost: about 6 May, first frost: about 2 Oct }
beds:
  Root bed:
    is: 12 x 4 ft
    crops:
`;
const told = (...crops: readonly string[]) =>
  crowdedDoubts(sketchOf(PLACE + crops.map((crop) => `      - ${crop}\n`).join("")));

describe("beds too full at one time", () => {
  test("are told once, at the planting that came last, with what to do", () => {
    const [doubt, ...others] = told("carrot: 6 rows", "beet: 6 rows", "parsnip: 6 rows");
    expect(others).toEqual([]);
    expect(doubt).toMatchObject({ code: "bed-crowded", weight: "doubt" });
    expect(doubt?.is).toMatch(/Root bed holds .*carrot.* times its width/);
    expect(doubt?.shouldBe).toMatch(/another bed/);
  });

  test("are not those that share it with room enough", () => {
    expect(told("carrot: 3 rows", "radish: 10 ft, between the carrot rows")).toEqual([]);
  });

  test("nor those where one follows the other in its place", () => {
    expect(told("spinach: 6 rows", "bean: 3 rows, after the spinach")).toEqual([]);
  });
});
