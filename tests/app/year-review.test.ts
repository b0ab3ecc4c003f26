import { expect, test } from "vitest";
import { plannedCourse, reviewYear } from "../../src/app/year-review.ts";
import { isoDay, planOf, tellOf } from "../gardens.ts";
import { LIVED, reportOf } from "../views/paper/paper-year.ts";

test("a garden's year is looked back on beside the one that was planned without its diary", () => {
  const today = isoDay("2027-11-15");
  const { year } = tellOf(LIVED, { on: "2027-11-15" });
  const plan = planOf(LIVED);
  const report = reviewYear(year, { plan, planned: plannedCourse(year, plan), today });
  expect(report.beds).toEqual(reportOf(LIVED, "2027-11-15").beds);
  const [beet] = report.beds[1]?.lines.filter(({ name }) => name === "Beets") ?? [];
  const begun = beet?.sowings[0]?.begun;
  expect(begun?.day).toBe(isoDay("2027-05-12"));
  expect(begun?.planned).not.toBe(begun?.day);
});
