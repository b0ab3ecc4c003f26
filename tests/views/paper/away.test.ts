import { expect, test } from "vitest";
import { awayLines } from "../../../src/views/paper/away.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const plan = planOf(QUARRY, {
  away: [
    { person: "oda", from: isoDay("2027-06-19"), to: isoDay("2027-07-02") },
    { person: null, from: isoDay("2027-08-01"), to: isoDay("2027-08-07") },
  ],
});
const inMonth = (from: string, to: string, person: string | null = null) =>
  awayLines([plan], { from: isoDay(from), to: isoDay(to), person });

test("whoever is away is told with the days that lie in the month", () => {
  expect(inMonth("2027-06-01", "2027-06-30")).toEqual(["Oda is away 19 to 30 June."]);
  expect(inMonth("2027-08-01", "2027-08-31")).toEqual(["Everybody is away 1 to 7 Aug."]);
  expect(inMonth("2027-05-01", "2027-05-31")).toEqual([]);
});

test("another's absence does not stand on somebody's own sheet, everybody's does", () => {
  expect(inMonth("2027-06-01", "2027-08-31", "imre")).toEqual(["Everybody is away 1 to 7 Aug."]);
});
