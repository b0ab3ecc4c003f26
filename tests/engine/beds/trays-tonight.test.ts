import { expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { hardeningSteps } from "../../../src/engine/beds/hardening-steps.ts";
import { trayPlace, trayTonight } from "../../../src/engine/beds/trays-tonight.ts";
import { tasksBySubject } from "../../../src/engine/schedule/planting-tasks.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { ALONE, planOf, tellOf } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";

const { scheduled: placed } = tellOf(ALONE, { on: "2027-01-01" });
const first = placed.find(
  ({ task }) => task.id === "2027/tomato/harden-off/out-1",
) as ScheduledTask;
const out = placed.find(({ task }) => task.id === "2027/tomato/set-out/1") as ScheduledTask;
const { crop, planting } = growingOf(ALONE, "tomato");
const { site } = planOf(ALONE);
const stepsOf = (planting: string, scheduled = placed) =>
  hardeningSteps(tasksBySubject(scheduled).get(planting) ?? []);
const tray = (place: Parameters<typeof trayTonight>[1], lowF: number, there = site) =>
  trayTonight({ crop, planting, name: "tomatoes" }, place, { lowC: celsius(lowF), site: there })
    .need;

test("trays are indoors, out by day, and out for their last nights, by the steps as placed", () => {
  const place = (day: typeof first.day) => trayPlace(stepsOf("2027/tomato"), day);
  expect(place(plus(first.day, -1))).toBe("indoors");
  expect(place(first.day)).toBe("out by day");
  expect(place(plus(out.day, -1))).toBe("out overnight");
  expect(trayPlace(stepsOf("2027/beet"), first.day)).toBe("indoors");
});

test("hardy ones stay out from their step on", () => {
  const text = ALONE.replace(
    "      - beet: 2 rows\n",
    "      - cabbage: 4 plants, from seed indoors\n",
  );
  const all = tellOf(text, { on: "2027-01-01" }).scheduled;
  const steps = stepsOf("2027/cabbage", all);
  const day = (step: string) =>
    (all.find(({ task }) => task.id === `2027/cabbage/harden-off/${step}`) as ScheduledTask).day;
  expect(trayPlace(steps, plus(day("days"), 1))).toBe("out by day");
  expect(trayPlace(steps, plus(day("nights"), 1))).toBe("out overnight");
});

test("trays out overnight stay out only above their floor, and those out by day always come in", () => {
  expect([tray("out overnight", 50), tray("out overnight", 49)]).toEqual(["leave", "bring in"]);
  expect([tray("out by day", 60), tray("out by day", 20)]).toEqual(["bring in", "bring in"]);
});

test("trays in a greenhouse without heat go into the house on a night too cold in it", () => {
  const unheated = {
    ...site,
    greenhouse: site.greenhouse && { ...site.greenhouse, keptAbove: null },
  };
  expect([
    tray("indoors", 20),
    tray("indoors", 34, unheated),
    tray("indoors", 33, unheated),
  ]).toEqual(["leave", "leave", "into the house"]);
  expect(tray("indoors", 20, { ...site, greenhouse: null })).toBe("leave");
});
