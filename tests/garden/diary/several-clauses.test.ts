import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { observationsInClauses } from "../../../src/garden/diary/several-clauses.ts";
import { on, PLAN } from "../plan/canonical.ts";

const line = { day: on(6, 4), text: "", at: { file: "f", line: 1, column: 1 } };
const said = (text: string) =>
  observationsInClauses({ line, by: null, text }, { plans: [PLAN], vocabulary: PRACTICES })?.map(
    (each) =>
      each.kind === "note"
        ? `note: ${each.why}`
        : "planting" in each && `${each.kind} ${each.planting}`,
  ) ?? null;

test("each clause says its own, and remarks say nothing", () => {
  expect(said("beets up, thinned the carrots; what a day")).toEqual([
    "seen 2027/beet",
    "done 2027/carrot",
  ]);
  expect(said("what a day, what a night")).toBeNull();
});

test("two crops of one deed stay together, whatever is said behind them", () => {
  const both = ["done 2027/beet", "done 2027/carrot"];
  for (const text of [
    "thinned beets and carrots, a warm day",
    "beets and carrots thinned, then tea",
  ])
    expect(said(text)).toEqual(both);
  expect(said("beets up and thinned the carrots, then tea")).toEqual([
    "seen 2027/beet",
    "done 2027/carrot",
  ]);
});

test("a clause leaves out what the one before has said", () => {
  expect(said("beets up, carrots not")).toEqual(["seen 2027/beet", "not yet 2027/carrot"]);
  expect(said("beets came up patchy, sowed them again")).toEqual([
    "failed 2027/beet",
    "done 2027/beet",
  ]);
});

test("what is watered in is what was named, and not the whole garden", () => {
  expect(said("tomatoes planted out and watered")).toEqual(["done 2027/tomato"]);
});

test("new ones are bought of what was lost", () => {
  expect(said("tomatoes frosted, bought new ones")).toEqual([
    "lost 2027/tomato",
    "bought 2027/tomato",
  ]);
});

test("what nearly said something keeps its reason beside what was understood", () => {
  expect(said("beets up, radish up")).toEqual([
    "seen 2027/beet",
    "note: no planting is called radish",
  ]);
});

test("a question, a condition or second thoughts make no report", () => {
  for (const text of [
    "beets up? carrots thinned",
    "thinned the beets, no, the carrots",
    "if it rains, beets sown",
    "dreamt of june, beets up",
    "frost got the beets but they will come back",
  ])
    expect(said(text), text).toBeNull();
});
