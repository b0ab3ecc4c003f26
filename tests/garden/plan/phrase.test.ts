import { describe, expect, it } from "vitest";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { nearMiss, PHRASE_FORMS, phraseKeys } from "../../../src/garden/plan/phrase.ts";
import { PLANTING_KEY_NAMES } from "../../../src/garden/plan/shape.ts";
import type { Words } from "../../../src/garden/plan/tree.ts";

function phrase(text: string): Words {
  const where = (offset: number) => ({ file: "f", line: 3, column: 10 + offset });
  return { text, at: where(0), where };
}

function keys(text: string) {
  const told: Problem[] = [];
  const found = phraseKeys(phrase(text), told).map(({ key, value }) => [
    key.text,
    value.kind === "words" ? value.value : null,
  ]);
  return { found: Object.fromEntries(found), told };
}

describe("a planting's phrase", () => {
  const MEANS: readonly (readonly [string, Record<string, unknown>])[] = [
    ["18 plants", { plants: 18 }],
    ["1 plant", { plants: 1 }],
    ["1 tree", { plants: 1 }],
    ["60 cloves", { cloves: 60 }],
    ["12 tubers", { tubers: 12 }],
    ["3 rows", { rows: 3 }],
    ["10 ft", { length: "10 ft" }],
    ["2.5 m of row", { length: "2.5 m" }],
    ["72 days", { days: "72 days" }],
    ["from seed indoors", { from: "seed indoors" }],
    ["sown indoors", { from: "seed indoors" }],
    ["from seed outdoors", { from: "seed outdoors" }],
    ["sown direct", { from: "seed outdoors" }],
    ["from seed", { from: "seed" }],
    ["bought", { from: "plants" }],
    ["sprouted first", { "sprouted first": true }],
    ["chitted", { "sprouted first": true }],
    ["harden off 7 days", { "harden off": "7 days" }],
    ["not before 8 Jun", { "not before": "8 Jun" }],
    ["in since 14 Oct 2026", { "in since": "14 Oct 2026" }],
    ["set out 8 Jun", { "set out": "8 Jun" }],
    ["sow 14 May", { sow: "14 May" }],
    ["sow in April", { sow: "April" }],
    ["plant this October", { plant: "this October" }],
    ["every 14 days", { every: "14 days" }],
    ["every two weeks", { every: "two weeks" }],
    ["4 times", { times: 4 }],
    ["under a board", { under: "board" }],
    ["under a net and fabric", { under: "net and fabric" }],
    ["under an insect net", { under: "insect net" }],
    ["under cloches", { under: "cloches" }],
    ["covered with fleece", { under: "fleece" }],
    ["on a trellis", { has: "trellis" }],
    ["up bean poles", { has: "bean poles" }],
    ["with collars and stakes", { has: "collars and stakes" }],
    ["mulched with straw", { mulch: "straw" }],
    ["mulched", { mulch: "mulch" }],
    ["cut and come again", { "cut and come again": true }],
    ["2 trees", { plants: 2 }],
    ["3 bushes", { plants: 3 }],
    ["12 canes", { plants: 12 }],
    ["after the garlic", { after: "the garlic" }],
    ["between the carrot rows", { between: "the carrot rows" }],
    ["without weeding and thinning", { without: "weeding and thinning" }],
    ["for Imre", { for: "Imre" }],
    ["called second garlic", { name: "second garlic" }],
    ["variety early red", { variety: "early red" }],
  ];

  for (const [text, means] of MEANS)
    it(`understands ${text}`, () => {
      expect(keys(text)).toEqual({ found: means, told: [] });
    });

  it("turns every form into keys a planting has, and every example is of its own form", () => {
    for (const { like, pattern, keys: made } of PHRASE_FORMS) {
      expect(pattern.test(like), like).toBe(true);
      for (const key of Object.keys(made)) expect(PLANTING_KEY_NAMES).toContain(key);
    }
  });

  it("takes a first part that is nothing else for the variety", () => {
    expect(keys("early red, 18 plants, sprouted first").found).toEqual({
      variety: "early red",
      plants: 18,
      "sprouted first": true,
    });
    for (const name of ["Fox Cherry", "golden", "Bolero", "red", "Long Orange Improved"])
      expect(keys(name), name).toEqual({ found: { variety: name }, told: [] });
  });

  it("reports any other part at its own column", () => {
    const { told } = keys("early red, 18 plants, with love");
    expect(told.map(({ code, at }) => `${code}@${at.column}`)).toEqual(["unknown-word@32"]);
  });

  it("does not take a near miss for a variety, and offers what is near", () => {
    for (const [text, like] of [
      ["18 plnats", "18 plants"],
      ["8 plnts", "8 plants"],
      ["2 rosw", "2 rows"],
      ["1 rwo", "1 row"],
      ["3 tres", "3 trees"],
      ["4 m2", "4 m"],
      ["5 tims", "5 times"],
      ["on a trelis", "on a trellis"],
      ["undr fleece", "under fleece"],
      ["unter an insect net", "under an insect net"],
      ["undr a board", "under a board"],
      ["under a bord", "under a board"],
      ["sproutd first", "sprouted first"],
      ["witout weeding", "without weeding"],
      ["form seed indoors", "from seed indoors"],
    ] as const) {
      const { found, told } = keys(text);
      expect(found, text).toEqual({});
      expect(told[0]?.shouldBe, text).toBe(`Did you mean ${like}`);
    }
    expect(nearMiss("early red")).toBeNull();
  });

  it("reports an empty part between commas", () => {
    expect(keys("3 rows,, under a board").told[0]?.is).toBe("Nothing stands between two commas");
  });

  it("allows a comma before a year", () => {
    expect(keys("in since Oct 14, 2026, 60 cloves").found).toEqual({
      "in since": "Oct 14, 2026",
      cloves: 60,
    });
  });
});
