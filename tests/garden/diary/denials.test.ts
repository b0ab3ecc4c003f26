import { describe, expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import {
  deniedIn,
  endedIn,
  movedIn,
  postponementIn,
  undoneIn,
} from "../../../src/garden/diary/denials.ts";

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

test("what came to nothing or is gone is told apart", () => {
  expect(endedIn("nothing came of the peas")).toEqual({ kind: "failed", subject: "the peas" });
  expect(endedIn("peas are dead")).toEqual({ kind: "lost", subject: "peas" });
  expect(endedIn("peas eaten for supper")).toBeNull();
});

test("what was moved has its bed, and what is undone its words", () => {
  expect(movedIn("moved the peas to the long bed")).toEqual({
    subject: "the peas",
    bed: "long bed",
  });
  expect(movedIn("peas moved on")).toBeNull();
  expect(undoneIn("undo: peas up")).toBe("peas up");
  expect(undoneIn("undone peas")).toBeNull();
});
