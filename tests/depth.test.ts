import { describe, expect, test } from "vitest";
import { DEPTH, depthFrom, drawnFor, partOf, samples } from "./depth.ts";
import { random } from "./garden/plan/random.ts";

const NOW = Date.UTC(2027, 4, 1);

describe("the depth of a run", () => {
  test("is usual, with samples of its own, where nothing is said", () => {
    expect(depthFrom({}, NOW).full).toBe(false);
    expect(depthFrom({}, NOW).seed).toBeGreaterThan(0);
    expect(depthFrom({}, NOW).seed).not.toBe(depthFrom({}, NOW + 1).seed);
  });

  test("is full when asked, with the samples that were always taken", () => {
    expect(depthFrom({ DEPTH: "full" }, NOW)).toEqual({ full: true, seed: 0 });
    expect(depthFrom({ DEPTH: "full" }, NOW)).toEqual(depthFrom({ DEPTH: "full" }, NOW + 1));
  });

  test("repeats another run's samples by its seed", () => {
    expect(depthFrom({ SEED: "77" }, NOW)).toEqual({ full: false, seed: 77 });
    expect(depthFrom({ DEPTH: "full", SEED: "77" }, NOW)).toEqual({ full: true, seed: 77 });
  });

  test.each([{ DEPTH: "deep" }, { DEPTH: "" }, { SEED: "x" }, { SEED: "" }, { SEED: "1234567" }])(
    "is refused where it is none: %j",
    (env) => {
      expect(() => depthFrom(env, NOW)).toThrow(RangeError);
    },
  );
});

test("every seed of a clock can be given again", () => {
  for (const now of [0, 999_982, 999_983, NOW, NOW + 999_982]) {
    const { seed } = depthFrom({}, now);
    expect(depthFrom({ SEED: String(seed) }, 0).seed).toBe(seed);
  }
});

test("suites draw by their own number and the run's", () => {
  expect(drawnFor(5)()).toBe(random(5 + DEPTH.seed * 1_000_003)());
  expect(drawnFor(5)()).not.toBe(drawnFor(6)());
  expect(samples(9, 2)).toBe(DEPTH.full ? 9 : 2);
  const [first = 0, second] = partOf([0, 1, 2, 3], 2);
  expect(second).toBe((first + 1) % 4);
  expect(partOf([0, 1, 2, 3], 2)).toHaveLength(DEPTH.full ? 4 : 2);
  expect(partOf([], 2)).toEqual([]);
});
