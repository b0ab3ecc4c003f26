import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { plus } from "../../src/base/days/day.ts";
import type { Person, Plan } from "../../src/garden/model/plan.ts";
import { IMRE, ODA, personOf } from "../engine/schedule/given.ts";
import { normalsOf, planOf, QUARRY } from "../gardens.ts";
import { once } from "../once.ts";
import { dawn, toldAt } from "./feeds.ts";

const PLAN = planOf(QUARRY);
/** Soil that is as warm on every day, with days too dull for the sun to warm it, so that a chain moves by whole days and nothing else. */
const EVEN = {
  ...PLAN.site,
  normals: normalsOf(Array<number>(12).fill(15), Array<number>(12).fill(17)),
};

const tellOf = (given: Partial<Plan>) =>
  toldAt({ id: "quarry-lane", plans: [{ ...PLAN, ...given }] }, dawn("2027-01-01"));
function taskIn(told: Schedule, id: string) {
  const found = told.scheduled.find(({ task }) => task.id === `2027/${id}`);
  if (!found) throw new Error(`no task ${id}`);
  return found;
}

describe("a sowing that an absence puts off by six days", () => {
  const home = { people: [personOf("ada")], site: EVEN };
  const whole = once(() => tellOf(home));
  const sown = () => taskIn(whole(), "carrot/sow-outdoors/1").day;
  const delayed = once(() => {
    const away = [{ person: "ada", from: plus(sown(), -20), to: plus(sown(), 5) }];
    return tellOf({ ...home, away });
  });
  const moved = (id: string) =>
    taskIn(delayed(), id).task.window.due - taskIn(whole(), id).task.window.due;

  test("is placed six days late, and says why to the household", () => {
    const { day, note } = taskIn(delayed(), "carrot/sow-outdoors/1");
    expect(day).toBe(plus(sown(), 6));
    expect(note?.for).toBe("household");
  });

  test.each(["board/off", "board/look", "thin/1", "thin/2", "weed/first", "harvest/1"])(
    "takes %s with it by six",
    (step) => {
      expect(moved(`carrot/${step}`)).toBe(6);
    },
  );

  test("tells how far that is from a usual year", () => {
    const thin = taskIn(delayed(), "carrot/thin/1");
    expect(thin.task.window.due - (thin.usual ?? 0)).toBe(6);
  });

  test("leaves a planting alone that was sown on another day", () => {
    expect(moved("garlic/overwinter/plant")).toBe(0);
  });
});

describe("the ladder is held by whoever is home", () => {
  const rungs = (told: Schedule) =>
    told.scheduled.filter(
      ({ task }) => task.practice === "harden off" && task.timed?.part === "out",
    );
  const always = (key: string): Person => personOf(key);

  test("by both where both are", () => {
    const told = tellOf({ people: [always("ada"), always("bea")] });
    expect(rungs(told)).toHaveLength(10);
    for (const { people } of rungs(told)) expect(people).toEqual(["ada", "bea"]);
  });

  test("by the other where one is away", () => {
    const out = taskIn(tellOf({ people: [always("ada"), always("bea")] }), "tomato/set-out/1").day;
    const away = [{ person: "ada", from: plus(out, -30), to: plus(out, 3) }];
    const told = tellOf({ people: [always("ada"), always("bea")], away });
    expect(rungs(told)).toHaveLength(10);
    for (const { people } of rungs(told)) expect(people).toEqual(["bea"]);
  });

  test("in full shade on days when nobody is home between morning and evening", () => {
    const told = tellOf({ people: [IMRE] });
    const long = rungs(told).filter(({ task }) => (task.timed?.lasts ?? 0) > 150);
    const shaded = long.filter(({ task }) => JSON.stringify(task.say).includes("full shade, out"));
    expect(shaded.length).toBeGreaterThan(1);
    for (const { at } of shaded) expect(at?.from).toBe(450);
  });

  test("is passed over on days when nobody is about, and ends on setting-out day", () => {
    const whole = tellOf({ people: [ODA] });
    const out = taskIn(whole, "tomato/set-out/1").day;
    const last = Math.max(...rungs(whole).map(({ day }) => day));
    expect(out - last).toBeLessThanOrEqual(2);
    for (const { day, people } of rungs(whole)) expect(people, `${day}`).toEqual(["oda"]);
  });
});
