import { expect, test } from "vitest";
import { meantNames, withoutParts } from "../../../src/garden/diary/meant-names.ts";

test("a name is read without parts of the plant and by its nickname", () => {
  expect(withoutParts("the pea seedlings")).toBe("pea");
  expect(withoutParts("toms")).toBe("tomatoes");
  expect(withoutParts("all of the caulis")).toBe("cauliflower");
});

test("and in work that was done without how much of it there was", () => {
  expect(meantNames("2 rows of peas")).toEqual(["2 rows of peas", "peas"]);
  expect(meantNames("16 seed potatoes")).toContain("potatoes");
  expect(meantNames("8 tomatoes")).toContain("tomatoes");
  expect(meantNames("peas")).toEqual(["peas"]);
});

test("a loss keeps its number: two of the beets are not the beets", () => {
  expect(withoutParts("2 of the beets")).toBe("2 of the beets");
});
