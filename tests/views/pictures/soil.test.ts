import { describe, expect, test } from "vitest";
import { sayDay } from "../../../src/base/days/day.ts";
import { soilPicture } from "../../../src/views/pictures/soil.ts";
import { soilWaitsOf } from "../../../src/views/pictures/soil-waits.ts";
import { QUARRY } from "../../gardens.ts";
import { GARDENS, labelsOf, on, pointsOf, read, sketchOf } from "./drawn.ts";
import { byId, everyTag, type Tag, under } from "./xml.ts";

const svg = read(soilPicture(sketchOf(QUARRY)));
const words = (tag: Tag) => labelsOf(tag).map((label) => label.text);
const path = (tag: Tag, id: string) => pointsOf(byId(tag, id).attributes.d ?? "");

describe("the band", () => {
  test("lies cool below usual below warm on every day", () => {
    const usual = path(svg, "soil-usual");
    const band = path(svg, "soil-band");
    expect(band.length).toBe(2 * usual.length);
    usual.forEach(({ x, y }, i) => {
      const [warm, cool] = [band[i], band[band.length - 1 - i]];
      expect([warm?.x, cool?.x]).toEqual([x, x]);
      expect(warm?.y).toBeLessThanOrEqual(y);
      expect(cool?.y).toBeGreaterThanOrEqual(y);
    });
    const widest = Math.max(...usual.map(({ y }, i) => y - (band[i]?.y ?? y)));
    expect(widest).toBeGreaterThan(10);
  });

  test("a bed under film has its own line above the usual one, and other gardens have none", () => {
    const usual = path(svg, "soil-usual");
    path(svg, "soil-film").forEach(({ y }, i) => {
      expect(y).toBeLessThan(usual[i]?.y ?? 0);
    });
    const bare = read(soilPicture(sketchOf(GARDENS["a single crop"] ?? "")));
    expect(() => byId(bare, "soil-film")).toThrow();
  });
});

test("what waits for the soil is set on the line, with its soil and its day", () => {
  const said = words(svg);
  expect(said.join(" ")).toContain("Potatoes, carrots, beets");
  const [first] = soilWaitsOf(sketchOf(QUARRY));
  expect(said).toContain(`45 °F, from ${sayDay(first?.day ?? on("2027-01-01"))}`);
  const usual = path(svg, "soil-usual");
  const dot = under(svg, "circle").find(({ attributes }) => attributes.class === "plant");
  const x = Number(dot?.attributes.cx);
  const near = usual.reduce((best, each) =>
    Math.abs(each.x - x) < Math.abs(best.x - x) ? each : best,
  );
  expect(Math.abs(near.y - Number(dot?.attributes.cy))).toBeLessThan(6);
});

test("what was measured stands as a ring at its day with its bed", () => {
  const measured = `${QUARRY}diary:\n  - 25 May: soil in South bed 58 °F\n`;
  const rings = (text: string) =>
    under(read(soilPicture(sketchOf(text))), "circle").filter(
      ({ attributes }) => attributes.class === "ink-line",
    );
  expect(rings(measured).length).toBe(1);
  expect(rings(QUARRY)).toEqual([]);
  expect(words(read(soilPicture(sketchOf(measured))))).toContain("58 °F");
});

test("degrees are in the household's measures", () => {
  expect(words(svg)).toContain("60 °F");
  expect(words(read(soilPicture(sketchOf(GARDENS["a single crop"] ?? ""))))).toContain("15 °C");
});

test("a curve that is only guessed says so", () => {
  const guessed = words(
    read(soilPicture(sketchOf(GARDENS["no beds, nobody, no latitude"] ?? ""))),
  ).join(" ");
  expect(guessed).toContain("rough guess");
  expect(words(svg).join(" ")).not.toContain("rough guess");
});

test("where the soil is always warm there is a scale all the same, and what may go in stands in words below", () => {
  const reef = read(soilPicture(sketchOf(GARDENS["no frost and never cold"] ?? "")));
  expect(words(reef).filter((said) => said.endsWith("°F")).length).toBeGreaterThan(1);
  expect(under(reef, "circle")).toEqual([]);
  expect(words(reef).join(" ")).toContain(
    "Warm enough all year for lettuce, carrots and tomatoes.",
  );
  expect(words(svg).join(" ")).not.toContain("all year");
});

test("degrees stand left of the lines, wherever the lines begin", () => {
  for (const [name, text] of Object.entries({ QUARRY, ...GARDENS })) {
    const drawn = read(soilPicture(sketchOf(text)));
    const left = Math.min(...path(drawn, "soil-usual").map(({ x }) => x));
    const ticks = labelsOf(drawn).filter((label) => /^-?\d+ °[CF]$/.test(label.text));
    expect(ticks.length, name).toBeGreaterThan(1);
    for (const { box } of ticks) expect(box.x + box.widthPx, name).toBeLessThan(left);
  }
});

/** Points along a line, close to each other. */
const along = (points: readonly { readonly x: number; readonly y: number }[]) =>
  points.slice(1).flatMap((to, i) => {
    const from = points[i] ?? to;
    return [0, 0.25, 0.5, 0.75, 1].map((share) => ({
      x: from.x + (to.x - from.x) * share,
      y: from.y + (to.y - from.y) * share,
    }));
  });

test("no words stand on the usual line, the line under film or today's", () => {
  for (const [name, text] of Object.entries({ QUARRY, ...GARDENS }))
    for (const form of ["phone", "page"] as const)
      for (const day of ["2027-03-20", "2027-05-25", "2027-07-10", "2027-11-05"]) {
        const drawn = read(soilPicture(sketchOf(text, form, day)));
        const film = everyTag(drawn).some(({ attributes }) => attributes.id === "soil-film");
        const today = under(drawn, "path").filter(
          ({ attributes }) => attributes.class === "ink-line" && attributes["stroke-dasharray"],
        );
        const on = [
          ...along(path(drawn, "soil-usual")),
          ...(film ? along(path(drawn, "soil-film")) : []),
          ...today.flatMap(({ attributes }) => {
            const [x = 0, top = 0, low = 0] =
              (attributes.d ?? "").match(/[\d.]+/g)?.map(Number) ?? [];
            return along(
              Array.from({ length: 60 }, (_, i) => ({ x, y: top + ((low - top) * i) / 59 })),
            );
          }),
        ];
        const hit = labelsOf(drawn).filter(({ box }) =>
          on.some(
            ({ x, y }) =>
              x > box.x && x < box.x + box.widthPx && y > box.y && y < box.y + box.heightPx,
          ),
        );
        expect(
          hit.map((label) => label.text),
          `${name} ${form} ${day}`,
        ).toEqual([]);
      }
});
