import { expect, test } from "vitest";
import {
  boxesOf,
  groundBoxes,
  isMarked,
} from "../../../../src/views/pictures/from-above/bed-content.ts";
import { placesIn } from "../../../../src/views/pictures/from-above/places.ts";
import { BEDS, bedsSketchOf, contentOf, firstBed, standing } from "./beds.ts";

const LONG = firstBed(bedsSketchOf(BEDS["a hundred feet beside a pot"] ?? "", "2027-06-20"));

test("a stretch of a long bed lies in as many boxes as it has strips, as long together as it is", () => {
  const content = contentOf(LONG, []);
  const boxes = boxesOf({ x: 500, y: 0, lengthCm: 1000, widthCm: 10 }, content);
  expect(boxes.length).toBe(3);
  expect(boxes.reduce((sum, { widthPx }) => sum + widthPx, 0)).toBeCloseTo(500);
});

test("a planting's ground is where its block lies", () => {
  const [place] = placesIn([standing("Beets")], { lengthCm: 200, widthCm: 90 });
  if (!place) throw new Error("no place");
  expect(groundBoxes(place, contentOf(LONG, []))).toEqual([
    { x: 100, y: 100, widthPx: 100, heightPx: 10 },
  ]);
});

test("a planting is marked by its key", () => {
  const note = {
    bed: null,
    lines: [],
    marks: [{ planting: "2027/Beets", as: "do" } as const],
    freeCm: null,
  };
  expect(isMarked(standing("Beets"), note)).toBe(true);
  expect(isMarked(standing("Chard"), note)).toBe(false);
});
