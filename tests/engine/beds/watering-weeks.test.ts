import { expect, test } from "vitest";
import { seasonFor } from "../../../src/engine/year.ts";
import { awayOf, LUSH, withAway } from "../../views/away/given.ts";

const { plan, year, scheduled } = awayOf(withAway(LUSH, "everybody, 1 to 7 Aug"));
const weeks = seasonFor(year, plan).wateringWeeks;

test("are those in which the schedule waters", () => {
  const watered = scheduled.filter(({ task }) => task.practice === "water");
  expect(watered.length).toBeGreaterThan(5);
  expect(weeks.map(({ monday }) => monday)).toHaveLength(watered.length);
});

test("give each bed its litres, and minutes where drip lines bring them", () => {
  const beds = weeks.flatMap((week) => week.beds);
  const root = beds.filter(({ bed }) => bed === "root-bed");
  expect(root.length).toBeGreaterThan(5);
  for (const { litres, runs } of root) {
    expect(litres).toBeGreaterThan(0);
    expect(runs).not.toBeNull();
  }
  expect(beds.filter(({ bed, runs }) => bed === "south-bed" && runs !== null)).toEqual([]);
});

test("are not calculated for a plan in which nobody is ever away", () => {
  const home = awayOf(LUSH);
  expect(seasonFor(home.year, home.plan).wateringWeeks).toEqual([]);
});
