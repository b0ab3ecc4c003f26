import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { observationsInClause } from "../../../src/garden/diary/clause-facts.ts";
import { least, on, PLAN, planOf } from "../plan/canonical.ts";

const line = { day: on(5, 13), text: "as written", at: { file: "f", line: 1, column: 1 } };
const facts = (text: string) =>
  observationsInClause({ line, by: null, text }, text, { plans: [PLAN], vocabulary: PRACTICES });
const said = (text: string) =>
  facts(text)?.map((each) => {
    if (each.kind === "note") return `note: ${each.why}`;
    const what = "planting" in each ? each.planting : "";
    const more = "until" in each && each.until !== undefined ? ` until ${isoOf(each.until)}` : "";
    return `${each.kind} ${what}${more} ${isoOf(each.day).slice(5)}`;
  }) ?? null;

describe("what had to wait", () => {
  test("is not done yet, until the day that is said", () => {
    expect(said("too wet to sow beets")).toEqual(["not yet 2027/beet 05-13"]);
    expect(said("put off the beets until 5 june")).toEqual([
      "not yet 2027/beet until 2027-06-05 05-13",
    ]);
  });

  test("is a note where no day lies ahead", () => {
    expect(said("put off the beets until 5 may")).toEqual(["note: 5 may is no day ahead"]);
  });
});

test("what is missed without more is whatever is to be expected", () => {
  expect(facts("no beets yet")).toMatchObject([{ kind: "not yet", of: { stage: "anything" } }]);
  expect(said("no luck yet")).toBeNull();
});

test("bought plants are the planting's, and bought seed is ordered", () => {
  expect(said("bought 6 tomato plants")).toEqual(["bought 2027/tomato 05-13"]);
  expect(facts("bought tomatoes")).toMatchObject([{ kind: "done", step: "order" }]);
});

test("frost takes only the tops of what grows again from below", () => {
  expect(said("potatoes frosted")).toEqual(["note: early red potato grows again from below"]);
  expect(said("tomatoes frosted")).toEqual(["lost 2027/tomato 05-13"]);
});

test("eaten fruit of what stands for years takes nothing from the plants", () => {
  const plan = planOf(least("crops:\n  - strawberry: 20 plants, in since 1 May 2025"));
  const text = "the dog ate the strawberries";
  expect(
    observationsInClause({ line, by: null, text }, text, { plans: [plan], vocabulary: PRACTICES }),
  ).toMatchObject([{ kind: "note", why: "only the fruit of strawberry may be meant" }]);
});

test("what is moved to where the plan has it is set out", () => {
  expect(said("moved the tomato plants to the south bed")).toEqual(["done 2027/tomato 05-13"]);
  expect(said("moved the beets to the south bed")).toEqual(["moved 2027/beet 05-13"]);
});

test("a clause is read without its last phrases and on its own day", () => {
  expect(said("thinned the beets in the root bed yesterday")).toEqual(["done 2027/beet 05-12"]);
});

test("what is hoped, planned or another's is nothing", () => {
  for (const text of [
    "beets should be thinned",
    "the neighbour's beets are up",
    "beets may be up soon",
  ])
    expect(said(text), text).toBeNull();
});
