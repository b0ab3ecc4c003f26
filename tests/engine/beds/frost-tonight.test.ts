import { describe, expect, test } from "vitest";
import { celsius, fahrenheit } from "../../../src/base/quantities/quantity.ts";
import { frostTonight } from "../../../src/engine/beds/frost-tonight.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { sketchOf } from "../../views/pictures/drawn.ts";

const report = (iso: string, lowF: number, text = QUARRY) =>
  frostTonight(sketchOf(text).year, isoDay(iso), celsius(lowF));
const needs = (...asked: Parameters<typeof report>) =>
  report(...asked).beds.flatMap(({ plants }) =>
    plants.map(({ planting, stage, need }) => `${planting.slice(5)} ${stage}: ${need.kind}`),
  );

describe("the night's report", () => {
  test("goes through the beds in the plan's order, those with nothing in them left out", () => {
    const { beds } = report("2027-05-29", 29);
    expect(beds.map(({ bed }) => bed)).toEqual(["bags", "root-bed", "salad-bed", "south-bed"]);
    expect(needs("2027-05-29", 29)).toEqual([
      "potato young: bury",
      "carrot young: cover",
      "beet young: cover",
      "lettuce young: cover",
      "tomato young: cover",
    ]);
  });

  test("leaves seed in the ground alone, and trays that are out come in", () => {
    const { trays } = report("2027-05-15", 29);
    expect(trays.map(({ name, need }) => `${name} ${need}`)).toEqual(["tomatoes bring in"]);
    const carrots = report("2027-04-28", 29).beds.flatMap(({ plants }) => plants);
    expect(carrots.every(({ need }) => need.kind === "leave")).toBe(true);
  });

  test("is put right by the garden's own correction", () => {
    const lane = QUARRY.replace(
      "  greenhouse:",
      "  colder than the forecast by: 3 °F\n  greenhouse:",
    );
    expect(fahrenheit(report("2027-06-15", 38, lane).lowC)).toBeCloseTo(35, 9);
    const tomato = (...asked: Parameters<typeof report>) =>
      needs(...asked).find((line) => line.startsWith("tomato"));
    expect(tomato("2027-06-15", 38, lane)).toContain("cover");
    expect(tomato("2027-06-15", 38)).toContain("leave");
  });

  test("is plain JSON", () => {
    const plain = report("2027-06-15", 29);
    expect(JSON.parse(JSON.stringify(plain))).toEqual(plain);
  });

  test("names crops that it does not know, and what stands in no bed last", () => {
    const small = `garden: Small\nyear: 2027\nplace: { clock: America/Denver, last frost: about 6 May, first frost: about 2 Oct }\ncrops:\n  - quince\n  - bean\n`;
    const night = report("2027-07-01", 30, small);
    expect(night.unknown).toEqual(["quince"]);
    expect(night.beds.map(({ bed, plants }) => [bed, plants.length])).toEqual([[null, 1]]);
  });

  test("lets bags be carried only where two arms can", () => {
    const small = QUARRY.replace("16 in across, 14 in high", "10 in across, 10 in high");
    expect(report("2027-06-15", 29, small).beds[0]?.carry).toBe(true);
    expect(report("2027-06-15", 29).beds[0]?.carry).toBe(false);
  });
});
