import { describe, expect, test } from "vitest";
import { CROPS, cropOf } from "../../../src/crops/crops.ts";
import { coversOver, isHost } from "../../../src/engine/beds/covers.ts";
import { planOf } from "../../gardens.ts";
import { bedOf } from "./gardens.ts";

const over = (line: string) => {
  const [planting] = planOf(bedOf([line])).plantings;
  const crop = planting && cropOf(planting.crop);
  return planting && crop ? coversOver(planting, crop).map(({ against }) => against) : [];
};

describe("covers", () => {
  test("are those of the facts, each against something that its crop draws", () => {
    const all = CROPS.flatMap((crop) => crop.covers.map((cover) => ({ crop, cover })));
    expect(all.length).toBeGreaterThan(2);
    for (const { crop, cover } of all) expect(isHost(crop, cover.against)).toBe(true);
  });

  test("that a plan asks for are against the pests of the family where the facts know birds at most", () => {
    expect(over("parsnip: 2 rows, under a net")).toEqual(["pests of the carrot family"]);
    expect(over("parsnip: 2 rows, under a board")).toEqual([]);
    expect(over("pea: 2 rows, under a net")).toContain("birds");
  });

  test("are none where the gardener leaves them out", () => {
    expect(over("beet: 2 rows")).not.toEqual([]);
    expect(over("beet: 2 rows, without cover")).toEqual([]);
  });
});
