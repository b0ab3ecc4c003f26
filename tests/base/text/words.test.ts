import { describe, expect, test } from "vitest";
import {
  capital,
  joinFirst,
  joinWords,
  sayCount,
  verbWith,
  verbWithin,
} from "../../../src/base/text/words.ts";

test("a text begins with a capital, an empty one stays empty", () => {
  expect(capital("beets")).toBe("Beets");
  expect(capital("")).toBe("");
});

describe("words listed as one says them", () => {
  test("have commas between them, and the last one its own word", () => {
    expect(joinWords(["beets"])).toBe("beets");
    expect(joinWords(["beets", "carrots"])).toBe("beets and carrots");
    expect(joinWords(["beets", "carrots", "leeks"])).toBe("beets, carrots and leeks");
    expect(joinWords(["beets", "carrots", "leeks"], "or")).toBe("beets, carrots or leeks");
  });

  test("are an empty text where there are none", () => {
    expect(joinWords([])).toBe("");
  });

  test("end with how many more there are, where not all of them fit", () => {
    const words = ["beets", "carrots", "leeks"];
    expect(joinFirst(words, 1)).toBe("beets and 2 more");
    expect(joinFirst(words, 2)).toBe("beets, carrots and 1 more");
    expect(joinFirst(words, 3)).toBe("beets, carrots and leeks");
  });
});

test("a count takes an s, but for one", () => {
  expect([0, 1, 2].map((many) => sayCount(many, "day"))).toEqual(["0 days", "1 day", "2 days"]);
});

test("a verb has its objects behind it, or where they belong", () => {
  expect(verbWith("Thin", "beets")).toBe("Thin beets");
  expect(verbWith("Get … onto their sticks", "peas")).toBe("Get peas onto their sticks");
  expect(verbWith("Thin … again", "$& carrots")).toBe("Thin $& carrots again");
  expect(verbWith("…: get things ready", "beets")).toBe("Beets: get things ready");
});

test("in the midst of a title it begins small, unless a name stands first", () => {
  expect(verbWithin("Thin", "beets")).toBe("thin beets");
  expect(verbWithin("…: get things ready", "beets")).toBe("beets: get things ready");
  expect(verbWithin("…: get things ready", "Root bed")).toBe("Root bed: get things ready");
});
