import { expect, test } from "vitest";
import { boughtIn, boughtPlantsIn, isBought } from "../../../src/garden/diary/bought.ts";
import { PLAN } from "../plan/canonical.ts";

test("bought plants are told from bought seed", () => {
  expect(boughtPlantsIn("bought 6 tomato plants at the market")).toBe("6 tomato");
  expect(boughtPlantsIn("bought a punnet of broccoli")).toBe("broccoli");
  expect(boughtPlantsIn("got our pepper plants from the garden centre")).toBe("our pepper");
  expect(boughtPlantsIn("bought carrot seed")).toBeNull();
});

test("bought without more is read of what the plan has from bought plants alone", () => {
  expect(boughtIn("onions bought")).toBe("onions");
  expect(boughtIn("onions planted")).toBeNull();
  expect(PLAN.plantings.some(isBought)).toBe(false);
});
