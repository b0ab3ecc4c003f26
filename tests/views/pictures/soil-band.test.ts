import { expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { type TemperatureField, yOf } from "../../../src/views/pictures/degrees.ts";
import { clash } from "../../../src/views/pictures/labels.ts";
import { xOf } from "../../../src/views/pictures/scale.ts";
import { bandBoxes, lineBoxes, soilLines } from "../../../src/views/pictures/soil-band.ts";
import { soilIn } from "../../../src/views/pictures/warmth.ts";
import { QUARRY } from "../../gardens.ts";
import { on, sketchOf } from "./drawn.ts";
import { everyTag, parse } from "./xml.ts";

const drawn = sketchOf(QUARRY);
const { plan } = drawn;
const film = plan.beds.find((bed) => bed.warmed) ?? null;
const field: TemperatureField = {
  scale: { from: on("2027-04-01"), to: on("2027-11-30"), leftPx: 16, rightPx: 374 },
  topPx: 100,
  lowPx: 500,
  leastC: 0,
  mostC: 24,
};

test("there is a band, a usual line, and a line under film only where there is film", () => {
  const ids = (bed: typeof film) =>
    everyTag(parse(`<g>${soilLines(drawn, bed, field).join("")}</g>`)).flatMap(
      ({ attributes }) => attributes.id ?? [],
    );
  expect(ids(film)).toEqual(["soil-band", "soil-film", "soil-usual"]);
  expect(ids(null)).toEqual(["soil-band", "soil-usual"]);
});

test("words on the usual line touch the band's room, and words high above it do not", () => {
  const day = on("2027-06-10");
  const at = (tempC: number) => ({
    x: xOf(field.scale, day),
    y: yOf(field, tempC),
    widthPx: 2,
    heightPx: 2,
  });
  const boxes = bandBoxes(drawn, null, field);
  const usualC = soilIn(drawn, null)(day).usualC;
  expect(boxes.some((box) => clash(box, at(usualC)))).toBe(true);
  expect(boxes.some((box) => clash(box, at(usualC + 8)))).toBe(false);
});

test("the usual line and the one under film are off limits on every day, and what lies between is free", () => {
  const boxes = lineBoxes(drawn, film, field);
  const touches = (day: number, tempC: number) =>
    boxes.some((box) =>
      clash(box, { x: xOf(field.scale, day), y: yOf(field, tempC), widthPx: 0.5, heightPx: 0.5 }),
    );
  for (let day = field.scale.from; day <= field.scale.to; day = plus(day, 1)) {
    expect(touches(day, soilIn(drawn, null)(day).usualC)).toBe(true);
    expect(touches(day, soilIn(drawn, film)(day).usualC)).toBe(true);
  }
  const june = on("2027-06-10");
  const between = (soilIn(drawn, null)(june).usualC + soilIn(drawn, film)(june).usualC) / 2;
  expect(touches(june, between)).toBe(false);
});
