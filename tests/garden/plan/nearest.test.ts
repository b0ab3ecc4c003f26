import { describe, expect, it } from "vitest";
import { distance, listed, nearest, offer } from "../../../src/garden/plan/nearest.ts";

describe("the nearest word", () => {
  it("counts letters changed, added, left out and swapped", () => {
    expect(distance("board", "board")).toBe(0);
    expect(distance("bord", "board")).toBe(1);
    expect(distance("baord", "board")).toBe(1);
    expect(distance("", "abc")).toBe(3);
    expect(distance("kitten", "sitting")).toBe(3);
  });

  it("is found with up to a third of its letters wrong, whatever the case", () => {
    expect(nearest("Garlik", ["carrot", "garlic"])).toBe("garlic");
    expect(nearest("weding", ["weeding", "hilling"])).toBe("weeding");
    expect(nearest("singing", ["weeding", "hill"])).toBeNull();
    expect(nearest("x", [])).toBeNull();
  });

  it("is the first of equally near ones", () => {
    expect(nearest("bat", ["cat", "hat"])).toBe("cat");
  });

  it("is offered, or other advice is given", () => {
    expect(offer("garlik", ["garlic"], "Write one")).toBe("Did you mean garlic");
    expect(offer("moon", ["garlic"], "Write one")).toBe("Write one");
  });

  it("lists words as one says them", () => {
    expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"], "or")]).toEqual([
      "",
      "a",
      "a and b",
      "a, b or c",
    ]);
  });
});
