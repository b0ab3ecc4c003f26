import { expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { nextYear } from "../../../src/garden/plan/next-year.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";
import { QUARRY } from "../../gardens.ts";

const TEXT = `# Quarry Lane
garden: Quarry Lane
year: 2027     # the year
away:
  - Oda, 19 to 23 Jun
beds:
  South bed:
    crops: [carrot]   # year: 2027 stays here
diary:
  - 24 May: carrots up
  - 25 May: the year: 2027 was cold
# behind
assume: open
`;

test("the next year's plan begins without the old one's diary and absences, the rest as it was written", () => {
  expect(nextYear(TEXT, 2028)).toBe(`# Quarry Lane
garden: Quarry Lane
year: 2028     # the year
beds:
  South bed:
    crops: [carrot]   # year: 2027 stays here
# behind
assume: open
`);
});

test("notes between the blocks stay, and keys in quotes are keys", () => {
  const text = `"year": 2027\n'away':\n  - Oda, 19 to 23 Jun\n# my beds\nbeds: {}\n`;
  expect(nextYear(text, 2028)).toBe(`"year": 2028\n# my beds\nbeds: {}\n`);
});

test("a good plan gives a good plan of the next year", () => {
  const { plan, problems } = readPlan(
    nextYear(QUARRY, 2028),
    { garden: "g", file: "2028.yaml" },
    PRACTICES,
  );
  expect(problems.filter(({ weight }) => weight === "problem")).toEqual([]);
  expect([plan?.year, plan?.diary]).toEqual([2028, []]);
});
