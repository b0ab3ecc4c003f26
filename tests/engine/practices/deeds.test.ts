import { expect, test } from "vitest";
import { deed, PLANTED, RAISED, SOWED, verb } from "../../../src/engine/practices/deeds.ts";
import { isRaised } from "../../../src/garden/model/plantings.ts";

const nameIn = (sayings: readonly string[], clause: string) =>
  deed(sayings)
    .patterns.map((pattern) => pattern.exec(clause)?.groups?.subject)
    .find(Boolean);

test("a saying takes the name where its dots stand", () => {
  expect(nameIn(["thinned …"], "thinned the beets")).toBe("the beets");
  expect(nameIn(["… thinned"], "beets have been thinned")).toBe("beets");
  expect(nameIn(["set|put … out"], "put the tomatoes out")).toBe("the tomatoes");
  expect(nameIn(["thinned …"], "we thinned the beets")).toBeUndefined();
});

test("a saying without a name stands by itself", () => {
  const [pattern] = deed(["drained the lines"], { about: "garden" }).patterns;
  expect(pattern?.test("drained the lines")).toBe(true);
  expect(pattern?.test("drained the lines of the beets")).toBe(false);
});

test("a verb stands before the name or behind it", () => {
  for (const clause of ["potted on peppers", "peppers potted on"])
    expect(nameIn(verb("potted on"), clause)).toBe("peppers");
  expect(nameIn(SOWED, "peppers sown in trays")).toBe("peppers");
  expect(nameIn(PLANTED, "peppers in the ground")).toBe("peppers");
});

test("a deed is a planting's, of the step that is due, unless it says otherwise", () => {
  expect(deed([])).toEqual({ about: "planting", step: null, of: {}, patterns: [] });
  expect(deed([], { step: "2" }).step).toBe("2");
});

test("plants are raised as the plan has it", () => {
  expect(RAISED.every(isRaised)).toBe(true);
});
