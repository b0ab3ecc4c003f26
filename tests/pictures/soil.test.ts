import { describe, expect, test } from "vitest";
import { sayDay } from "../../src/days/day.ts";
import { soilPicture } from "../../src/pictures/soil.ts";
import { waitingOf } from "../../src/pictures/waiting.ts";
import { QUARRY } from "../gardens.ts";
import { GARDENS, labelsOf, on, pointsOf, read, sketchOf } from "./drawn.ts";
import { byId, type Tag, under } from "./xml.ts";

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
  const [first] = waitingOf(sketchOf(QUARRY).plan);
  expect(said).toContain(`45 °F, from ${sayDay(first?.day ?? on("2027-01-01"))}`);
  const usual = path(svg, "soil-usual");
  const dot = under(svg, "circle").find(({ attributes }) => attributes.class === "leaf");
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
