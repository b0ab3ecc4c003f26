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
    expect(prices.get("short")?.ms).toBeCloseTo(0.5);
    expect(prices.get("short")?.share).toBeCloseTo(0.05);
    expect(prices.get("long")).toEqual({ ms: 40, share: 4, spread: 0 });
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
