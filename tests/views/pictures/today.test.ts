import { expect, test } from "vitest";
import { inside } from "../../../src/views/pictures/labels.ts";
import { xOf } from "../../../src/views/pictures/scale.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { todayLabel, todayLine } from "../../../src/views/pictures/today.ts";
import { labelsOf, on } from "./drawn.ts";
import { parse } from "./xml.ts";

const SCALE = { from: on("2027-04-01"), to: on("2027-11-30"), leftPx: 16, rightPx: 374 };
const drop = { topPx: 100, lowPx: 300 };
const named = (day: string | null, more = "") =>
  todayLabel(day === null ? null : on(day), SCALE, { drop, sheet: sheetOf("phone"), more });
const said = (day: string, more = "") =>
  labelsOf(parse(`<g>${named(day, more).svg.join("")}</g>`)).map((label) => label.text);

test("a dotted line runs down from its name", () => {
  expect(todayLine(50, drop)).toContain('d="M50 100V300"');
  expect(said("2027-05-25")).toEqual(["today 25 May"]);
});

test("the line takes room from top to bottom as its name does", () => {
  const { boxes } = named("2027-05-25");
  const x = xOf(SCALE, on("2027-05-25"));
  const line = { x: x - 0.5, y: 100, widthPx: 1, heightPx: 200 };
  expect(boxes.some((box) => inside(line, box))).toBe(true);
  expect(boxes.length).toBe(2);
});

test("what stands behind the day is left out where it has no room", () => {
  expect(said("2027-05-25", ": 1 spring in 20")).toEqual(["today 25 May: 1 spring in 20"]);
  expect(said("2027-05-25", ` and ${"more ".repeat(20)}`)).toEqual(["today 25 May"]);
});

test("there is none on no day, and on a day outside the picture", () => {
  expect(named(null).svg).toEqual([]);
  expect(named("2027-03-31").svg).toEqual([]);
});
