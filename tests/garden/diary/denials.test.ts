import { describe, expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { deniedIn, missedIn, postponementIn, undoneIn } from "../../../src/garden/diary/denials.ts";

describe("a line that denies", () => {
  test("is turned into the deed it denies", () => {
    expect(deniedIn("carrots not up yet")).toBe("carrots up");
    expect(deniedIn("haven't thinned the beets")).toBe("thinned the beets");
    expect(deniedIn("no tomatoes ripe yet")).toBe("tomatoes ripe");
  });

  test("is none where nothing is denied", () => {
    expect(deniedIn("carrots up")).toBeNull();
  });

  test("puts a job off, or leaves it out for the year", () => {
    expect(postponementIn("beets too small to thin", PRACTICES)).toEqual({
      subject: "beets",
      practice: "thin",
      leftOut: false,
    });
    expect(postponementIn("skipped feeding of the peas this year", PRACTICES)).toEqual({
      subject: "peas",
      practice: "feed",
      leftOut: true,
    });
    expect(postponementIn("beets too small to eat", PRACTICES)).toBeNull();
  });
});

test("what is missed without a word for what it should be has its name", () => {
  expect(missedIn("no peas yet")).toBe("peas");
  expect(missedIn("still no peas")).toBe("peas");
  expect(missedIn("no peas")).toBeNull();
});

test("what is undone has its words", () => {
  expect(undoneIn("undo: peas up")).toBe("peas up");
  expect(undoneIn("undone peas")).toBeNull();
});
