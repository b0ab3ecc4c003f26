import { expect, test } from "vitest";
import { isSized, outlineOf, sizeOf } from "../../../../src/views/pictures/from-above/ground.ts";
import { BEDS, bedsSketchOf } from "./beds.ts";

const ROOM = { widthPx: 358, gapPx: 14 };
const bedsIn = (garden: string) => bedsSketchOf(BEDS[garden] ?? "", "2027-06-20").plan.beds;

test("a bed is as long and as wide as the plan says, and one that says nothing is some bed", () => {
  const [somewhere, empty] = bedsIn("no sizes, no amounts");
  if (!somewhere || !empty) throw new Error("no beds");
  expect([isSized(somewhere), isSized(empty)]).toEqual([false, true]);
  expect(sizeOf(empty)).toEqual({ lengthCm: 300, widthCm: 100 });
  expect(sizeOf(somewhere)).toEqual({ lengthCm: 240, widthCm: 120 });
  expect(outlineOf(empty, { pxPerCm: 0.5 }, ROOM)).toMatchObject({ widthPx: 150, heightPx: 50 });
});

test("a bed longer than the sheet lies in strips that together are as long as it is", () => {
  const [border] = bedsIn("a hundred feet beside a pot");
  if (!border) throw new Error("no border");
  const { widthPx, strips, stripPx } = outlineOf(border, { pxPerCm: 0.3 }, ROOM);
  expect(widthPx).toBe(358);
  expect(strips).toBe(Math.ceil((3048 * 0.3) / 358));
  expect(stripPx).toBeCloseTo(91.44 * 0.3);
});

test("bags lie in rows as long as there is room", () => {
  const pots = bedsIn("glass, film, pots and cloches")[3];
  if (!pots?.bags) throw new Error("no pots");
  const wide = outlineOf(pots, { pxPerCm: 0.5 }, ROOM);
  const narrow = outlineOf(pots, { pxPerCm: 0.5 }, { ...ROOM, widthPx: 80 });
  expect(wide.strips).toBe(1);
  expect(narrow.strips).toBeGreaterThan(1);
  expect(narrow.strips * Math.round(narrow.widthPx / narrow.pitchPx)).toBeGreaterThanOrEqual(7);
});
