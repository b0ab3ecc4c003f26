import { describe, expect, test } from "vitest";
import { courseOf, horizonAt } from "../../src/app/build.ts";
import { startOf } from "../../src/base/days/instants.ts";
import { gardenOf, isoDay, QUARRY, tellOf } from "../gardens.ts";

const on = "2027-01-01";

test("a garden of two years has the horizon of its newest plan's clock", () => {
  const garden = gardenOf(QUARRY, QUARRY.replace("year: 2027", "year: 2028"));
  const at = startOf(isoDay("2028-03-05"), "America/Denver");
  expect(horizonAt(garden, at).firstDay).toBe(isoDay("2027-09-01"));
});

describe("what is shown", () => {
  test("begins with the horizon's first day and leaves nothing out after it", () => {
    const told = tellOf(QUARRY, { on: "2028-02-10" });
    const shown = told.events.flatMap((event) => (event.kind === "season" ? [] : [event.day]));
    expect(Math.min(...shown)).toBeGreaterThanOrEqual(isoDay("2027-08-01"));
    expect(told.scheduled.length).toBe(tellOf(QUARRY, { on }).scheduled.length);
  });

  test("is the season's own line alone once all is past", () => {
    const told = tellOf(QUARRY, { on: "2030-02-10" });
    expect(told.events.map((event) => event.kind)).toEqual(["season"]);
  });
});

describe("what is kept of a telling", () => {
  const told = tellOf(QUARRY, { on });

  test("is every task with its day, window and people", () => {
    expect(Object.keys(told.publishedState)).toHaveLength(told.scheduled.length);
    const { day, window, people } = told.scheduled[0] ?? { day: 0, window: null, people: [] };
    const id = told.scheduled[0]?.task.id ?? "";
    expect(told.publishedState[id]).toMatchObject({ day, window, people });
  });

  test("marks as leads those tasks alone that gave an event its name", () => {
    const keys = new Set(told.events.map((event) => event.key));
    for (const [id, { lead }] of Object.entries(told.publishedState))
      expect(lead, id).toBe(keys.has(id));
  });

  test("and told again with, changes nothing", () => {
    const again = tellOf(QUARRY, { on, standing: told.publishedState });
    expect(again.publishedState).toEqual(told.publishedState);
    expect(again.events).toEqual(told.events);
  });

  test("is plain JSON", () => {
    expect(JSON.parse(JSON.stringify(told.publishedState))).toEqual(told.publishedState);
  });
});

test("what plans come to is the course of each planting, whenever it is asked for before the season", () => {
  const { plans } = gardenOf(QUARRY);
  const at = startOf(isoDay(on), "America/Denver");
  const course = courseOf(plans, at);
  expect(course.seasons[0]?.plantings.length).toBe(plans[0]?.plantings.length);
  expect(courseOf(plans, at - 86_400_000).seasons).toEqual(course.seasons);
});
