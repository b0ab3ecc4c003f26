import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { how, sign } from "../../../src/engine/practices/sentence.ts";
import {
  CALM_DAYS,
  calmOf,
  daysNamed,
  isStillValid,
  publishedStateOf,
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
  const far = plus(SATURDAY, -40);
  const near = plus(SATURDAY, -8);
  const dueIn = (days: number, before = 9) =>
    taskOf({ window: windowOf(before, 9, "later", inDays(days)) });

  test("what is far ahead moves by a quarter of the time there is, a fortnight at most", () => {
    const calm = [near, far, plus(SATURDAY, -200)].map((asOf) => calmOf(SATURDAY, asOf));
    expect(calm.map(({ later }) => later)).toEqual([3, 10, 14]);
    expect(calm.map(({ earlier }) => earlier)).toEqual([7, 10, 14]);
    expect(calmOf(SATURDAY, null)).toEqual({ later: 3, earlier: 3 });
    expect(isStillValid(TOLD, dueIn(8), far)).toBe(true);
    expect(isStillValid(TOLD, dueIn(15), far)).toBe(false);
  });

  test("what is near is put off as ever, and brought forward where that gains a week", () => {
    expect([2, 3].map((days) => isStillValid(TOLD, dueIn(days), near))).toEqual([true, false]);
    expect([-6, -7].map((days) => isStillValid(TOLD, dueIn(days), near))).toEqual([true, false]);
  });

  test("what is near is never published outside its window", () => {
    expect(isStillValid(TOLD, dueIn(2, 1), near)).toBe(false);
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
