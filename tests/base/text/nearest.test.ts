import { describe, expect, it } from "vitest";
import {
  editDistance,
  editDistanceWithin,
  nearest,
  suggestion,
} from "../../../src/base/text/nearest.ts";

describe("the nearest word", () => {
  it("counts letters changed, added, left out and swapped", () => {
    expect(editDistance("board", "board")).toBe(0);
    expect(editDistance("bord", "board")).toBe(1);
    expect(editDistance("baord", "board")).toBe(1);
    expect(editDistance("", "abc")).toBe(3);
    expect(editDistance("kitten", "sitting")).toBe(3);
  });

  it("is not looked for beyond the letters that may be wrong", () => {
    expect(editDistanceWithin("bord", "board", 1)).toBe(1);
    expect(editDistanceWithin("kitten", "sitting", 3)).toBe(3);
    expect(editDistanceWithin("kitten", "sitting", 2)).toBeNull();
    expect(editDistanceWithin("bed", "bedstead", 4)).toBeNull();
  });

  it("is found with up to a third of its letters wrong, whatever the case", () => {
    expect(nearest("Garlik", ["carrot", "garlic"])).toBe("garlic");
    expect(nearest("weding", ["weeding", "hilling"])).toBe("weeding");
    expect(nearest("singing", ["weeding", "hill"])).toBeNull();
    expect(nearest("x", [])).toBeNull();
    expect(nearest("wintersquashxyz", ["wintersquash"])).toBe("wintersquash");
    expect(nearest("wintersquashwxyz", ["wintersquash"])).toBeNull();
  });

  it("is the one that sounds like it among equally near ones", () => {
    expect(nearest("beat", ["bean", "beet"])).toBe("beet");
    expect(nearest("leak", ["lead", "leek"])).toBe("leek");
  });

  it("is the first of equally near ones", () => {
    expect(nearest("bat", ["cat", "hat"])).toBe("cat");
  });

  it("is offered, or other advice is given", () => {
    expect(suggestion("garlik", ["garlic"], "Write one")).toBe("Did you mean garlic");
    expect(suggestion("moon", ["garlic"], "Write one")).toBe("Write one");
  });
});
