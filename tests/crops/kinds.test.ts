import { describe, expect, it } from "vitest";
import { CROPS, cropNamed, isKind } from "../../src/crops/crops.ts";
import { kindsOf } from "../../src/crops/kinds.ts";
import { planOf } from "../gardens.ts";

const planted = (...crops: readonly string[]) =>
  planOf(
    [
      "garden: Kinds",
      "year: 2027",
      "place: { clock: Europe/Berlin, latitude: 50, last frost: 5 May, first frost: 10 Oct }",
      "crops:",
      ...crops.map((crop) => `  - ${crop}`),
    ].join("\n"),
  ).plantings;

describe("kinds of a crop", () => {
  it("are named one and many", () => {
    expect(kindsOf(["early", "new"], "potato", "potatoes")).toEqual([
      "early potato",
      "early potatoes",
      "new potato",
      "new potatoes",
    ]);
  });

  it("are grown like their crop, and keep their name for a key, so that two of them are two plantings", () => {
    const both = planted("early potatoes: 12 plants", "maincrop potatoes: 20 plants");
    expect(both.map(({ key, crop, known }) => [key, crop, known])).toEqual([
      ["2027/early-potatoes", "potato", true],
      ["2027/maincrop-potatoes", "potato", true],
    ]);
  });

  it("never change the key of a planting that bears a name of its own", () => {
    const [lettuce] = planted("{ name: salad mix, crop: lettuce, rows: 2 }");
    expect(lettuce?.key).toBe("2027/salad-mix");
  });

  it("are no name of another crop, nor another name of their own", () => {
    for (const { key, one, many, alsoCalled, kinds } of CROPS)
      for (const kind of kinds) {
        expect(cropNamed(kind)?.key, kind).toBe(key);
        expect([key, one, many, ...alsoCalled], kind).not.toContain(kind);
        expect(isKind(kind), kind).toBe(true);
      }
    expect(isKind("potato")).toBe(false);
  });
});
