import { describe, expect, test } from "vitest";
import { isMet, type Row, tableOf } from "./table.ts";

const price = { ms: 24, share: 1.2, spread: 0.05 };
const rebuild: Row = { kind: "price", name: "a rebuild", bound: "rebuild", price };
const failed: Row = { kind: "failed", name: "a rebuild", bound: "rebuild", why: "it answered 503" };

describe("a row of the bench", () => {
  test("is met by its share of the reference, however slow the machine", () => {
    expect(isMet(rebuild)).toBe(true);
    expect(isMet({ ...rebuild, price: { ...price, ms: 12, share: 1.21 } })).toBe(false);
  });

  test("that is a ratio is met up to its bound and not beyond", () => {
    const growth = { kind: "ratio", name: "growth", bound: "rebuildGrowth" } as const;
    expect(isMet({ ...growth, ratio: 1.1 })).toBe(true);
    expect(isMet({ ...growth, ratio: 1.11 })).toBe(false);
  });

  test("that could not be measured is missed, and says why", () => {
    expect(isMet(failed)).toBe(false);
    expect(tableOf([failed])).toMatch(/missed +it answered 503$/);
  });

  test("that is not a number is missed", () => {
    expect(isMet({ ...rebuild, price: { ...price, share: Number.NaN } })).toBe(false);
  });

  test("gives milliseconds, share, spread, bound and verdict", () => {
    expect(tableOf([rebuild])).toMatch(/a rebuild +24\.00 +1\.20 +5 % +12 ms = 1\.20 +met$/);
  });
});
