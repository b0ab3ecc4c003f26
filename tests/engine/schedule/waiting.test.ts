import { describe, expect, test } from "vitest";
import type { Task } from "../../../src/engine/practices/all.ts";
import { tasksThatMustWait } from "../../../src/engine/schedule/waiting.ts";
import { placedOf, windowOf } from "./given.ts";

const job = (id: string, minutes: number, more: Partial<Task> = {}) =>
  placedOf({}, { id, minutes, harm: "this week", window: windowOf(1, 5), ...more });
const waiting = (minutes: number, ...jobs: readonly ReturnType<typeof job>[]) =>
  tasksThatMustWait(jobs, minutes).map(({ task }) => task.id);

describe("what somebody's hours do not hold", () => {
  test("is nothing where all fits", () => {
    expect(waiting(60, job("a", 20), job("b", 40))).toEqual([]);
  });

  test("is what harms least by waiting", () => {
    const weed = job("weed", 20, { harm: "when you can" });
    const board = job("board", 30, { harm: "tonight" });
    expect(waiting(60, weed, job("thin", 30), board)).toEqual(["weed"]);
    expect(waiting(30, weed, job("thin", 30), board)).toEqual(["thin", "weed"]);
  });

  test("is what only tends before what sows and sets out", () => {
    const sets = { planting: "p", sowing: 1, act: "start" } as const;
    const sow = job("sow", 30, { sets, window: windowOf(0, 14) });
    expect(waiting(40, job("thin", 20), sow)).toEqual(["thin"]);
  });

  test("is what can wait longer, and still takes a short job along that fits", () => {
    const soon = job("soon", 40, { window: windowOf(1, 2) });
    expect(waiting(60, job("late", 30), soon, job("short", 15))).toEqual(["late"]);
  });

  test("is never all of it: the first is begun, however long", () => {
    expect(waiting(10, job("a", 60), job("b", 60))).toEqual(["b"]);
  });
});
