import { describe, expect, test } from "vitest";
import { cm } from "../../../../src/base/quantities/quantity.ts";
import { blockOf } from "../../../../src/views/pictures/from-above/block.ts";
import { standing } from "./beds.ts";

const BED = { lengthCm: 360, widthCm: 120 };

describe("a planting's block in its bed", () => {
  test("has as many rows as the plan says, along the whole bed", () => {
    const block = blockOf(standing("beets", { amount: { kind: "rows", count: 3 } }), BED, 1);
    expect(block).toEqual({ lengthCm: 360, widthCm: 60, rows: 3, totalCm: 1080, apartCm: 10 });
  });

  test("takes as much of a row as is said, and more rows where the bed is shorter", () => {
    const long = (length: number) =>
      blockOf(standing("dill", { amount: { kind: "length", length: cm(length) } }), BED, 1);
    expect(long(120)).toMatchObject({ lengthCm: 120, rows: 1, widthCm: 20 });
    expect(long(500)).toMatchObject({ lengthCm: 360, rows: 2, totalCm: 500 });
  });

  test("sets plants out in even rows at their distance, each sowing's anew", () => {
    const spacing = { apartCm: 50, rowCm: 60 };
    const plants = (count: number, sowings = 1) => {
      const [one] = standing("kale").sowings;
      const all = Array.from({ length: sowings }, () => one).flatMap((each) => each ?? []);
      return blockOf(
        standing("kale", { spacing, amount: { kind: "plants", count }, sowings: all }),
        BED,
        1,
      );
    };
    expect(plants(4)).toMatchObject({ lengthCm: 200, widthCm: 50, rows: 1 });
    expect(plants(8)).toMatchObject({ lengthCm: 200, widthCm: 100, rows: 2, totalCm: 400 });
    expect(plants(4, 2)).toMatchObject({ rows: 2, totalCm: 400 });
  });

  test("is one row of no known number, as wide as its part of the bed, where the plan says nothing", () => {
    const block = blockOf(standing("chard", { amount: null }), BED, 3);
    expect(block).toEqual({ lengthCm: 360, widthCm: 40, rows: 1, totalCm: 360, apartCm: null });
  });

  test("is never longer than the bed, however far apart its plants are", () => {
    const spacing = { apartCm: 500, rowCm: 500 };
    const amount = { kind: "plants", count: 1 } as const;
    expect(blockOf(standing("squash", { spacing, amount }), BED, 1).lengthCm).toBe(360);
  });
});
