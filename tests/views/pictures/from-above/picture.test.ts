import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { frostTonight } from "../../../../src/engine/beds/frost-tonight.ts";
import { freeInBeds } from "../../../../src/engine/beds/room.ts";
import type { YearCourse } from "../../../../src/engine/year.ts";
import { detailsOf, namesIn } from "../../../../src/views/pictures/from-above/details.ts";
import { sizeOf } from "../../../../src/views/pictures/from-above/ground.ts";
import { frostNotes, roomNotes } from "../../../../src/views/pictures/from-above/notes.ts";
import { drawBeds } from "../../../../src/views/pictures/from-above/picture.ts";
import type { BedsSketch } from "../../../../src/views/pictures/from-above/sketch.ts";
import { clash, inside } from "../../../../src/views/pictures/labels.ts";
import type { PictureForm } from "../../../../src/views/pictures/sketch.ts";
import { drawnFor, samples } from "../../../depth.ts";
import { QUARRY } from "../../../gardens.ts";
import { once } from "../../../once.ts";
import { anyPlan } from "../../../properties/plans.ts";
import { GARDENS, labelsOf, read, viewOf } from "../drawn.ts";
import { everyTag, textIn, under } from "../xml.ts";
import { BEDS, bedsSketchOf } from "./beds.ts";

const DEMO = readFileSync(
  join(import.meta.dirname, "../../../../plans/quarry-lane/2027.yaml"),
  "utf8",
);

/** A sketch for each of what the drawing is used for. */
const USES: Readonly<Record<string, (sketch: BedsSketch) => BedsSketch>> = {
  standing: (sketch) => sketch,
  inset: (sketch) => ({ ...sketch, inset: true }),
  room: (sketch) => {
    const free = freeInBeds(sketch.year as YearCourse, sketch.day);
    return { ...sketch, inset: true, notes: roomNotes(free, sketch.plan.measures) };
  },
  frost: (sketch) => ({
    ...sketch,
    notes: frostNotes(frostTonight(sketch.year as YearCourse, sketch.day, -2)),
  }),
};

const FORMS: readonly PictureForm[] = ["phone", "page"];
const ALL = { demo: DEMO, canonical: QUARRY, ...BEDS, ...GARDENS };
const CASES = Object.entries(ALL).flatMap(([garden, text]) =>
  Object.entries(USES).flatMap(([use, asUsed]) =>
    FORMS.map((form) => ({
      ...{ garden, use, form },
      drawn: once(() => {
        const sketch = asUsed(bedsSketchOf(text, "2027-07-10", { form }));
        const drawing = drawBeds(sketch);
        return drawing && { sketch, ...drawing, tag: read(drawing.svg) };
      }),
    })),
  ),
);

/** What is wrong with the words of a drawing: those that leave it, those that touch, and those too small to be read. */
function wrongWords(svg: string): readonly string[] {
  const tag = read(svg);
  const whole = { x: 0, y: 0, ...viewOf(tag) };
  const labels = labelsOf(tag);
  const touching = labels.flatMap((one, i) =>
    labels
      .slice(i + 1)
      .flatMap((two) => (clash(one.box, two.box) ? [`${one.text} | ${two.text}`] : [])),
  );
  const small = labels.filter(({ sizePx }) => sizePx < 12).map(({ text }) => `small: ${text}`);
  return [
    ...labels.filter(({ box }) => !inside(box, whole)).map(({ text }) => `out: ${text}`),
    ...touching,
    ...small,
  ];
}

