import { describe, expect, test } from "vitest";
import { anchorKey, combineBasis } from "../../../src/engine/growth/anchors.ts";

describe("the key of an anchor", () => {
  test("names planting, sowing and act", () => {
    expect(anchorKey("2027/lettuce", 2, "start")).toBe("2027/lettuce|2|start");
  });

  test("tells an act of one sowing from that of another, and from another act", () => {
    const keys = [
      anchorKey("2027/lettuce", 1, "start"),
      anchorKey("2027/lettuce", 2, "start"),
      anchorKey("2027/lettuce", 1, "up"),
      anchorKey("2027/beet", 1, "start"),
    ];
    expect(new Set(keys).size).toBe(4);
  });
});

describe("basis put together", () => {
  test("keep the order they first stand in and none twice", () => {
    expect(combineBasis(["soil", "age"], ["last frost", "soil"], ["age"])).toEqual([
      "soil",
      "age",
      "last frost",
    ]);
  });

  test("are none where there are no lists", () => {
    expect(combineBasis()).toEqual([]);
  });
});
