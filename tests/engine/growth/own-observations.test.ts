import { expect, test } from "vitest";
import { observationsAbout } from "../../../src/engine/growth/own-observations.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { parseDiary } from "../../../src/garden/diary/parse.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const plan = planOf(
  `${QUARRY}diary:\n  - 12 May: beets sown\n  - 20 May: soil 50 °F\n  - 24 May: carrots up\n  - 2 Jun: beets up\n`,
);
const diary = parseDiary(plan.diary, [plan], PRACTICES);

test("a planting has what the diary says of it, in its order, and of no other", () => {
  expect(observationsAbout(diary, "2027/beet").map(({ kind }) => kind)).toEqual(["done", "seen"]);
  expect(observationsAbout(diary, "2027/potato")).toEqual([]);
});

test("it is the same list each time, and another diary's is its own", () => {
  expect(observationsAbout(diary, "2027/beet")).toBe(observationsAbout(diary, "2027/beet"));
  expect(observationsAbout([], "2027/beet")).toEqual([]);
});
