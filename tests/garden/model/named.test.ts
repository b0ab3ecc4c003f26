import { describe, expect, it } from "vitest";
import { plainName, plantingsNamed } from "../../../src/garden/model/named.ts";
import { ownName } from "../../../src/garden/model/plantings.ts";
import { least, PLAN, planOf } from "../plan/canonical.ts";

const names = (text: string) => plantingsNamed(text, PLAN.plantings).map(ownName);
const crops = (...items: readonly string[]) =>
  least(`crops:\n${items.map((item) => `  - ${item}\n`).join("")}`);

describe("plantings by name", () => {
  it("are those called so, else whose own name it is, else those of the crop", () => {
    expect(names("second garlic")).toEqual(["second-garlic"]);
    expect(names("garlic")).toEqual(["garlic"]);
    expect(names("the potatoes")).toEqual(["potato-early-red"]);
    expect(names("spuds")).toEqual(["potato-early-red"]);
    expect(names("moonflower")).toEqual([]);
  });

  it("are known by variety, with crop or without, and by their rows", () => {
    expect(names("early red")).toEqual(["potato-early-red"]);
    expect(names("early red potatoes")).toEqual([]);
    expect(names("early red potato")).toEqual(["potato-early-red"]);
    expect(names("the carrot rows")).toEqual(["carrot"]);
  });

  it("can be several of one crop", () => {
    const { plantings } = planOf(crops("tomato: red, 1 plants", "tomato: gold, 1 plants"));
    expect(plantingsNamed("tomatoes", plantings)).toHaveLength(2);
  });

  it("is called without its article, its rows and its plants", () => {
    expect(plainName(" The Carrot rows")).toBe("carrot");
    expect(plainName("our tomato plants")).toBe("tomato");
    expect(plainName("theresa")).toBe("theresa");
  });
});
