import { expect, test } from "vitest";
import { rowsOn } from "../../../../src/views/pictures/from-above/draw-rows.ts";
import {
  drawMark,
  hatching,
  markBoxes,
  markRound,
} from "../../../../src/views/pictures/from-above/marks.ts";
import { placesIn } from "../../../../src/views/pictures/from-above/places.ts";
import type { Mark } from "../../../../src/views/pictures/from-above/sketch.ts";
import { BEDS, bedsSketchOf, contentOf, firstBed, standing } from "./beds.ts";

const BED = firstBed(bedsSketchOf(BEDS["no sizes, no amounts"] ?? "", "2027-06-20"));

function widths(as: Mark["as"]) {
  const salad = standing("Salad");
  const sowings = [...salad.sowings, { from: 99_999, gone: 100_000 } as never];
  const each = { ...salad, sowings };
  const note = { bed: null, lines: [], marks: [{ planting: each.key, as }], freeCm: null };
  const content = contentOf(BED, [each], { note });
  const [place] = placesIn([each], { lengthCm: 240, widthCm: 120 });
  if (!place) throw new Error("no place");
  const block = { place, rows: rowsOn(place, content) };
  expect(markBoxes(block, content)).toHaveLength(1);
  return drawMark(block, content).map((svg) => Number(/ width="([\d.]+)"/.exec(svg)?.[1]));
}

test("a cover lies over the rows that stand, and a frame stands round the whole block", () => {
  expect(widths("do")).toEqual([117]);
  expect(widths("cover").every((width) => width < 70)).toBe(true);
});

test("bags are marked round their rims, and hatched for a cover with what the drawing has for it", () => {
  expect(markRound({ x: 10, y: 20 }, 8, "do")).toEqual([expect.stringContaining('r="8"')]);
  const [hatched, frame] = markRound({ x: 10, y: 20 }, 8, "cover");
  expect(frame).toContain('class="mark-line"');
  const [, id = ""] = /url\(#([^)]+)\)/.exec(hatched ?? "") ?? [];
  expect(hatching()).toContain(`id="${id}"`);
});
