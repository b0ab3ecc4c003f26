import { expect, test } from "vitest";
import { definePractice, PASSES } from "../../../src/engine/practices/practice.ts";

test("the passes run from what starts a clock, by what goes out, to the rest", () => {
  expect(PASSES).toEqual(["start", "set out", "rest"]);
});

test("a practice has by itself what most have alike, and what it says instead", () => {
  const parts = { name: "sing", words: ["singing"], deeds: [], tasks: {} } as const;
  const plain = definePractice(parts);
  expect(plain).toMatchObject({ ...parts, begins: null, thingsFor: null });
  expect(plain.answers).toEqual({ done: "Done today", notYet: "Not yet", up: null });
  expect(plain.away).toEqual({ neighbour: null, rather: null });
  const own = definePractice({ ...parts, answers: { done: "Sung" }, away: { rather: "early" } });
  expect(own.answers).toEqual({ done: "Sung", notYet: "Not yet", up: null });
  expect(own.away).toEqual({ neighbour: null, rather: "early" });
});
