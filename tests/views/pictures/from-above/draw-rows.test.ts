import { describe, expect, test } from "vitest";
import {
  drawRows,
  headOf,
  rowsOn,
  widerFor,
} from "../../../../src/views/pictures/from-above/draw-rows.ts";
import { placesIn } from "../../../../src/views/pictures/from-above/places.ts";
import type { Standing } from "../../../../src/views/pictures/from-above/standing.ts";
import { BEDS, bedsSketchOf, contentOf, firstBed, standing } from "./beds.ts";

const BED = firstBed(bedsSketchOf(BEDS["no sizes, no amounts"] ?? "", "2027-06-20"));
const SIZE = { lengthCm: 240, widthCm: 120 };

function rows(each: Standing, pxPerCm = 0.5) {
  const content = contentOf(BED, [each], { pxPerCm });
  const [place] = placesIn([each], SIZE);
  if (!place) throw new Error("no place");
  return { place, content, rows: rowsOn(place, content) };
}

describe("rows as they are drawn", () => {
  test("have a dot for each plant that stands, as far apart as they are", () => {
    const { boxes, asDots } = rows(
      standing("leeks", { amount: { kind: "plants", count: 30 } }),
    ).rows;
    expect(asDots).toBe(true);
    expect(boxes).toHaveLength(30);
    const [one, two] = boxes;
    expect((two?.x ?? 0) - (one?.x ?? 0)).toBeCloseTo(10 * 0.5);
  });

  test("are lines where plants are too near to be told apart, or not known", () => {
    const close = standing("carrots", { spacing: { apartCm: 3, rowCm: 6 } });
    expect(rows(close).rows.asDots).toBe(false);
    expect(rows(standing("chard", { amount: null })).rows.asDots).toBe(false);
  });

  test("leave out what a name lies on", () => {
    const { boxes, ...rest } = rows(standing("beets")).rows;
    const name = { x: 100, y: 90, widthPx: 30, heightPx: 40 };
    const dots = (names: readonly (typeof name)[]) =>
      (
        drawRows({ boxes, ...rest }, names)
          .join("")
          .match(/h0/g) ?? []
      ).length;
    expect(dots([])).toBe(24);
    expect(dots([name])).toBe(18);
    const line = rows(standing("carrots", { spacing: { apartCm: 3, rowCm: 6 } })).rows;
    expect(drawRows(line, [name]).join("").match(/H/g)).toHaveLength(1);
    expect(
      drawRows(line, [{ ...name, x: 130 }])
        .join("")
        .match(/H/g),
    ).toHaveLength(2);
  });
});

test("a block would rather be wide enough for its rows, for a name on what is sown, and for one above", () => {
  const { place, content } = rows(standing("beets"));
  const [own = 0, on = 0, above = 0] = widerFor(content)(place.standing, place.block);
  expect(own).toBeLessThan(on);
  expect(on).toBeLessThan(above);
  expect(headOf({ ...place.block, widthCm: above }, content)).toBeGreaterThan(12);
  expect(headOf({ ...place.block, widthCm: on }, content)).toBe(0);
  const counted = standing("leeks", { amount: { kind: "plants", count: 9 } });
  const [rowsOnly, same] = widerFor(content)(counted, place.block);
  expect(same).toBe(rowsOnly);
});
