import { expect, test } from "vitest";
import { newestPlan, wholeGarden } from "../../../src/garden/model/garden.ts";
import { ODA } from "../../engine/schedule/given.ts";
import { least, planOf } from "../plan/canonical.ts";

const year = (y: number, crops: string) => planOf(least(crops).replace("2027", String(y)));
const bed = (crop: string, name = "South bed", is = "12 x 4 ft") =>
  `beds:\n  ${name}:\n    is: ${is}\n    crops:\n      - ${crop}`;

test("the whole garden is the newest plan with the beds and people of every year, the newest of each", () => {
  const before = {
    ...year(2026, bed("carrot", "North bed")),
    people: [{ ...ODA, name: "Oda May" }],
  };
  const now = { ...year(2027, bed("tomato")), people: [ODA] };
  const { beds, people, year: newest } = wholeGarden([before, now]);
  expect([newest, beds.map(({ name }) => name)]).toEqual([2027, ["North bed", "South bed"]]);
  expect(people.map(({ name }) => name)).toEqual(["Oda"]);
  expect(() => wholeGarden([])).toThrow(RangeError);
});

test("takes the last plan for the newest, and throws for a garden without one", () => {
  expect(newestPlan([year(2026, "crops: [beet]"), year(2027, "crops: [beet]")]).year).toBe(2027);
  expect(() => newestPlan([])).toThrow(RangeError);
});
