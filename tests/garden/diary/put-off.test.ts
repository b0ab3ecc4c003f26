import { expect, test } from "vitest";
import { asDone, putOffIn } from "../../../src/garden/diary/put-off.ts";

test("what waits has its work, its planting and the day where they are said", () => {
  expect(putOffIn("too wet to sow corn")).toEqual({ subject: "corn", work: "sow", until: null });
  expect(putOffIn("put off corn until 5 june")).toEqual({
    subject: "corn",
    work: null,
    until: "5 june",
  });
  expect(putOffIn("sowing of carrots postponed until 12 september")).toEqual({
    subject: "carrots",
    work: "sow",
    until: "12 september",
  });
  expect(putOffIn("postponed planting out the tomatoes to 20 march")).toEqual({
    subject: "the tomatoes",
    work: "set out",
    until: "20 march",
  });
  expect(putOffIn("no planting of potatoes")).toEqual({
    subject: "potatoes",
    work: "plant",
    until: null,
  });
});

test("too hot for a crop that stands there puts off nothing", () => {
  expect(putOffIn("too hot for the lettuce")).toBeNull();
  expect(putOffIn("sowed the carrots")).toBeNull();
});

test("it is looked up as the work it would have been, planting before sowing", () => {
  expect(asDone({ subject: "corn", work: null, until: null })).toEqual([
    "planted corn",
    "sowed corn",
  ]);
  expect(asDone({ subject: "corn", work: "set out", until: null })).toEqual(["planted out corn"]);
});
