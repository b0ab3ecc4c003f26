import { expect, test } from "vitest";
import { looking, readPage } from "../../views/paper/paper.ts";
import { textIn, under } from "../../views/pictures/xml.ts";
import { folderOf, PLAN, sowbell } from "./terminal.ts";

const DIARY = "diary:\n  - 1 May: beets sown\n";
const yearOn = async (on: string) => {
  const folder = folderOf({
    "2027.yaml": `${PLAN}${DIARY}`,
    "2028.yaml": PLAN.replace("year: 2027", "year: 2028"),
  });
  const { exit, out } = await sowbell(["year", folder, "--on", on]);
  expect(exit).toBe(0);
  return readPage(out);
};

test("year writes the season of that day, what was written beside what was planned", async () => {
  const tag = await yearOn("2027-11-15");
  expect(under(tag, "title").map(textIn)).toEqual(["Back Step, the year 2027"]);
  expect(looking(tag, "written").map(textIn)).toEqual(["1 May"]);
  expect(
    looking(tag, "aside")
      .map(textIn)
      .some((aside) => /days? (?:later|earlier) than planned/.test(aside)),
  ).toBe(true);
  expect(under(await yearOn("2028-07-01"), "title").map(textIn)).toEqual([
    "Back Step, the year 2028",
  ]);
});

test("year takes no month", async () => {
  const { exit, err } = await sowbell(["year", "plan.yaml", "--month", "2027-05"]);
  expect([exit, err.split("\n")[0]]).toEqual([2, "sowbell: year takes no --month"]);
});
