import { expect, test } from "vitest";
import { endedIn, mayBeFruit, movedIn } from "../../../src/garden/diary/losses.ts";

test("what came to nothing is told from what is gone", () => {
  expect(endedIn("nothing came of the peas")).toEqual({ kind: "failed", subject: "the peas" });
  expect(endedIn("mice ate the pea seeds")).toEqual({ kind: "failed", subject: "the pea" });
  expect(endedIn("crows pulled the corn up")).toEqual({ kind: "failed", subject: "the corn" });
  expect(endedIn("peas are dead")).toEqual({ kind: "lost", subject: "peas" });
  expect(endedIn("cockatoos had the corn")).toEqual({ kind: "lost", subject: "the corn" });
  expect(endedIn("not growing peas this year")).toEqual({ kind: "lost", subject: "peas" });
});

test("some of it gone is no loss, and supper none either", () => {
  for (const text of [
    "cutworms took 2 of the cabbages",
    "deer ate the tops of the beets",
    "lost a tomato plant",
    "slugs ate some lettuce",
    "peas eaten for supper",
    "we had the peas",
    "tomatoes eaten by imre's sister",
  ])
    expect(endedIn(text), text).toBeNull();
});

test("eating may be of the fruit alone, frost is not", () => {
  expect(mayBeFruit("the dog ate the strawberries")).toBe(true);
  expect(mayBeFruit("strawberries killed by frost")).toBe(false);
  expect(endedIn("the frost took the runner beans")?.subject).toBe("the runner beans");
});

test("what was moved has its bed", () => {
  expect(movedIn("moved the peas to the long bed")).toEqual({
    subject: "the peas",
    bed: "long bed",
  });
  expect(movedIn("peas moved on")).toBeNull();
});
