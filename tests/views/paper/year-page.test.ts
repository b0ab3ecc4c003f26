import { describe, expect, test } from "vitest";
import { yearPage } from "../../../src/views/paper/year-page.tsx";
import { QUARRY } from "../../gardens.ts";
import { GARDENS } from "../pictures/drawn.ts";
import { everyTag, textIn, under } from "../pictures/xml.ts";
import { HOSTILE, looking, readPage } from "./paper.ts";
import { LIVED, reportOf } from "./paper-year.ts";

const pageOf = (text: string, on: string) => readPage(yearPage(reportOf(text, on)));

describe("the year's sheet", () => {
  const tag = pageOf(LIVED, "2027-11-15");
  const heads = under(tag, "h2").map(textIn);

  test("sets what was written apart from what is supposed, in words too", () => {
    expect(looking(tag, "written").map(textIn)).toContain("12 May");
    for (const day of looking(tag, "supposed").map(textIn)) expect(day).toMatch(/^about /);
  });

  test("says whose year it was, and up to which day where it goes on", () => {
    const headOf = (on: string) => looking(pageOf(LIVED, on), "of").map(textIn);
    expect(headOf("2027-11-15")).toEqual(["Quarry Lane, as it went up to 15 Nov 2027"]);
    expect(headOf("2028-11-15")).toEqual(["Quarry Lane, as it went"]);
  });

  test("has a part for each thing the year left behind, and none without any", () => {
    expect(heads).toEqual([
      "Frost, lows and soil",
      "What failed",
      "Left for this year",
      "Moved",
      "Notes by day",
      "Keep for next year",
    ]);
    const silent = pageOf(QUARRY, "2027-11-15");
    expect(under(silent, "h2").map(textIn)).toEqual(["Frost, lows and soil", "Keep for next year"]);
    expect(textIn(silent)).toContain("No first ripe day was written down");
  });

  test("gives every row as many cells as there are columns", () => {
    for (const row of under(tag, "tr")) {
      const cells = [...under(row, "td"), ...under(row, "th")];
      expect(cells.reduce((sum, { attributes }) => sum + Number(attributes.colspan ?? 1), 0)).toBe(
        5,
      );
    }
  });
});

test("no name and no remark breaks out of the page", () => {
  const tag = pageOf(HOSTILE, "2027-11-15");
  const names = everyTag(tag).map(({ name }) => name);
  expect(names.filter((name) => ["script", "img", "i"].includes(name))).toEqual([]);
  expect(textIn(tag)).toContain("3 May: <script>alert(2)</script> & so on");
});

test.each(Object.entries(GARDENS))("the year of %s is a sound page", (_, text) => {
  for (const on of ["2027-01-15", "2027-11-15"])
    expect(looking(pageOf(text, on), "head").length).toBe(1);
});
