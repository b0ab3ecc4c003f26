import { expect, it } from "vitest";
import { CHIVES } from "../../src/crops/chives.ts";

it("chives stand for years, are cut from their first summer and cut down after flowering", () => {
  expect(CHIVES.perennial?.firstHarvestYear.value).toBe(1);
  expect(CHIVES.care.map(({ step }) => step)).toEqual(["flowers"]);
  expect(CHIVES.comesUp).toMatchObject({ row: "onion" });
});
