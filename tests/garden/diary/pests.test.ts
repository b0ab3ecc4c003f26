import { expect, test } from "vitest";
import { isPest, namesPest } from "../../../src/garden/diary/pests.ts";

test("a pest alone is told from one in a sentence", () => {
  for (const text of ["mice", "the slugs", "club root", "wild boar", "frost"])
    expect(isPest(text), text).toBe(true);
  expect(isPest("mice again")).toBe(false);
  expect(namesPest("club root in the caulis")).toBe(true);
});

test("what only sounds like one is none", () => {
  for (const text of ["antler", "the catalogue", "hotdogs", "warrant"])
    expect(namesPest(text), text).toBe(false);
});
