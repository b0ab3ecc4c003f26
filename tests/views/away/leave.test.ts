import { describe, expect, test } from "vitest";
import type { Plan } from "../../../src/garden/model/plan.ts";
import {
  comesFirst,
  daysAlone,
  daysWithin,
  goesLast,
  isIn,
  leavesOf,
} from "../../../src/views/away/leave.ts";
import { ALONE, isoDay, planOf, QUARRY } from "../../gardens.ts";

const day = (date: string) => isoDay(`2027-${date}`);
const absence = (person: string | null, from: string, to: string) => ({
  person,
  from: day(from),
  to: day(to),
});
const away = (...lines: Plan["away"]) => planOf(QUARRY, { away: lines });
const leaves = (...lines: Plan["away"]) => leavesOf(away(...lines), day("01-01"));

describe("leaves", () => {
  test("of one leave the other at home and no day alone", () => {
    expect(leaves(absence("oda", "06-19", "06-23"))).toEqual([
      { from: day("06-19"), to: day("06-23"), away: ["oda"], home: ["imre"], alone: [] },
    ]);
  });

  test("of everybody leave nobody at home", () => {
    const span = { from: day("08-01"), to: day("08-07") };
    expect(leaves(absence(null, "08-01", "08-07"))).toEqual([
      { ...span, away: ["imre", "oda"], home: [], alone: [span] },
    ]);
  });

  test("of equal days are one", () => {
    const [both, ...others] = leaves(
      absence("oda", "08-01", "08-07"),
      absence("imre", "08-01", "08-07"),
    );
    expect(others).toEqual([]);
    expect(both?.away).toEqual(["imre", "oda"]);
  });

  test("that overlap stay apart and share the days with nobody there", () => {
    const both = leaves(absence("imre", "06-21", "06-26"), absence("oda", "06-19", "06-23"));
    expect(both.map((leave) => leave.away)).toEqual([["oda"], ["imre"]]);
    const alone = [{ from: day("06-21"), to: day("06-23") }];
    expect(both.map((leave) => leave.alone)).toEqual([alone, alone]);
    expect(both.map(goesLast)).toEqual([false, true]);
    expect(both.map(comesFirst)).toEqual([true, false]);
  });

  test("have as many spells alone as the other is away", () => {
    const [long] = leaves(
      absence("oda", "07-01", "07-20"),
      absence("imre", "07-03", "07-04"),
      absence("imre", "07-10", "07-10"),
    );
    expect(long?.alone).toEqual([
      { from: day("07-03"), to: day("07-04") },
      { from: day("07-10"), to: day("07-10") },
    ]);
    if (!long) throw new Error("no leave");
    expect(daysAlone(long, { from: day("07-04"), to: day("07-10") })).toBe(2);
    expect(daysAlone(long, { from: day("07-05"), to: day("07-09") })).toBe(0);
  });

  test("that are over are left out, one that ends today is not", () => {
    const plan = away(absence("oda", "06-19", "06-23"));
    expect(leavesOf(plan, day("06-23"))).toHaveLength(1);
    expect(leavesOf(plan, day("06-24"))).toEqual([]);
  });

  test("of a household that names nobody are everybody's", () => {
    const plan = planOf(ALONE, { away: [absence(null, "08-01", "08-02")] });
    const [leave] = leavesOf(plan, day("01-01"));
    expect(leave).toMatchObject({ away: [], home: [] });
    expect(leave?.alone).toHaveLength(1);
  });
});

test("a span holds both its ends", () => {
  const span = { from: day("07-03"), to: day("07-05") };
  expect(daysWithin(span)).toEqual([day("07-03"), day("07-04"), day("07-05")]);
  expect([day("07-02"), ...daysWithin(span), day("07-06")].map((each) => isIn(each, span))).toEqual(
    [false, true, true, true, false],
  );
});
