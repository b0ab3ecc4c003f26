import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { completed } from "../../../src/garden/diary/ellipsis.ts";
import { PLAN } from "../plan/canonical.ts";

const context = { plans: [PLAN], vocabulary: PRACTICES };
const after = (text: string, clause: string, name: string | null = "beet") =>
  completed(clause, { text, facts: null, name }, context);

test("what was done to them was done to what was named", () => {
  expect(after("beets came up patchy", "sowed them again")).toEqual(["sowed beet again"]);
  expect(after("beets are big", "picked it")).toContain("picked beet");
  expect(after("sprouts are ready", "picked a pound")).toEqual(["beet picked a pound"]);
});

test("nothing that came up, and plants that were sold there", () => {
  expect(after("planted the beets too early", "nothing came up")).toEqual(["beet never came up"]);
  expect(after("the market had beet starts", "got two")).toEqual(["bought beet plants"]);
});

test("sick plants torn out are lost, sound ones are cleared", () => {
  expect(after("club root in the beets", "ripped them all up")[0]).toBe("lost beet");
  expect(after("beets finished", "ripped them all up")[0]).not.toBe("lost beet");
});

test("rain is measured by what stands behind it", () => {
  expect(after("rain at last", "4mm", null)).toEqual(["rain 4mm"]);
});

test("a clause that leaves nothing out stands by itself", () => {
  expect(after("beets up", "what a day")).toEqual([]);
  expect(after("a warm day", "sowed them again", null)).toEqual([]);
});
