import { expect, test } from "vitest";
import type { LabelArea } from "../../../src/views/pictures/beside.ts";
import { crossings } from "../../../src/views/pictures/crossings.ts";
import { yOf } from "../../../src/views/pictures/degrees.ts";
import { clash } from "../../../src/views/pictures/labels.ts";
import { xOf } from "../../../src/views/pictures/scale.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { soilWaitsOf } from "../../../src/views/pictures/soil-waits.ts";
import { QUARRY } from "../../gardens.ts";
import { labelsOf, on, sketchOf } from "./drawn.ts";
import { parse, under } from "./xml.ts";

const scale = { from: on("2027-03-01"), to: on("2027-11-30"), leftPx: 16, rightPx: 374 };
const around: LabelArea = {
  field: { scale, topPx: 100, lowPx: 500, leastC: 0, mostC: 24 },
  sheet: sheetOf("phone"),
  within: { x: 16, y: 100, widthPx: 358, heightPx: 400 },
  taken: [],
  band: [],
};
const drawn = (text: string, waiting = soilWaitsOf(sketchOf(text))) =>
  parse(`<g>${crossings(sketchOf(text), waiting, around).join("")}</g>`);

test("each soil that something waits for has a mark at its day and warmth", () => {
  const [first] = soilWaitsOf(sketchOf(QUARRY));
  const [dot] = under(drawn(QUARRY), "circle");
  expect(Number(dot?.attributes.cx)).toBeCloseTo(xOf(scale, first?.day ?? 0), 1);
  expect(Number(dot?.attributes.cy)).toBeCloseTo(yOf(around.field, first?.soilC ?? 0), 1);
});

test("names beyond their lines are counted", () => {
  const [first] = soilWaitsOf(sketchOf(QUARRY));
  if (!first) throw new RangeError("nothing waits");
  const names = Array.from({ length: 30 }, (_, i) => `kind ${i + 1}`);
  const said = labelsOf(drawn(QUARRY, [{ ...first, names }]))
    .map((label) => label.text)
    .join(" ");
  expect(said).toMatch(/^Kind 1, .* and \d+ more 45 °F/);
});

test("what was measured stands at its own day with its bed, and only within the picture", () => {
  const measured = drawn(
    `${QUARRY}diary:\n  - 25 May: soil in South bed 58 °F\n  - 5 Jan: soil 40 °F\n`,
    [],
  );
  expect(labelsOf(measured).map((label) => label.text)).toEqual(["58 °F", "25 May", "South bed"]);
  const [ring] = under(measured, "circle");
  expect(Number(ring?.attributes.cx)).toBeCloseTo(xOf(scale, on("2027-05-25")), 1);
});

test("what never has to wait has no mark, since it has no day", () => {
  const waiting = soilWaitsOf(sketchOf(QUARRY));
  const [first] = waiting;
  if (!first) throw new RangeError("nothing waits");
  expect(under(drawn(QUARRY, [first]), "circle").length).toBe(1);
  expect(under(drawn(QUARRY, [{ ...first, always: true }]), "circle").length).toBe(0);
});

test("words go beside a line that runs through their place, or before the curve", () => {
  const first = soilWaitsOf(sketchOf(QUARRY)).at(-1);
  if (!first) throw new RangeError("nothing waits");
  const set = (taken: LabelArea["taken"]) =>
    labelsOf(
      parse(`<g>${crossings(sketchOf(QUARRY), [first], { ...around, taken }).join("")}</g>`),
    );
  const [free] = set([]);
  if (!free) throw new RangeError("no words");
  const wall = { x: free.box.x + 5, y: 100, widthPx: 4, heightPx: 400 };
  const moved = set([wall]);
  expect(moved.length).toBeGreaterThan(1);
  expect(moved.filter(({ box }) => clash(box, wall))).toEqual([]);
  const all = { x: xOf(scale, first.day ?? 0) + 6, y: 100, widthPx: 300, heightPx: 400 };
  const before = set([all]);
  expect(before.length).toBeGreaterThan(1);
  for (const { box } of before) expect(box.x + box.widthPx).toBeLessThan(all.x);
});
