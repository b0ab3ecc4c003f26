import { describe, expect, test } from "vitest";
import type { Task } from "../../src/engine/practices/all.ts";
import type { Plan } from "../../src/garden/model/plan.ts";
import { ALONE, planOf } from "../gardens.ts";
import { once } from "../once.ts";
import { dawn, toldAt } from "./feeds.ts";
import { HALF_A_YEAR, mirrored } from "./mirrored.ts";

/** In a zone whose part of the world no latitude changes, so that south lives what lives north. */
const HERE = ALONE.replace("America/Denver", "Europe/Zurich");

const NEW_CROPS = HERE.replace(
  /beds:[\s\S]*/,
  `beds:
  Long bed:
    is: 24 x 4 ft
    crops:
      - radish: 2 rows, every 10 days
      - pea: 2 rows
      - spinach: 1 row, every 14 days, 3 times
      - turnip: 1 row
      - bush bean: 1 row, every 14 days, not before 1 Jun
      - cabbage: 8 plants
      - parsley: 1 row
      - parsnip: 1 row
  Warm bed:
    is: 12 x 4 ft
    warmed by: film
    crops:
      - cucumber: 4 plants
      - sweet corn: 3 rows
      - tomato: 6 plants, bought
`,
);

/** A long season far from the poles: frost in three months, none hard. */
const LONG = NEW_CROPS.replace("20 Apr, 6 May, 21 May", "1 Feb, 20 Feb, 12 Mar")
  .replace("about 2 Oct", "8 Nov, 28 Nov, 20 Dec")
  .replace("latitude: 46.6", "latitude: 33")
  .replace(/low: .*/, "low: [36, 39, 44, 50, 58, 66, 70, 69, 64, 53, 43, 37]")
  .replace(/high: .*/, "high: [55, 59, 67, 74, 81, 87, 90, 89, 84, 75, 65, 57]");

/** Nothing known but the frost dates. */
const ROUGH = HERE.replace(/ {2}weather:\n.*\n.*\n/, "");

/** No night of frost, and no winter. */
const FROSTLESS = LONG.replace(/(last|first) frost: .*/g, "$1 frost: none").replace(
  "latitude: 33",
  "latitude: 21",
);

const GARDENS = { HERE, NEW_CROPS, LONG, ROUGH, FROSTLESS } as const;

/** Crops that the length of the day bears on. */
const BY_DAY_LENGTH = ["spinach"];

/** Days that a task may lie from its mirrored day. */
function allowedFor({ crop }: Task): number {
  return crop !== null && BY_DAY_LENGTH.includes(crop) ? 5 : 2;
}

/** Each task on its day by its id, weeks of the year and days moved by so many weeks. */
function placedOf(plan: Plan, weeks: number) {
  const { scheduled: placed } = toldAt({ id: "quarry-lane", plans: [plan] }, dawn("2027-01-01"));
  const later = (id: string) =>
    id.replace(/week-(\d+)$/, (_, week) => `week-${Number(week) + weeks}`);
  return new Map(
    placed.map(({ task, day }) => [later(task.id), { task, day: day + 7 * weeks, weeks }] as const),
  );
}

/** The day it is on; of what begins nothing its due day, since like jobs are drawn together. */
const dayOf = ({ task, day, weeks }: { task: Task; day: number; weeks: number }) =>
  task.rhythm === "session" && task.sets?.act !== "start" ? task.window.due + 7 * weeks : day;

/** Ids of tasks, watering or the rest. */
const idsOf = (placed: ReturnType<typeof placedOf>, watering: boolean) =>
  [...placed.keys()].filter((id) => id.includes("/water/") === watering).sort();

describe.each(Object.entries(GARDENS))("the garden %s as far south", (_, text) => {
  const plan = planOf(text);
  const north = once(() => placedOf(plan, HALF_A_YEAR / 7));
  const south = once(() => placedOf(mirrored(plan), 0));

  test("has the same tasks", () => {
    expect(idsOf(north(), false).length).toBeGreaterThan(20);
    expect(idsOf(south(), false)).toEqual(idsOf(north(), false));
  });

  test("has them half a year later, within two days, five where day length decides", () => {
    const off = idsOf(north(), false).flatMap((id) => {
      const [here, there] = [north().get(id), south().get(id)];
      if (!here || !there) return [id];
      const away = dayOf(there) - dayOf(here);
      return Math.abs(away) <= allowedFor(here.task) ? [] : [`${id} ${away}`];
    });
    expect(off).toEqual([]);
  });

  test("wants water in the same weeks, but for a few: the sun is nearer in January", () => {
    const [here, there] = [idsOf(north(), true), idsOf(south(), true)];
    const alone = [...here, ...there].filter((id) => !here.includes(id) || !there.includes(id));
    expect(here.length).toBeGreaterThan(10);
    expect(alone.length).toBeLessThanOrEqual(3);
  });
});
