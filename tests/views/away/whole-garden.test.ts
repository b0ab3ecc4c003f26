import { expect, test } from "vitest";
import { anchorOf } from "../../../src/engine/growth/sowing-context.ts";
import { dryWeeksOf } from "../../../src/engine/practices/weekly-need.ts";
import { wholeGardenOf } from "../../../src/views/away/whole-garden.ts";
import { awayOf, LUSH, withAway } from "./given.ts";

const { plan, season, scheduled } = awayOf(withAway(LUSH, "everybody, 1 to 7 Aug"));
const whole = wholeGardenOf(plan, season);

test("every sowing stands on the days the feed has scheduled", () => {
  const sets = scheduled.flatMap(({ task, day }) => (task.sets ? [{ ...task.sets, day }] : []));
  expect(sets.length).toBeGreaterThan(10);
  for (const { planting, sowing, act, day } of sets) {
    const growing = whole.contexts.find(
      (each) => each.planting.key === planting && each.sowing === sowing,
    );
    expect(growing && anchorOf(growing, act)?.day, `${planting} ${sowing} ${act}`).toBe(day);
  }
});

test("its dry weeks are those the feed waters in", () => {
  const watered = scheduled.filter(({ task }) => task.practice === "water");
  expect(dryWeeksOf(whole).map(({ number }) => `week-${number}`)).toEqual(
    watered.map(({ task }) => task.step),
  );
});

test("nobody is about while everybody is away", () => {
  const inAugust = plan.away[0]?.from;
  if (inAugust === undefined) throw new Error("no absence");
  expect(whole.around(inAugust)).toBe(false);
});
