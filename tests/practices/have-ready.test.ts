import { describe, expect, test } from "vitest";
import { weekdayOf } from "../../src/days/day.ts";
import { HAVE_FOR_BEDS, haveReady } from "../../src/practices/have-ready.ts";
import { QUARRY, tellOf } from "../gardens.ts";
import { growingOf } from "../growth/growing.ts";
import { ending, planWith, toldWith, wordsOf } from "./garden.ts";
import { said, titles, windows } from "./told.ts";

const carrots = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03" } });
const tomatoes = growingOf(QUARRY, "tomato", {
  acts: { start: "2027-04-09", "set out": "2027-05-21" },
});
const step = (growing: typeof carrots, name: string) =>
  haveReady(growing).filter((task) => task.step === name);

describe("what must be at hand", () => {
  test("is looked for a week before, the day before at the latest", () => {
    expect(windows(step(carrots, "board"))).toEqual(["board 04-17 04-26 05-02"]);
    expect(windows(step(tomatoes, "set-out"))).toEqual(["set-out 05-05 05-14 05-20"]);
  });

  test("stands on the Saturday on or before that", () => {
    const ready = toldWith(["pea: 1 row", "tomato: 6 plants, bought"]).filter(
      ({ task }) => task.weekday !== null,
    );
    expect(ready.length).toBeGreaterThan(3);
    expect(ready.every(({ day }) => weekdayOf(day) === 6)).toBe(true);
    expect(ready.every(({ day, task: { window: w } }) => w.due - day >= 0 && w.due - day < 7)).toBe(
      true,
    );
  });

  test("is told with its crop, its things and the day that wants them", () => {
    const [task] = step(tomatoes, "set-out");
    expect(titles(step(tomatoes, "set-out"))).toEqual(["Have ready for tomatoes"]);
    expect(said(task)).toContain("how: Stakes and ties: wanted about 21 May.");
    expect(task?.brings).toEqual(["stakes and ties"]);
  });

  test("of several crops on one Saturday is one event", () => {
    const { events } = tellOf(planWith(["cabbage: 6 plants, bought", "pea: 1 row"]), {
      on: "2027-01-01",
    });
    const ready = events.filter(({ title }) => title.startsWith("Have ready for"));
    expect(ready.some(({ title }) => /cabbages/.test(title) && /peas/.test(title))).toBe(true);
  });

  test("is anybody's, when there is time", () => {
    const all = [carrots, tomatoes].flatMap(haveReady);
    expect(all.every(({ harm, rhythm }) => harm === "when you can" && rhythm === "daily")).toBe(
      true,
    );
  });
});

test("compost and a cover are named before their bed is closed", () => {
  const placed = toldWith(["beet: 1 row"]);
  const ready = ending(placed, "/bed/long-bed/things-to-have/close-the-bed");
  expect(ready.task.practice).toBe(HAVE_FOR_BEDS.name);
  expect(wordsOf(ready)).toContain("Compost; leaves or straw");
  expect(weekdayOf(ready.day)).toBe(6);
  expect(ready.day).toBeLessThan(ending(placed, "/close-the-bed/1").day);
});
