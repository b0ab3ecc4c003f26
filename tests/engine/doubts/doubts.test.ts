import { expect, test } from "vitest";
import { doubtsOf } from "../../../src/engine/doubts/doubts.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";
import { QUARRY } from "../../gardens.ts";

const year = (y: number, crop: string) =>
  planOf(
    least(`beds:\n  A:\n    is: 12 x 4 ft\n    crops:\n      - ${crop}`).replace("2027", String(y)),
  );

test("a good plan has none", () => {
  expect(doubtsOf([planOf(QUARRY)])).toEqual([]);
  expect(doubtsOf([])).toEqual([]);
});

test("those of size, of the season and of families stand in reading order", () => {
  const plan = planOf(QUARRY.replace("- tomato: 6 plants", "- tomato: 600 plants, 130 days"));
  const codes = doubtsOf([plan]).map(({ code }) => code);
  expect(codes).toEqual(["greenhouse-too-full", "bed-too-full", "will-not-ripen"]);
});

test("those between the years come with all the plans", () => {
  const plans = [year(2026, "potato"), year(2027, "tomato: bought")];
  expect(doubtsOf(plans).map(({ code }) => code)).toEqual(["family-too-soon"]);
  expect(doubtsOf(plans.slice(1))).toEqual([]);
});
