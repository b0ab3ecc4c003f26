import { describe, expect, test } from "vitest";
import { sizeOf } from "../../../../src/views/pictures/from-above/ground.ts";
import { overlap, placesIn } from "../../../../src/views/pictures/from-above/places.ts";
import { meet, standingByBed } from "../../../../src/views/pictures/from-above/standing.ts";
import { QUARRY } from "../../../gardens.ts";
import { GARDENS } from "../drawn.ts";
import { BEDS, bedsSketchOf, standing } from "./beds.ts";

const BED = { lengthCm: 300, widthCm: 100 };
const short = (name: string, days?: readonly [string, string]) =>
  standing(name, { amount: { kind: "plants", count: 10 } }, days);

describe("places in a bed", () => {
  test("lie beside each other where there is room, else below", () => {
    const places = placesIn([short("a"), short("b"), short("c"), standing("d")], BED);
    expect(places.map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [100, 0],
      [200, 0],
      [0, 10],
    ]);
  });

  test("are given again to what comes once it is free, first to what follows", () => {
    const first = standing("peas", {}, ["2027-04-01", "2027-07-01"]);
    const other = standing("beets");
    const next = standing("turnips", { after: "2027/peas" }, ["2027-07-10", "2027-09-01"]);
    const places = placesIn([other, first, next], BED);
    expect(places.map(({ y }) => y)).toEqual([0, 20, 20]);
  });

  test("become wider one by one, and never take what is to stay free", () => {
    const all = [standing("a"), standing("b")];
    const wider = () => [45];
    const widths = (freeCm: number) =>
      placesIn(all, BED, { wider, freeCm }).map(({ block }) => block.widthCm);
    expect(widths(0)).toEqual([45, 45]);
    expect(widths(30)).toEqual([45, 20]);
    expect(widths(50)).toEqual([20, 20]);
  });

  test("become narrower in a bed that is too full", () => {
    const rows = { amount: { kind: "rows", count: 4 } } as const;
    const places = placesIn([standing("a", rows), standing("b", rows)], BED);
    expect(places.map(({ y, block }) => [y, block.widthCm])).toEqual([
      [0, 50],
      [50, 50],
    ]);
  });
});

test.each(Object.entries({ QUARRY, ...BEDS, ...GARDENS }))(
  "nothing stands on another's ground, nor outside its bed: %s",
  (_, text) => {
    const sketch = bedsSketchOf(text, "2027-06-20");
    const all = standingByBed(sketch);
    for (const bed of sketch.plan.beds.filter(({ bags }) => bags === null)) {
      const size = sizeOf(bed);
      const places = placesIn(all.get(bed.key) ?? [], size);
      expect(places.length).toBe(all.get(bed.key)?.length ?? 0);
      for (const place of places) {
        expect(place.x + place.block.lengthCm).toBeLessThanOrEqual(size.lengthCm + 1e-5);
        expect(place.y + place.block.widthCm).toBeLessThanOrEqual(size.widthCm + 1e-5);
        const others = places.filter(
          (other) => other !== place && meet(other.standing, place.standing),
        );
        expect(others.filter((other) => overlap(place, other))).toEqual([]);
      }
    }
  },
);
