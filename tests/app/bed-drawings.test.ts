import { expect, test } from "vitest";
import { bedsPlanned, bedsStanding, bedsWithJobs, formOf } from "../../src/app/bed-drawings.ts";
import { isoDay } from "../gardens.ts";
import { SPRING, TODAY } from "./reports.ts";

const { year } = SPRING;
const [plan] = year.plans;
if (!plan) throw new Error("no plan");

test("the beds are drawn as they stand, as a file or into a page", () => {
  const file = bedsStanding(year, isoDay("2027-07-01"), "phone");
  const inset = bedsStanding(year, isoDay("2027-07-01"), "inset");
  expect(file?.svg).toContain("The beds of Quarry Lane, 1 July 2027");
  expect(file?.widthPx).toBe(390);
  expect(inset?.svg).not.toContain("<style");
  expect(formOf("page")).toEqual({ form: "page", inset: false, styled: true });
  expect(formOf("image")).toEqual({ form: "phone", inset: true, styled: true });
});

test("jobs stand at their beds, and beds without any are left out", () => {
  const jobs = [{ task: "2027/beet/thin/1", title: "Thin beets" }];
  const drawn = bedsWithJobs(year, isoDay("2027-06-05"), jobs);
  expect(drawn?.words).toEqual([
    { name: "Root bed, 12 × 4 ft", text: expect.stringMatching(/beets\. Thin beets\.$/) },
  ]);
  expect(drawn?.svg).toContain("<style");
  expect(drawn?.svg).not.toContain('class="paper"');
  expect(bedsWithJobs(year, TODAY, [])).toBeNull();
});

test("a plan's beds are those of today, or, where nothing stands yet, of its fullest day", () => {
  const title = (day: string) =>
    /<title[^>]*>([^<]+)</.exec(
      bedsPlanned(year, { plan, today: isoDay(day), form: "inset" })?.svg ?? "",
    )?.[1];
  expect(title("2027-07-01")).toContain("1 July 2027");
  expect(title("2027-02-01")).not.toContain("Feb");
  expect(title("2030-07-01")).toContain("2027");
});
