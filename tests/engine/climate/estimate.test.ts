import { expect, test } from "vitest";
import { deviationOfSum, type Estimate, knowing } from "../../../src/engine/climate/estimate.ts";

const PRIOR: Estimate = {
  means: [10, 20],
  covariances: [
    [4, 3],
    [3, 9],
  ],
};
const FIRST = { weights: [1, 0], value: 13, sd: 0 };

test("what is known exactly is taken, and what goes with it moves along", () => {
  const { means } = knowing(PRIOR, FIRST);
  expect(means[0]).toBeCloseTo(13, 9);
  expect(means[1]).toBeCloseTo(20 + (3 / 4) * 3, 9);
});

test("what is known as badly as it was believed goes half the way", () => {
  expect(knowing(PRIOR, { ...FIRST, sd: 2 }).means[0]).toBeCloseTo(11.5, 9);
});

test("a sum that is known leaves only what is independent of it unsure", () => {
  const known = knowing(PRIOR, FIRST);
  expect(deviationOfSum(PRIOR, [1, 0])).toBe(2);
  expect(deviationOfSum(known, [1, 0])).toBe(0);
  expect(deviationOfSum(known, [0, 1])).toBeCloseTo(Math.sqrt(9 - 9 / 4), 9);
});

test("the order in which sums become known is irrelevant", () => {
  const second = { weights: [1, -1], value: -8, sd: 1 };
  const [one, other] = [
    knowing(knowing(PRIOR, { ...FIRST, sd: 1 }), second),
    knowing(knowing(PRIOR, second), { ...FIRST, sd: 1 }),
  ];
  for (const i of [0, 1]) expect(one.means[i]).toBeCloseTo(other.means[i] ?? 0, 9);
});
