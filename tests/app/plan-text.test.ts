import { expect, test } from "vitest";
import { cropNames } from "../../src/app/plan-text.ts";
import { cropOf } from "../../src/crops/crops.ts";

const offer = (key: string) => cropNames().find((each) => each.key === key);

test("every crop has a name, in the order of the alphabet", () => {
  const names = cropNames().map(({ name }) => name);
  expect(names).toEqual(names.toSorted());
  expect(names).toContain("Carrots");
  for (const { key, one } of cropNames()) expect(cropOf(key)?.one).toBe(one);
});

test("some two dozen of them are popular, and every one of those is a crop", () => {
  const popular = cropNames().filter((each) => each.popular);
  expect(popular).toHaveLength(24);
  expect(popular.map(({ key }) => key)).toContain("tomato");
});

test("a crop's amount counts what is planted, and rows of what is sown where it grows", () => {
  expect(["garlic", "potato", "shallot", "asparagus"].map((key) => offer(key)?.unit)).toEqual([
    ...["cloves", "tubers", "sets", "crowns"],
  ]);
  expect(["carrot", "tomato", "lettuce"].map((key) => offer(key)?.unit)).toEqual([
    ...["rows", "plants", "plants"],
  ]);
});

test("what stands for years may stand there already, and so may garlic", () => {
  expect(["rhubarb", "apple", "garlic", "carrot"].map((key) => offer(key)?.mayStand)).toEqual([
    ...[true, true, true, false],
  ]);
});
