import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/index.ts";
import type { Task } from "../../../src/engine/practices/all.ts";
import { CALM_DAYS, movedWindow, standingOf } from "../../../src/engine/schedule/calm.ts";
import type { PublishedTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { inDays, SATURDAY, taskOf, windowOf } from "./given.ts";

const TOLD: PublishedTask = {
  day: SATURDAY,
  window: windowOf(7, 7),
  people: [],
  days: [],
  lead: false,
  note: null,
};
const stays = (published: PublishedTask, task: Task, asOf: Day | null) =>
  standingOf(published, task, asOf).stays;

describe("what was told stands", () => {
  const dueIn = (days: number, before = 7, later = 7) =>
    taskOf({ window: windowOf(before, later, "later", inDays(days)) });

  test("while the due day has moved by less than three days", () => {
    expect(CALM_DAYS).toBe(3);
    expect(stays(TOLD, taskOf(), null)).toBe(true);
    expect(stays(TOLD, dueIn(2), null)).toBe(true);
    expect(stays(TOLD, dueIn(-2), null)).toBe(true);
  });

  test("no longer once it has moved by three", () => {
    expect(stays(TOLD, dueIn(3), null)).toBe(false);
    expect(stays(TOLD, dueIn(-3), null)).toBe(false);
  });

  test("no longer once the old day lies before the task's window", () => {
    expect(stays(TOLD, dueIn(1, 0, 5), null)).toBe(false);
  });

  test("no longer once the old day lies behind the task's window", () => {
    expect(stays(TOLD, dueIn(-1, 5, 0), null)).toBe(false);
  });

  test("wherever in the window it was told", () => {
    expect(stays({ ...TOLD, day: inDays(6) }, taskOf(), null)).toBe(true);
  });

  test("on the very first and the very last day of the window", () => {
    expect(stays(TOLD, taskOf({ window: windowOf(0, 3) }), null)).toBe(true);
    expect(stays(TOLD, taskOf({ window: windowOf(3, 0) }), null)).toBe(true);
  });
});

describe("where the weather is known", () => {
  const [far, near] = [plus(SATURDAY, -40), plus(SATURDAY, -8)];
  const dueIn = (days: number, before = 0) =>
    taskOf({ window: windowOf(before, 9, "later", inDays(days)) });
  const calls = (task: Task, asOf: Day, published = TOLD) =>
    standingOf(published, task, asOf).calledSince !== null;

  test("what is far ahead may be off by a quarter of the time there is, a fortnight at most", () => {
    expect([8, 12].map((days) => calls(dueIn(days), far))).toEqual([false, true]);
    const years = plus(SATURDAY, -300);
    expect([11, 12].map((days) => calls(dueIn(days), years))).toEqual([false, true]);
  });

  test("what is near is called elsewhere outside its window, or where that gains ten days", () => {
    expect([0, 1].map((days) => calls(dueIn(days), near))).toEqual([false, true]);
    expect(calls(dueIn(1, 1), near)).toBe(false);
    expect([-9, -10].map((days) => calls(dueIn(days), near))).toEqual([false, true]);
  });

  test("a day moves once the weather has called for another for three days, and not if it takes that back", () => {
    const first = standingOf(TOLD, dueIn(1), near);
    expect(first).toEqual({ stays: true, calledSince: near });
    const later = (days: number, task = dueIn(1)) =>
      standingOf({ ...TOLD, calledSince: near }, task, plus(near, days));
    expect([1, 2].map((days) => later(days).stays)).toEqual([true, true]);
    expect(later(3).stays).toBe(false);
    expect(later(2, dueIn(0))).toEqual({ stays: true, calledSince: null });
  });

  test("a day within three that would come too early moves at once", () => {
    const at = (days: number) => standingOf(TOLD, dueIn(1), inDays(-days)).stays;
    expect([4, 3, 0].map(at)).toEqual([true, false, false]);
  });

  test("a day that has passed stays where it was told", () => {
    expect(standingOf(TOLD, dueIn(30), inDays(1))).toEqual({ stays: true, calledSince: null });
  });

  test("what the gardener saw or set moves as ever", () => {
    const seen = { ...dueIn(1), basis: ["soil", "seen"] } as const;
    expect(standingOf(TOLD, seen, near).stays).toBe(false);
    const given = { ...dueIn(3, 9), basis: ["given"] } as const;
    expect(standingOf(TOLD, given, inDays(1)).stays).toBe(false);
  });

  test("what has to wait is put off a few days more than it must, inside its window", () => {
    const { window } = dueIn(3);
    expect(movedWindow(TOLD, taskOf({ window }), near).due).toBe(inDays(7));
    const short = { ...window, latest: inDays(4) };
    expect(movedWindow(TOLD, taskOf({ window: short }), near).due).toBe(inDays(4));
  });

  test("what was still to come does not move into days that are over", () => {
    const { window } = dueIn(-20, 2);
    expect(movedWindow(TOLD, taskOf({ window }), near)).toMatchObject({
      earliest: near,
      due: near,
      latest: near,
    });
  });

  test("what was not published, or knows no weather, keeps its window", () => {
    const { window } = dueIn(3);
    expect(movedWindow(undefined, taskOf({ window }), near)).toEqual(window);
    expect(movedWindow(TOLD, taskOf({ window }), null)).toEqual(window);
  });
});
