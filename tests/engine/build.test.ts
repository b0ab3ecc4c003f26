import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { type Day, plus } from "../../src/base/days/day.ts";
import { startOf } from "../../src/base/days/instants.ts";
import { buildBaseline, buildYear } from "../../src/engine/build.ts";
import { horizonOf } from "../../src/engine/schedule/horizon.ts";
import type { Garden, Year } from "../../src/engine/year.ts";
import { ALONE, gardenOf, isoDay, planOf, QUARRY, tellOf } from "../gardens.ts";

const on = "2027-01-01";
const dayOf = (told: Schedule, id: string): Day => {
  const found = told.scheduled.find(({ task }) => task.id === id);
  if (!found) throw new Error(`no task ${id} among ${told.scheduled.length}`);
  return found.day;
};
const taskOf = (told: Schedule, id: string) => told.scheduled.find(({ task }) => task.id === id);
const QUIET = tellOf(ALONE, { on });

describe("three passes", () => {
  const late = tellOf(ALONE.replace("beet: 2 rows", "beet: 2 rows, sown 30 May"), { on });

  test("what hangs on the sowing hangs on the day it is placed", () => {
    expect(dayOf(late, "2027/beet/sow-outdoors/1")).toBe(isoDay("2027-05-30"));
    const thin = "2027/beet/thin/1";
    expect(dayOf(late, thin)).toBeGreaterThan(dayOf(QUIET, thin));
  });

  test("each task that hangs on another names it, and comes no sooner", () => {
    const before: string[] = [];
    for (const { task, day } of QUIET.scheduled)
      for (const id of task.hangsOn)
        if (dayOf(QUIET, id) > day && !/order|sprout|things|warm|harden|not-yet/.test(task.id))
          before.push(`${task.id} before ${id}`);
    expect(before).toEqual([]);
  });

  test("a ladder ends on setting-out day", () => {
    const out = dayOf(QUIET, "2027/tomato/set-out/1");
    expect(dayOf(QUIET, "2027/tomato/harden-off/out-10")).toBe(plus(out, -1));
  });

  test("plants that can share a ladder are set out on one day", () => {
    const two = ALONE.replace(
      "      - tomato: 6 plants, from seed indoors\n",
      "      - tomato: 6 plants, from seed indoors\n      - name: late tomato\n        crop: tomato\n        plants: 4\n        not before: 24 May\n",
    );
    const told = tellOf(two, { on });
    expect(dayOf(told, "2027/tomato/set-out/1")).toBe(dayOf(told, "2027/late-tomato/set-out/1"));
  });

  test("a practice that a planting drops has no task", () => {
    const told = tellOf(ALONE.replace("beet: 2 rows", "beet: 2 rows, without thinning"), { on });
    expect(taskOf(told, "2027/beet/thin/1")).toBeUndefined();
    expect(taskOf(told, "2027/carrot/thin/1")).toBeDefined();
  });

  test("a crop the facts do not know has no task and stops no other", () => {
    const told = tellOf(ALONE.replace("beet: 2 rows", "oca: 2 rows"), { on });
    expect(told.scheduled.filter(({ task }) => task.crop === "oca")).toEqual([]);
    expect(taskOf(told, "2027/carrot/thin/1")).toBeDefined();
  });

  test("a planting waits for the one it follows", () => {
    const behind = ALONE.replace(
      "      - garlic: 60 cloves, plant this October",
      "      - lettuce: 2 rows\n      - beet: 2 rows, after the lettuce",
    )
      .replace("      - beet: 2 rows\n", "")
      .replace("      - lettuce: 2 rows, every 14 days, 3 times\n", "      - garlic: 60 cloves\n");
    const told = tellOf(behind, { on });
    const cuts = told.scheduled.filter(({ task }) => task.id.startsWith("2027/lettuce/harvest/"));
    const last = Math.max(...cuts.map(({ day }) => day));
    expect(dayOf(told, "2027/beet/sow-outdoors/1")).toBe(last + 1);
  });
});

describe("what the diary says", () => {
  const told = tellOf(`${ALONE}diary:\n  - 12 May: beets sown\n  - 2 Jun: carrots up\n`, { on });

  test("done stands on its day and moves the rest of the chain", () => {
    const sown = taskOf(told, "2027/beet/sow-outdoors/1");
    expect(sown).toMatchObject({ day: isoDay("2027-05-12"), done: { by: null } });
    const thin = "2027/beet/thin/1";
    expect(dayOf(told, thin)).not.toBe(dayOf(QUIET, thin));
    expect(taskOf(told, thin)?.usual).toBe(dayOf(QUIET, thin));
  });

  test("seen replaces what was reckoned", () => {
    expect(taskOf(told, "2027/carrot/thin/1")?.task.basis).toEqual(["seen"]);
  });

  test("touches no other planting", () => {
    const potato = (from: Schedule) =>
      from.scheduled
        .filter(({ task }) => task.crop === "potato")
        .map(({ task, day }) => [task.id, day]);
    expect(potato(told)).toEqual(potato(QUIET));
  });
});

describe("a garden of two years", () => {
  const next = QUARRY.replace("year: 2027", "year: 2028").replace(", plant this October", "");

  test("tells both years' tasks in one feed", () => {
    const told = tellOf([QUARRY, next], { on });
    const years = new Set(told.scheduled.map(({ task }) => task.id.slice(0, 4)));
    expect([...years].sort()).toEqual(["2027", "2028"]);
  });

  test("keeps one load of work, so that nobody's hours are given twice", () => {
    const told = tellOf([QUARRY, QUARRY.replace("year: 2027", "year: 2028")], { on });
    expect(told.events.length).toBeGreaterThan(100);
  });

  test("names the beds of both years", () => {
    const other = next.replace("Root bed:", "Far bed:");
    const told = tellOf([QUARRY, other], { on });
    const titles = told.events.map((event) => event.title).join("\n");
    expect(titles).toMatch(/Root bed/);
    expect(titles).toMatch(/Far bed/);
  });
});

/** A year as values: without what a task would say if it were asked why. */
const asJson = (year: Year): unknown => JSON.parse(JSON.stringify(year));

describe("the year", () => {
  test("needs nothing of the plan that JSON does not keep", () => {
    const garden: Garden = { id: "quarry-lane", plans: [planOf(QUARRY)] };
    const copy: Garden = JSON.parse(JSON.stringify(garden));
    const horizon = horizonOf(garden.plans, startOf(isoDay(on), "America/Denver"));
    expect(asJson(buildYear(copy, horizon, {}))).toEqual(asJson(buildYear(garden, horizon, {})));
  });

  test("comes out the same with its usual days at hand as reckoning them again", () => {
    const garden = gardenOf(
      QUARRY.replace("people:", "away:\n  - everybody, 1 May to 12 May\npeople:"),
    );
    const horizon = horizonOf(garden.plans, Date.UTC(2027, 2, 1));
    const usual = buildBaseline(garden);
    expect(asJson(buildYear({ ...garden, baseline: usual }, horizon, {}))).toEqual(
      asJson(buildYear(garden, horizon, {})),
    );
    expect(buildBaseline(gardenOf(QUARRY))).toEqual(usual);
  });

  test("says how this season stands against a usual one", () => {
    const away = QUARRY.replace("beds:\n", "away:\n  - everybody, 20 Apr to 14 May\nbeds:\n");
    const told = tellOf(away, { on });
    const thin = taskOf(told, "2027/beet/thin/1");
    expect(thin?.task.window.due).toBeGreaterThan((thin?.usual ?? 0) + 2);
    expect(told.events.map((event) => event.text).join("\n")).toMatch(/days later than usual/);
  });
});
