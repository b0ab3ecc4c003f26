import { expect, test } from "vitest";
import { bedRowsOf } from "../../../src/views/pictures/beds.ts";
import { drawColumn } from "../../../src/views/pictures/column.ts";
import { layOutColumns } from "../../../src/views/pictures/layout.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { QUARRY } from "../../gardens.ts";
import { labelsOf, on, sketchOf } from "./drawn.ts";
import { byId, parse, under } from "./xml.ts";

const days = { from: on("2027-04-01"), to: on("2027-11-30") };

function drawn(today: string | null) {
  const sketch = sketchOf(QUARRY, "phone", today);
  const room = () => ({ topPx: 120, footPx: 60 });
  const layout = layOutColumns(sheetOf("phone"), { rows: bedRowsOf(sketch), days, room });
  const [column] = layout.columns;
  if (!column) throw new RangeError("no column");
  const drawing = { i: 0, topPx: 120, layout, sketch };
  return parse(`<g>${drawColumn(column, drawing).join("")}</g>`);
}

test("a column has its months, its marks and every bed's name", () => {
  const said = labelsOf(drawn("2027-07-25")).map((label) => label.text);
  for (const text of [
    "Apr",
    "Nov",
    "today 25 July",
    "last frost 6 May",
    "first frost 2 Oct",
    "Bags",
    "Garlic bed",
  ])
    expect(said).toContain(text);
});

test("the air is frosty in April and clear in July, the ground cold in April and warm in July", () => {
  const svg = drawn(null);
  const strength = (id: string, share: number) => {
    const stops = under(byId(svg, id), "stop").map(({ attributes }) => [
      Number(attributes.offset),
      Number(attributes["stop-opacity"]),
    ]);
    return stops.findLast(([offset = 0]) => offset <= share)?.[1] ?? Number.NaN;
  };
  expect(strength("season-frost-0", 0)).toBeGreaterThan(0.45);
  expect(strength("season-frost-0", 0.45)).toBeLessThan(0.02);
  expect(strength("season-open-0", 0)).toBeLessThan(0.05);
  expect(strength("season-open-0", 0.45)).toBeGreaterThan(0.25);
  expect(strength("season-film-0", 0.1)).toBeGreaterThan(strength("season-open-0", 0.1));
});

test("today runs through the air of every lane and never through its words", () => {
  const uprights = (today: string | null) =>
    under(drawn(today), "path").filter(
      ({ attributes }) => attributes.class === "ink-line" && attributes.d?.includes("V"),
    );
  expect(uprights("2027-07-25").length).toBe(6);
  expect(uprights(null)).toEqual([]);
});

test("a line on the soil says from when to when one eats of each planting", () => {
  const lines = under(drawn(null), "path").filter(
    ({ attributes }) =>
      attributes.class === "ink-line" && attributes["stroke-dasharray"] === undefined,
  );
  expect(lines.length).toBe(7);
});
