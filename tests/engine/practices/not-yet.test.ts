import { describe, expect, test } from "vitest";
import { weekdayOf } from "../../../src/base/days/day.ts";
import { NOT_YET_WARNING } from "../../../src/engine/practices/not-yet.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { said, tasksIn, titles, windowsOf } from "./told.ts";

const tomatoes = (given: Given = {}) =>
  growingOf(QUARRY, "tomato", { acts: { "set out": "2027-05-21" }, ...given });

describe("the weekend of temptation before 21 May", () => {
  const [task] = tasksIn(NOT_YET_WARNING, tomatoes());

  test("is the last Saturday at least nine days before", () => {
    expect(windowsOf(NOT_YET_WARNING, tomatoes())).toEqual(["1 05-08 05-12 05-12"]);
    expect(task && weekdayOf(task.window.earliest)).toBe(6);
  });

  test("is told once, as a warning, with the day it will be right", () => {
    expect(titles(tasksIn(NOT_YET_WARNING, tomatoes()))).toEqual(["Not yet: tomatoes"]);
    expect(task?.rhythm).toBe("warning");
    expect(said(task)).toContain("The day looks like 21 May.");
  });

  test("forbids planting out and not the hours outdoors of hardening off, which may have begun", () => {
    expect(said(task)).toContain("don't plant them out yet");
    expect(said(task)).not.toMatch(/keep them in/i);
  });

  test("tells the odds of a frost and the soil", () => {
    expect(said(task)).toMatch(/why: 1 spring in 2 has a frost after today, .* near \d\d °F\./);
  });
});

describe("no such warning", () => {
  test("is told of what stands frost", () => {
    const lettuce = growingOf(QUARRY, "lettuce", {
      acts: { "set out": "2027-04-12" },
      planting: { start: "plants" },
    });
    expect(windowsOf(NOT_YET_WARNING, lettuce)).toEqual([]);
  });

  test("is told where there is no frost", () => {
    const site = { ...tomatoes().plan.site, lastFrost: null };
    expect(windowsOf(NOT_YET_WARNING, tomatoes({ plan: { site } }))).toEqual([]);
  });

  test("is told to a gardener who fixed the day herself", () => {
    const fixed = { start: null, out: isoDay("2027-05-15") };
    expect(windowsOf(NOT_YET_WARNING, tomatoes({ planting: { fixed } }))).toEqual([]);
  });

  test("is told of what is in the ground since before, or has no day yet", () => {
    const inSince = isoDay("2027-04-01");
    expect(windowsOf(NOT_YET_WARNING, tomatoes({ planting: { inSince } }))).toEqual([]);
    expect(windowsOf(NOT_YET_WARNING, growingOf(QUARRY, "tomato"))).toEqual([]);
  });
});
