import { describe, expect, test } from "vitest";
import { weekdayOf } from "../../../src/base/days/day.ts";
import { weeksOf } from "../../../src/views/paper/weeks.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { askedOf, sheetOf } from "./paper.ts";

const may = sheetOf(QUARRY, "2027-05").weeks;

describe("the weeks of a month", () => {
  test("run from Monday to Sunday, cut to the month, each day once", () => {
    expect([may[0]?.from, may.at(-1)?.to]).toEqual([isoDay("2027-05-01"), isoDay("2027-05-31")]);
    for (const [i, week] of may.slice(1).entries()) {
      expect(weekdayOf(week.from)).toBe(1);
      expect(week.from).toBe((may[i]?.to ?? 0) + 1);
    }
  });

  test("hold every task of the month that the feed has, each once", () => {
    const { scheduled: placed, plans, events } = askedOf(QUARRY, "2027-05");
    const tasks = events.filter(
      ({ set, kind, day }) =>
        set !== "sessions" &&
        kind !== "season" &&
        kind !== "rung" &&
        day >= isoDay("2027-05-01") &&
        day <= isoDay("2027-05-31"),
    ).length;
    const told = may.flatMap(({ days }) => days.flatMap((day) => [...day.jobs, ...day.warnings]));
    expect(told.length).toBe(tasks);
    expect(
      weeksOf(
        [],
        { plans, scheduled: placed },
        { from: isoDay("2027-05-01"), to: isoDay("2027-05-31") },
      ).every(({ days }) => days.length === 0),
    ).toBe(true);
  });

  test("say a how once", () => {
    const july = sheetOf(QUARRY, "2027-07").weeks;
    const jobs = july.flatMap(({ days }) => days.flatMap((day) => day.jobs));
    const hows = jobs.flatMap(({ how }) => how).filter((how) => how !== "Done as above.");
    expect(new Set(hows).size).toBe(hows.length);
    expect(jobs.filter(({ how }) => how[0] === "Done as above.").length).toBeGreaterThan(0);
  });

  test("keep warnings apart from work", () => {
    const warnings = may.flatMap(({ days }) => days.flatMap((day) => day.warnings));
    expect(warnings.map(({ title }) => title)).toEqual(["Not yet: tomatoes"]);
  });
});
