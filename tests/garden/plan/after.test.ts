import { describe, expect, it } from "vitest";
import { least, PLAN, planOf, read, told } from "./canonical.ts";

const crops = (...items: readonly string[]) =>
  least(`crops:\n${items.map((item) => `  - ${item}\n`).join("")}`);
const afterOf = (...items: readonly string[]) =>
  planOf(crops(...items)).plantings.map(({ after }) => after);

describe("after", () => {
  it("is the planting of this plan, before or behind it in the file", () => {
    expect(afterOf("garlic", "carrot: after the garlic")).toEqual([null, "2027/garlic"]);
    expect(afterOf("carrot: after the garlic", "garlic")).toEqual(["2027/garlic", null]);
    expect(PLAN.plantings.at(-1)?.after).toBe("2027/garlic");
  });

  it("is never the planting itself", () => {
    expect(afterOf("{name: second garlic, crop: garlic, after: garlic}", "garlic")).toEqual([
      "2027/garlic",
      null,
    ]);
  });

  it("stays a name for the years before where this plan has none", () => {
    expect(afterOf("carrot: after the moonflower")).toEqual(["moonflower"]);
  });

  it("is refused for a near miss and where it fits several, with names offered", () => {
    const { problems } = read(crops("garlic", "carrot: after the garlik"));
    expect(problems.map(({ code, shouldBe }) => [code, shouldBe])).toEqual([
      ["no-planting-called", "Did you mean garlic"],
    ]);
    expect(
      read(crops("tomato: red, 1 plants", "tomato: gold, 1 plants", "beet: after tomatoes"))
        .problems[0]?.is,
    ).toContain("tomato red and tomato gold");
  });

  it("is refused in a circle, at the first of it", () => {
    expect(told(crops("carrot: after beet", "beet: after garlic", "garlic: after carrot"))).toEqual(
      ["after-circle@8:19"],
    );
    expect(told(crops("potato: after carrot", "carrot: after beet", "beet: after carrot"))).toEqual(
      ["after-circle@9:19"],
    );
  });

  it("finds the planting it is between the rows of by the same names", () => {
    expect(told(crops("carrot", "beet: between the carrot rows"))).toEqual([]);
    expect(told(crops("carrot", "beet: between the carot rows"))).toEqual([
      "no-planting-called@9:19",
    ]);
  });
});
