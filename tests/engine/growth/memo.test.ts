import { describe, expect, test, vi } from "vitest";
import { memoize } from "../../../src/engine/growth/memo.ts";
import { QUARRY } from "../../gardens.ts";
import { growingOf } from "./growing.ts";

describe("what is known of a growing", () => {
  const beet = growingOf(QUARRY, "beet");

  test("is made once, and nothing counts as known too", () => {
    const make = vi.fn(() => null);
    const known = memoize<null>();
    expect(known(beet, make)).toBeNull();
    expect(known(beet, make)).toBeNull();
    expect(make).toHaveBeenCalledTimes(1);
  });

  test("is another growing's own, in the same climate and in another", () => {
    const known = memoize<number>();
    expect(known(beet, () => 1)).toBe(1);
    expect(known({ ...beet }, () => 2)).toBe(2);
    expect(known(growingOf(QUARRY, "beet"), () => 3)).toBe(3);
    expect(known(beet, () => 4)).toBe(1);
  });
});
