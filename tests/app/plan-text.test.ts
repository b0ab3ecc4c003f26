import { expect, test } from "vitest";
import { cropNames } from "../../src/app/plan-text.ts";
import { cropOf } from "../../src/crops/crops.ts";

test("every crop has a name, in the order of the alphabet", () => {
  const names = cropNames().map(({ name }) => name);
  expect(names).toEqual(names.toSorted());
  expect(names).toContain("Carrots");
  for (const { key, one } of cropNames()) expect(cropOf(key)?.one).toBe(one);
});
