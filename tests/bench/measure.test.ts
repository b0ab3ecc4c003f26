import { describe, expect, test } from "vitest";
import { type Meter, priceOf, warmPrices } from "./measure.ts";
import { exponentOf } from "./pure-rows.ts";

/** A process whose CPU time rises by what its paths say. */
function machine() {
  let spent = 0;
  const path = (name: string, ms: number) => ({
    name,
    run: async (times: number) => {
      spent += times * ms;
    },
  });
  const meter: Meter = { cpuMs: async () => spent, reference: path("reference", 10) };
  return { path, meter };
}

describe("a price", () => {
  test("is what one run takes, and its share of the reference", async () => {
    const { meter, path } = machine();
    const prices = await warmPrices(meter, [path("short", 0.5), path("long", 40)]);
    expect(prices.get("long")).toEqual({
      kind: "price",
      price: { ms: 40, share: 4, spread: 0 },
    });
    expect(prices.get("short")).toMatchObject({
      kind: "price",
      price: { ms: expect.closeTo(0.5), share: expect.closeTo(0.05) },
    });
  });

  test("is missing for a path that fails, which says why, and the others are measured all the same", async () => {
    const { meter, path } = machine();
    const broken = { name: "broken", run: () => Promise.reject(new Error("answered 503")) };
    const prices = await warmPrices(meter, [broken, path("whole", 20)]);
    expect(prices.get("broken")).toEqual({ kind: "failed", why: "answered 503" });
    expect(prices.get("whole")).toMatchObject({ kind: "price", price: { ms: 20 } });
  });

  test("is the median's, and its share is taken beside each sample's own reference", () => {
    const samples = [
      { ms: 10, referenceMs: 10 },
      { ms: 22, referenceMs: 20 },
      { ms: 90, referenceMs: 10 },
    ];
    expect(priceOf(samples)).toMatchObject({ ms: 22, share: 1.1 });
  });
});

describe("the growth exponent", () => {
  test("is one where the price is in proportion, and two where it goes with the square", () => {
    expect(exponentOf([60, 120, 500].map((n) => [n, 3 * n]))).toBeCloseTo(1);
    expect(exponentOf([60, 120, 500].map((n) => [n, 3 * n * n]))).toBeCloseTo(2);
  });
});
