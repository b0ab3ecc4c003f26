import { expect, test } from "vitest";
import { namePlaces } from "../../../src/garden/diary/names.ts";
import { least, PLAN, planOf } from "../plan/canonical.ts";

const names = (text: string, plan = PLAN) => namePlaces(text, [plan]).map(({ name }) => name);

test("plantings are found where they stand, the longest name first", () => {
  expect(namePlaces("put the early red potato out", [PLAN])).toEqual([
    { from: 8, to: 24, name: "early red potato" },
  ]);
  expect(names("beets up, carrots not")).toEqual(["beets", "carrots"]);
  expect(names("toms and spuds")).toEqual(["tomatoes", "spuds"]);
});

test("a crop that no plan has is no name, and a part of a word neither", () => {
  expect(names("radish up")).toEqual([]);
  expect(names("beetle on the carrot-top")).toEqual([]);
});

test("a crop goes by the last word of its name where no other crop does", () => {
  expect(names("squash out", planOf(least("crops:\n  - winter squash: 2 plants")))).toEqual([
    "squash",
  ]);
});
