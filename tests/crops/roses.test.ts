import { describe, expect, it } from "vitest";
import { ROSE_FAMILY, STRAWBERRY } from "../../src/crops/roses.ts";

describe("the rose family", () => {
  it("has strawberries, from plants, for three or four summers", () => {
    expect(ROSE_FAMILY).toEqual([STRAWBERRY]);
    expect(STRAWBERRY.starts).toEqual(["plants"]);
    expect(STRAWBERRY.perennial?.standsYears.value).toEqual([3, 4]);
  });

  it("are strawed, cleared of runners and mulched every year", () => {
    expect(STRAWBERRY.care.map(({ step }) => step)).toEqual([
      "first-flowers",
      "uncover",
      "net",
      "straw",
      "runners",
      "mulch",
    ]);
  });
});