describe.each(CASES)("$use on a $form, $garden", ({ drawn }) => {
  test("is sound: words apart and readable, no broken number, every fill there", () => {
    const found = drawn();
    if (found === null) return;
    expect(wrongWords(found.svg)).toEqual([]);
    expect(found.svg).not.toMatch(/NaN|Infinity|undefined|null/);
    const ids = everyTag(found.tag).flatMap((tag) => tag.attributes.id ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    const fills = [...found.svg.matchAll(/url\(#([^)]+)\)/g)].map(([, id]) => id ?? "");
    expect(fills.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test("names every planting that stands, once in the picture and once in words", () => {
    const found = drawn();
    if (found === null) return;
    const shown = labelsOf(found.tag).map(({ text }) => text);
    const all = shown.join(" ").toLowerCase();
    const told = found.words.map(({ text }) => text).join(" ");
    const description = textIn(under(found.tag, "desc")[0] ?? found.tag);
    for (const details of detailsOf(found.sketch).beds)
      for (const name of namesIn(details, found.sketch)) {
        expect(all).toContain(name.toLowerCase());
        expect(told.toLowerCase()).toContain(name.toLowerCase());
        expect(description.toLowerCase()).toContain(name.toLowerCase());
      }
  });

  test("draws every bed once, as long and as wide as the ruler says", () => {
    const found = drawn();
    if (found === null) return;
    const beds = detailsOf(found.sketch).beds.filter(({ bed }) => bed.bags === null);
    const grounds = under(found.tag, "rect").filter((tag) => tag.attributes.class === "earth");
    const [, from = "", to = ""] = /M([\d.]+) [\d.]+v5H([\d.]+)v-5/.exec(found.svg) ?? [];
    const [, number = "", unit = ""] =
      /^([\d.]+) (ft|m)$/.exec(
        labelsOf(found.tag).find(({ text }) => /^[\d.]+ (ft|m)$/.test(text))?.text ?? "",
      ) ?? [];
    const pxPerCm = (Number(to) - Number(from)) / (Number(number) * (unit === "ft" ? 30.48 : 100));
    const area = grounds.reduce(
      (sum, { attributes: { width, height } }) => sum + Number(width) * Number(height),
      0,
    );
    const wanted = beds
      .map(({ bed }) => sizeOf(bed))
      .reduce((sum, { lengthCm, widthCm }) => sum + lengthCm * widthCm * pxPerCm ** 2, 0);
    if (beds.length > 0) expect(area / wanted).toBeCloseTo(1, 1);
    const long = beds.some(({ bed }) => sizeOf(bed).lengthCm > 1250);
    if (!long) expect(grounds.length).toBe(beds.length);
  });
});

test("a garden without beds, and notes that touch no bed, give no drawing", () => {
  const none = bedsSketchOf(GARDENS["no beds, nobody, no latitude"] ?? "", "2027-07-10");
  expect(drawBeds(none)).toBeNull();
  const notes = { text: "", beds: [], alone: true };
  expect(drawBeds(bedsSketchOf(QUARRY, "2027-07-10", { notes }))).toBeNull();
});

test("what follows another is drawn on its days alone, and in its place", () => {
  const on = (day: string) => drawBeds(bedsSketchOf(DEMO, day))?.svg ?? "";
  expect(on("2027-06-20")).toContain(">Garlic<");
  expect(on("2027-06-20")).not.toContain("Spinach");
  expect(on("2027-09-10")).toContain(">Spinach<");
});

test("into a page it brings no style and no ground of its own", () => {
  const inset = drawBeds({ ...bedsSketchOf(QUARRY, "2027-07-10"), inset: true })?.svg ?? "";
  expect(inset).not.toContain("<style");
  expect(inset).not.toContain('class="paper"');
  expect(inset).toContain("<title");
});

/** Where it changes on purpose: `GOLDEN=write npx vitest run --config tests/vitest.config.ts tests/views/pictures/from-above/picture.test.ts`. */
test("the demo's beds are drawn as they were when they were last looked at", () => {
  const golden = join(import.meta.dirname, "quarry-lane.svg");
  const svg = drawBeds({ ...bedsSketchOf(DEMO, "2027-06-20"), inset: true })?.svg ?? "";
  if (process.env.GOLDEN === "write") writeFileSync(golden, svg);
  expect(svg).toBe(readFileSync(golden, "utf8"));
});

test("drawings of any garden are well formed, and their words keep apart", {
  timeout: 60_000,
}, () => {
  const roll = drawnFor(17);
  for (let i = 0; i < samples(16, 5); i++) {
    const text = anyPlan(roll);
    const on = `2027-${String(1 + Math.floor(roll() * 12)).padStart(2, "0")}-15`;
    for (const form of FORMS)
      for (const [use, asUsed] of Object.entries(USES)) {
        const svg = drawBeds(asUsed(bedsSketchOf(text, on, { form })))?.svg;
        if (svg === undefined) continue;
        expect(wrongWords(svg), `${use} ${form} ${on}\n${text}`).toEqual([]);
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      }
  }
});
