import { expect, test } from "vitest";
import { absences } from "../../src/app/away.ts";
import { isoDay } from "../gardens.ts";
import { SPRING, TODAY } from "./reports.ts";

const { year } = SPRING;
const heads = (person: string | null, today = TODAY) =>
  absences(year, { person, plans: year.plans, today }).map(({ head }) => head);

test("each absence from today on is told under who goes and when", () => {
  expect(heads(null)).toEqual(["Everybody away, 1 to 8 Aug", "Oda away, 1 to 9 Sep"]);
  expect(heads(null, isoDay("2027-08-20"))).toEqual(["Oda away, 1 to 9 Sep"]);
});

test("of one person their own alone, and everybody's", () => {
  expect(heads("imre")).toEqual(["Everybody away, 1 to 8 Aug"]);
});

test("each has what to do before and after", () => {
  const [first] = absences(year, { person: null, plans: year.plans, today: TODAY });
  const lists = first?.texts.map(({ list }) => list);
  expect(lists).toContain("before");
  expect(lists).toContain("back");
});
