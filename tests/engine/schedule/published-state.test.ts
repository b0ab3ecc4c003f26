import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { how, sign } from "../../../src/engine/practices/sentence.ts";
import {
  CALM_DAYS,
  daysNamed,
  isStillValid,
  publishedStateOf,
  putOffWindow,
  withPublishedDays,
} from "../../../src/engine/schedule/published-state.ts";
import type { PublishedTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { inDays, placedOf, SATURDAY, taskOf, windowOf } from "./given.ts";

const TOLD: PublishedTask = {
  day: SATURDAY,
  window: windowOf(7, 7),
  people: [],
  days: [],
  lead: false,
  note: null,
};

describe("what was told stands", () => {
  const dueIn = (days: number, before = 7, later = 7) =>
    taskOf({ window: windowOf(before, later, "later", inDays(days)) });

  test("while the due day has moved by less than three days", () => {
    expect(CALM_DAYS).toBe(3);
    expect(isStillValid(TOLD, taskOf(), null)).toBe(true);
    expect(isStillValid(TOLD, dueIn(2), null)).toBe(true);
    expect(isStillValid(TOLD, dueIn(-2), null)).toBe(true);
  });

  test("no longer once it has moved by three", () => {
    expect(isStillValid(TOLD, dueIn(3), null)).toBe(false);
    expect(isStillValid(TOLD, dueIn(-3), null)).toBe(false);
  });

  test("no longer once the old day lies before the task's window", () => {
    expect(isStillValid(TOLD, dueIn(1, 0, 5), null)).toBe(false);
  });

  test("no longer once the old day lies behind the task's window", () => {
    expect(isStillValid(TOLD, dueIn(-1, 5, 0), null)).toBe(false);
  });

  test("wherever in the window it was told", () => {
    expect(isStillValid({ ...TOLD, day: inDays(6) }, taskOf(), null)).toBe(true);
  });

  test("on the very first and the very last day of the window", () => {
    expect(isStillValid(TOLD, taskOf({ window: windowOf(0, 3) }), null)).toBe(true);
    expect(isStillValid(TOLD, taskOf({ window: windowOf(3, 0) }), null)).toBe(true);
  });
});

describe("where the weather is known", () => {
  const [far, near] = [plus(SATURDAY, -40), plus(SATURDAY, -8)];
  const dueIn = (days: number, before = 0) =>
    taskOf({ window: windowOf(before, 9, "later", inDays(days)) });

  test("what is far ahead may be off by a quarter of the time there is, a fortnight at most", () => {
    expect([8, 12].map((days) => isStillValid(TOLD, dueIn(days), far))).toEqual([true, false]);
    const years = plus(SATURDAY, -300);
    expect([11, 12].map((days) => isStillValid(TOLD, dueIn(days), years))).toEqual([true, false]);
  });

  test("what is near stays while it is inside its window, and is brought forward where that gains ten days", () => {
    expect([0, 1].map((days) => isStillValid(TOLD, dueIn(days), near))).toEqual([true, false]);
    expect(isStillValid(TOLD, dueIn(1, 1), near)).toBe(true);
    expect([-9, -10].map((days) => isStillValid(TOLD, dueIn(days), near))).toEqual([true, false]);
  });

  test("what has to wait is put off a few days more than it must, inside its window", () => {
    const { window } = dueIn(3);
    expect(putOffWindow(TOLD, window, near).due).toBe(inDays(7));
    const short = { ...window, latest: inDays(4) };
    expect(putOffWindow(TOLD, short, near).due).toBe(inDays(4));
  });

  test("what was not published, comes no later, or knows no weather keeps its window", () => {
    const { window } = dueIn(3);
    const { window: earlier } = dueIn(-1);
    expect(putOffWindow(undefined, window, near)).toEqual(window);
    expect(putOffWindow(TOLD, window, null)).toEqual(window);
    expect(putOffWindow(TOLD, earlier, near)).toEqual(earlier);
  });
});

describe("days that sentences name", () => {
  const say = [
    how("Up about ", { day: SATURDAY }, ", sow again by ", { day: inDays(9) }, "."),
    sign("Green shows."),
  ];

  test("are found in order", () => {
    expect(daysNamed(say)).toEqual([SATURDAY, inDays(9)]);
  });

  test("are none in sentences without a day", () => {
    expect(daysNamed([sign("Green shows.")])).toEqual([]);
  });

  test("keep what was told where each has moved by less than three days", () => {
    const kept = withPublishedDays(say, [inDays(2), inDays(8)]);
    expect(daysNamed(kept)).toEqual([inDays(2), inDays(8)]);
  });

  test("are all their own again where one has moved by three", () => {
    expect(withPublishedDays(say, [inDays(3), inDays(9)])).toEqual(say);
  });

  test("are their own where fewer were told before", () => {
    expect(withPublishedDays(say, [SATURDAY])).toEqual(say);
  });

  test("keep their weekday where they are told with one", () => {
    const [kept] = withPublishedDays([how({ day: SATURDAY, weekday: true }, ".")], [inDays(1)]);
    expect(kept?.pieces[0]).toEqual({ day: inDays(1), weekday: true });
  });
});

test("what is kept of a telling is each task's day, window, people, days it names and whether it led", () => {
  const placed = placedOf(
    { people: ["oda"] },
    { say: [how("Up about ", { day: inDays(3) }, ".")] },
  );
  const kept = publishedStateOf([placed], new Set(["2027/beet/thin/1"]));
  expect(kept["2027/beet/thin/1"]).toEqual({
    day: SATURDAY,
    window: windowOf(7, 7),
    people: ["oda"],
    days: [inDays(3)],
    lead: true,
    note: null,
  });
  expect(publishedStateOf([placed], new Set())["2027/beet/thin/1"]?.lead).toBe(false);
});
