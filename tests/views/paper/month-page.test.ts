import { describe, expect, test } from "vitest";
import { monthPage } from "../../../src/views/paper/month-page.tsx";
import { QUARRY } from "../../gardens.ts";
import { GARDENS } from "../pictures/drawn.ts";
import { everyTag, textIn, under } from "../pictures/xml.ts";
import { HOSTILE, looking, readPage, sheetOf } from "./paper.ts";

const pageOf = (...args: Parameters<typeof sheetOf>) => readPage(monthPage(sheetOf(...args)));
const SOWN = `${QUARRY}diary:\n  - 2 May: carrots sown by Oda\n`;

describe("the shed's sheet", () => {
  const may = pageOf(SOWN, "2027-05");

  test("has a box to tick and a line to write on for every job, and ticks what is done", () => {
    const jobs = looking(may, "job");
    expect(jobs.length).toBeGreaterThan(10);
    for (const job of jobs) {
      expect(looking(job, "box").length).toBe(1);
      expect(looking(job, "write").length).toBe(1);
    }
    const ticked = jobs.filter((job) => looking(job, "box").some((box) => textIn(box) === "x"));
    expect(ticked.map((job) => looking(job, "what").map(textIn)[0])).toEqual([
      expect.stringContaining("Sow carrots, Root bed"),
    ]);
    expect(ticked.flatMap((job) => looking(job, "till").map(textIn))).toEqual(["done 2 May, Oda"]);
  });

  test("uses no word of the machinery", () => {
    expect(textIn(under(may, "body")[0] ?? may)).not.toMatch(
      /overdue|emergence|threshold|degree day|\brung\b|milestone/i,
    );
  });

  test("says so where a month has nothing to do", () => {
    expect(looking(pageOf(QUARRY, "2028-02"), "none").map(textIn)[0]).toMatch(
      /^Nothing to do in the garden in February 2028\. The next job: .+\.$/,
    );
  });

  test("for one person names them, and still says whose the letters are", () => {
    const oda = pageOf(QUARRY, "2027-05", { person: "oda" });
    expect(looking(oda, "of").map(textIn)).toEqual(["Quarry Lane, for OdaI ImreO Oda"]);
  });
});

test("no name breaks out of the page", () => {
  for (const month of ["2027-04", "2027-05", "2027-06", "2027-08"]) {
    const tag = pageOf(HOSTILE, month);
    const names = new Set(everyTag(tag).map(({ name }) => name));
    expect([...names].filter((name) => ["script", "img", "i"].includes(name))).toEqual([]);
  }
});

test.each(Object.entries(GARDENS))("the months of %s are sound pages", (_, text) => {
  for (const month of ["2027-02", "2027-05", "2027-10"])
    expect(looking(pageOf(text, month), "head").length).toBe(1);
});
