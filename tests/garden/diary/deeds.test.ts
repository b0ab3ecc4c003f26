import { describe, expect, it } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { beginsOf, deedsIn } from "../../../src/garden/diary/deeds.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import type { Vocabulary } from "../../../src/garden/model/vocabulary.ts";
import { on, PLAN } from "../plan/canonical.ts";

const LINE = { day: on(6, 1), text: "", at: { file: "f", line: 1, column: 1 } };

/** `subject practice step` of each deed in a clause, or why it is a note; null where it has no deed. */
function said(clause: string, vocabulary: Vocabulary = PRACTICES, plans: readonly Plan[] = [PLAN]) {
  const found = deedsIn({ line: LINE, by: "oda" }, clause, { plans, vocabulary });
  return (
    found?.map((each) =>
      each.kind === "done"
        ? `${each.planting} ${each.practice} ${each.step}`
        : each.kind === "note" && each.why,
    ) ?? null
  );
}

describe("work on a bed and on the garden", () => {
  it("is the bed's own of the season that the day lies in", () => {
    for (const clause of [
      "warmed the south bed",
      "put black film on the south bed",
      "south warmed",
    ])
      expect(said(clause), clause).toEqual(["2027/bed/south-bed warm the bed null"]);
    expect(said("closed the root bed for winter")).toEqual([
      "2027/bed/root-bed close the bed null",
    ]);
    expect(said("weeded the south bed and the root bed")).toEqual([
      "2027/bed/south-bed weed null",
      "2027/bed/root-bed weed null",
    ]);
  });

  it("is the garden's where it names nothing", () => {
    for (const clause of ["drained the lines", "lines drained", "drained the hoses"])
      expect(said(clause), clause).toEqual(["2027/garden drain the lines null"]);
    for (const clause of ["took a soil test", "sent off the soil samples", "soil tested"])
      expect(said(clause), clause).toEqual(["2027/garden test the soil null"]);
    expect(said("watered everything")).toEqual(["2027/garden water null"]);
    expect(said("opened the vents")).toEqual(["2027/garden greenhouse vents"]);
  });

  it("fits none where several can be meant, or no such bed is there", () => {
    expect(said("closed the bed")?.[0]).toMatch(/^it fits .+ and .+/);
    expect(said("warmed the north bed")).toEqual(["no bed is called the north bed"]);
    expect(said("weeded the north bed")).toEqual(["no planting is called the north bed"]);
    expect(said("drained the lines", PRACTICES, [])).toEqual([null]);
  });
});

describe("work on plantings", () => {
  it("is the planting's before a bed's", () => {
    expect(said("weeded the beets")).toEqual(["2027/beet weed null"]);
  });

  it("is of the practice that suits how each begins", () => {
    expect(said("sowed the tomatoes and the carrots")).toEqual([
      "2027/tomato sow indoors null",
      "2027/carrot sow outdoors null",
    ]);
    expect(said("planted the tomatoes, the potatoes and garlic")).toEqual([
      "2027/tomato set out null",
      "2027/potato-early-red plant null",
      "2027/second-garlic overwinter plant",
    ]);
    expect(said("sowed lettuce 2")).toEqual(["2027/lettuce repeat 2"]);
  });

  it("says why it suits none", () => {
    expect(said("sowed the potatoes")).toEqual([
      "early red potato is begun from tubers in the plan",
    ]);
    expect(said("sowed the carrots again")).toEqual(["carrot is sown once in the plan"]);
    expect(said("mulched the carrots")).toEqual(["carrot does not stand the winter"]);
    expect(said("took the boards off the beets")).toEqual(["no planting is called the beets"]);
  });

  it("is named after the shortest name that a reading leaves", () => {
    expect(said("planted out the moonflower")).toEqual(["no planting is called the moonflower"]);
  });
});

it("a wish is no deed, and words of no practice are none", () => {
  for (const clause of ["sow the carrots", "thin the beets", "plant garlic", "lovely evening"])
    expect(said(clause), clause).toBeNull();
  expect(said("thinned the beets", [])).toBeNull();
});

it("a start puts a crop into soil once or again; what comes after is no start", () => {
  const begins = (practice: string, step: string | null) => beginsOf({ practice, step }, PRACTICES);
  expect([begins("sow outdoors", null), begins("repeat", "2")]).toEqual(["once", "again"]);
  expect([begins("overwinter", "plant"), begins("overwinter", "mulch")]).toEqual(["once", null]);
  expect([begins("winter-sow", "lids"), begins("thin", null), begins("sing", null)]).toEqual([
    null,
    null,
    null,
  ]);
});
