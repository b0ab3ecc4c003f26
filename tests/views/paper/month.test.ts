import { describe, expect, test } from "vitest";
import { QUARRY } from "../../gardens.ts";
import { sheetOf } from "./paper.ts";

const titles = (sheet: ReturnType<typeof sheetOf>) =>
  sheet.weeks.flatMap(({ days }) => days.flatMap(({ jobs }) => jobs.map(({ title }) => title)));

describe("a month's sheet", () => {
  const may = sheetOf(QUARRY, "2027-05");

  test("names the month, the garden, its people and its usual frosts", () => {
    expect([may.month, may.garden, may.person]).toEqual(["May 2027", "Quarry Lane", null]);
    expect(may.people.map(({ name }) => name)).toEqual(["Imre", "Oda"]);
    expect(may.facts).toEqual(["Last frost usually about 6 May, first frost about 2 Oct."]);
    expect(titles(may)).toContain("Hill potatoes, Bags");
  });

  test("of one person holds theirs and everybody's alone", () => {
    const imre = sheetOf(QUARRY, "2027-05", { person: "imre" });
    expect(imre.person?.name).toBe("Imre");
    const all = imre.weeks.flatMap(({ days }) => days.flatMap(({ jobs }) => jobs));
    expect(all.length).toBeGreaterThan(0);
    expect(all.filter(({ who }) => who.length > 0 && !who.includes("imre"))).toEqual([]);
    expect(titles(imre).length).toBeLessThan(titles(may).length);
  });

  test("without work says what comes next, or nothing", () => {
    const february = sheetOf(QUARRY, "2028-02");
    expect(titles(february)).toEqual([]);
    expect(february.next).toMatch(/garlic.+, \d+ Apr$/);
    expect(sheetOf(QUARRY, "2035-01").next).toBe("");
    expect(may.next).toBe("");
  });
});
