import { expect, test } from "vitest";
import { openJobLines } from "../../../src/views/paper/open-jobs.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { askedOf } from "./paper.ts";

const ASKING = QUARRY.replace("people:", "assume: open\npeople:");
const within = { from: isoDay("2027-06-01"), to: isoDay("2027-06-30") };
const openIn = (text: string, person: string | null = null) =>
  openJobLines(askedOf(text, "2027-06", { on: "2027-06-01", person }), within);

test("work of May that nobody wrote about is open in June, where the household wants to be asked", () => {
  const lines = openIn(ASKING);
  expect(lines.length).toBeGreaterThan(0);
  expect(lines.some((line) => line.startsWith("Sow beets, Root bed."))).toBe(true);
  expect(openIn(QUARRY)).toEqual([]);
});

test("somebody's sheet has what is theirs", () => {
  const both = [...openIn(ASKING, "imre"), ...openIn(ASKING, "oda")];
  expect(both.sort()).toEqual([...openIn(ASKING)].sort());
});
