import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { changesOf } from "../../../src/views/events/changes.ts";
import { inDays, placedOf } from "../../engine/schedule/given.ts";

const plan = { year: 2027, beds: [], plantings: [] } as unknown as Plan;
const since = inDays(0);

const said = (before: Parameters<typeof changesOf>[0]["before"], now: typeof before) =>
  changesOf({ before, now, diaryLines: [], since }, [plan]).map((change) => change.text);

describe("what became of tasks between two tellings", () => {
  const was = placedOf({ day: inDays(3) });

  test("is nothing where all stayed, and nothing of days before", () => {
    expect(said([was], [was])).toEqual([]);
    const past = placedOf({ day: plus(since, -1) });
    expect(said([past], [])).toEqual([]);
  });

  test("is by how many days a task moved, that it was done, that it is new or no longer", () => {
    expect(said([was], [placedOf({ day: inDays(4) })])[0]).toMatch(/\(1 day later\)$/);
    expect(said([was], [placedOf({ day: inDays(1) })])[0]).toMatch(/\(2 days sooner\)$/);
    const done = placedOf({ day: inDays(1), done: { day: inDays(1), by: null } });
    expect(said([was], [done])[0]).toMatch(/: done \d+ May$/);
    expect(said([], [was])[0]).toMatch(/: new, \d+ May$/);
    expect(said([was], [])[0]).toMatch(/: no longer, was \d+ May$/);
  });

  test("names the task and, where no line is behind it, what it makes room for", () => {
    const [change] = changesOf(
      { before: [was], now: [placedOf({ day: inDays(4) })], diaryLines: [], since },
      [plan],
    );
    expect(change?.id).toBe(was.task.id);
    expect(change?.why).toEqual(["to fit the jobs beside it"]);
  });
});
