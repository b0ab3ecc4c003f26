import { describe, expect, it } from "vitest";
import { editDistance, joinWords, nearest, suggestion } from "../../../src/garden/plan/nearest.ts";

describe("the nearest word", () => {
  it("counts letters changed, added, left out and swapped", () => {
    expect(editDistance("board", "board")).toBe(0);
    expect(editDistance("bord", "board")).toBe(1);
    expect(editDistance("baord", "board")).toBe(1);
    expect(editDistance("", "abc")).toBe(3);
    expect(editDistance("kitten", "sitting")).toBe(3);
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
    expect(suggestion("garlik", ["garlic"], "Write one")).toBe("Did you mean garlic");
    expect(suggestion("moon", ["garlic"], "Write one")).toBe("Write one");
  });

  it("lists words as one says them", () => {
    expect([
      joinWords([]),
      joinWords(["a"]),
      joinWords(["a", "b"]),
      joinWords(["a", "b", "c"], "or"),
    ]).toEqual(["", "a", "a and b", "a, b or c"]);
  });
});
