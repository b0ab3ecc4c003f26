import { expect, test } from "vitest";
import { CROPS } from "../../../src/crops/crops.ts";
import { familyColours, familyInk } from "../../../src/views/pictures/families.ts";

test("the families of most kitchen gardens have a colour of their own, the rest share one", () => {
  const own = new Set(CROPS.map(({ family }) => familyInk(family)));
  expect(own.size).toBe(9);
  expect(familyInk("cabbage family")).toBe("cabbage");
  expect(familyInk("rose family")).toBe("other");
  const shared = CROPS.filter(({ family }) => familyInk(family) === "other");
  expect(shared.length / CROPS.length).toBeLessThan(0.4);
});

test("colours are named once each, in the order of the crops, the shared one last", () => {
  expect(
    familyColours(["rose family", "beet family", "pea family", "beet family", "mint family"]),
  ).toEqual([
    { ink: "beet", name: "beet family" },
    { ink: "pea", name: "pea family" },
    { ink: "other", name: "others" },
  ]);
  expect(familyColours([])).toEqual([]);
});
