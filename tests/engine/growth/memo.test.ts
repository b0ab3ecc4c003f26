import { describe, expect, test, vi } from "vitest";
import { memoizeByPlanting, memoizeBySowing } from "../../../src/engine/growth/memo.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { anchor, anchorsOf, growingOf } from "./growing.ts";

const beet = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } });
const sown = (iso: string): SowingContext => ({
  ...beet,
  anchors: anchorsOf(beet.planting.key, { start: iso }),
});

describe("what is calculated of a sowing", () => {
  test("is calculated once, and null counts as known too", () => {
    const calculate = vi.fn(() => null);
    const known = memoizeBySowing(["start"], calculate);
    expect(known(beet)).toBeNull();
    expect(known(beet)).toBeNull();
    expect(calculate).toHaveBeenCalledTimes(1);
  });

  test("is shared by every pass that knows the same days", () => {
    const calculate = vi.fn(() => 1);
    const known = memoizeBySowing(["start"], calculate);
    const end = [`${beet.planting.key}|1|end`, anchor(isoDay("2027-08-01"))] as const;
    for (const context of [
      beet,
      { ...beet },
      { ...beet, anchors: new Map([...beet.anchors, end]) },
    ])
      known(context);
    expect(calculate).toHaveBeenCalledTimes(1);
  });

  test("is calculated anew where a day, the sowing, the bed or the climate is another", () => {
    const calculate = vi.fn((context: SowingContext) => context);
    const known = memoizeBySowing(["start"], calculate);
    const all = [
      beet,
      sown("2027-05-10"),
      { ...beet, sowing: 2 },
      { ...beet, bed: null },
      { ...beet, planting: { ...beet.planting } },
      { ...beet, observations: [...beet.observations] },
      growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } }),
    ];
    for (const context of all) expect(known(context)).toBe(context);
    expect(calculate).toHaveBeenCalledTimes(all.length);
  });
});

test("what hangs on a planting and one more thing is made once for each", () => {
  const known = memoizeByPlanting<string, number>();
  expect(known(beet, "a", () => 1)).toBe(1);
  expect(known({ ...beet, sowing: 2 }, "a", () => 2)).toBe(1);
  expect(known(beet, "b", () => 3)).toBe(3);
  expect(known({ ...beet, crop: { ...beet.crop } }, "a", () => 4)).toBe(4);
});
