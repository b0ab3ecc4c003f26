import { describe, expect, test } from "vitest";
import type { Task } from "../../../src/engine/practices/all.ts";
import { sharedDaysOf } from "../../../src/engine/schedule/gather.ts";
import { inDays, taskOf, windowOf } from "./given.ts";

/** A job that can wait, due so many days on, with so many days to spare on either side. */
const job = (id: string, due: number, more: Partial<Task> = {}): Task =>
  taskOf({
    id,
    practice: "feed",
    harm: "when you can",
    rhythm: "session",
    window: windowOf(6, 9, "later", inDays(due)),
    ...more,
  });

const daysOf = (...tasks: readonly Task[]) =>
  Object.fromEntries([...sharedDaysOf(tasks)].map(([id, day]) => [id, day - inDays(0)]));

describe("like jobs that can wait", () => {
  test("are looked for on one day, that of the middle one", () => {
    expect(daysOf(job("a", 0), job("b", 3), job("c", 8))).toEqual({ a: 3, b: 3, c: 3 });
  });

  test("are the same whatever their order", () => {
    expect(daysOf(job("c", 8), job("a", 0), job("b", 3))).toEqual({ a: 3, b: 3, c: 3 });
  });

  test("stay each inside its own window", () => {
    const late = job("b", 10, { window: windowOf(2, 2, "later", inDays(10)) });
    expect(daysOf(job("a", 0), late)).toEqual({ a: 8, b: 8 });
    const none = job("b", 10, { window: windowOf(0, 0, "later", inDays(10)) });
    expect(daysOf(job("a", 0), none)).toEqual({});
  });

  test("are left apart where their due days are", () => {
    expect(daysOf(job("a", 0), job("b", 15))).toEqual({});
  });

  test("come within four days of each other where something is lost by waiting", () => {
    const soon = { harm: "this week" } as const;
    expect(daysOf(job("a", 0, soon), job("b", 4, soon))).toEqual({ a: 0, b: 0 });
    expect(daysOf(job("a", 0, soon), job("b", 5, soon))).toEqual({});
    expect(daysOf(job("a", 0, soon), job("b", 4))).toEqual({});
  });

  test("are left alone where there is no other like it", () => {
    expect(daysOf(job("a", 0), job("b", 2, { practice: "weed" }))).toEqual({});
    const verb = { title: { verb: "Feed again", object: "beets", where: null } };
    expect(daysOf(job("a", 0), job("b", 2, verb))).toEqual({});
  });
});

describe("jobs under one net", () => {
  const under = { under: "root-bed|leaf miners" } as const;

  test("are looked for on one day, whatever they are", () => {
    expect(daysOf(job("a", 0, under), job("b", 3, { ...under, practice: "weed" }))).toEqual({
      a: 0,
      b: 0,
    });
  });

  test("come before like jobs elsewhere, which are drawn to each other", () => {
    const days = daysOf(
      job("a", 0, under),
      job("b", 4, { ...under, practice: "weed" }),
      job("c", 6),
      job("d", 8),
    );
    expect(days).toEqual({ a: 0, b: 0, c: 6, d: 6 });
  });

  test("of another net are none of theirs", () => {
    const other = { practice: "weed", under: "leaf-bed|birds" } as const;
    expect(daysOf(job("a", 0, under), job("b", 3, other))).toEqual({});
  });
});

describe("nothing is drawn that", () => {
  const near = job("a", 0);
  test.each<[string, Partial<Task>]>([
    ["kills when it is late", { harm: "tonight" }],
    ["has an hour", { rhythm: "timed" }],
    ["is a warning", { rhythm: "warning" }],
    ["starts a clock", { sets: { planting: "p", sowing: 1, act: "start" } }],
    ["keeps to a round", { round: "every other Saturday" }],
    ["is bound to others already", { together: "x" }],
    ["has a day the gardener fixed", { certainty: "fixed" }],
  ])("%s", (_, more) => {
    expect(daysOf(near, job("b", 1, more))).toEqual({});
  });

  test("save what only ends a crop", () => {
    const end = { sets: { planting: "p", sowing: 1, act: "end" } } as const;
    expect(daysOf(near, job("b", 1, end))).toEqual({ a: 0, b: 0 });
  });
});
