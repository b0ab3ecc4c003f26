import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { inKeyForm } from "../../../src/garden/plan/keyform.ts";
import { plainValueOf } from "../../../src/garden/plan/tree.ts";
import { treeOf } from "../../../src/garden/plan/yaml.ts";

function keys(text: string) {
  const { tree } = treeOf(text, "f");
  const told: Problem[] = [];
  return { plan: tree && plainValueOf(inKeyForm(tree, told)), told: told.map(({ code }) => code) };
}

describe("crops as keys", () => {
  it("are made of words, phrases and keys alike, under beds and without", () => {
    const { plan } = keys(
      "beds:\n  A:\n    crops:\n      - carrot: 3 rows\ncrops:\n  - beet\n  - beet, 2 rows\n  - {crop: garlic, cloves: 6}",
    );
    expect(plan).toEqual({
      beds: { A: { crops: [{ crop: "carrot", rows: 3 }] } },
      crops: [{ crop: "beet" }, { crop: "beet", rows: 2 }, { crop: "garlic", cloves: 6 }],
    });
  });

  it("may be in quotes as a whole, as in a list on one line", () => {
    expect(keys(`crops: ["carrot: 3 rows, under a board", 'beet: 2 rows']`).plan).toEqual({
      crops: [
        { crop: "carrot", rows: 3, under: "board" },
        { crop: "beet", rows: 2 },
      ],
    });
  });

  it("may have a phrase and keys beside it", () => {
    expect(keys("crops:\n  - garlic: 60 cloves\n    name: second garlic").plan).toEqual({
      crops: [{ crop: "garlic", cloves: 60, name: "second garlic" }],
    });
  });

  it("take the first strange key for the crop, but a misspelt key for no crop", () => {
    expect(keys("crops:\n  - moonflower: 3 rows\n    name: x").plan).toEqual({
      crops: [{ crop: "moonflower", rows: 3, name: "x" }],
    });
    expect(keys("crops:\n  - clovse: 6\n    name: x").plan).toEqual({
      crops: [{ clovse: 6, name: "x" }],
    });
    expect(keys("crops:\n  - nmae: x\n    carrot: 3 rows").plan).toEqual({
      crops: [{ crop: "carrot", rows: 3, nmae: "x" }],
    });
  });

  it("report what phrase and key both give, and a list for a phrase", () => {
    expect(keys("crops:\n  - garlic: 60 cloves\n    cloves: 50").told).toEqual(["said-twice"]);
    expect(keys("crops:\n  - garlic: [60 cloves]").told).toEqual(["wrong-type"]);
  });

  it("leave everything else as it is", () => {
    expect(keys("a: 1\nbeds: x\ncrops: y").plan).toEqual({ a: 1, beds: "x", crops: "y" });
    expect(keys("crops:\n  -\n  - carrot").plan).toEqual({ crops: [{ crop: "carrot" }] });
  });
});
