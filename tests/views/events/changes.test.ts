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

describe("a measurement behind a change", () => {
  const line = (day: number, text: string, observation: object) =>
    ({
      line: { day: inDays(day), text },
      observations: [{ kind: "measured", day: inDays(day), bed: null, ...observation }],
    }) as unknown as Parameters<typeof changesOf>[0]["diaryLines"][number];
  const rain = line(1, "an inch of rain", { what: "rain" });
  const soil = line(1, "soil 50 °F", { what: "soil" });
  const why = (given: object, ...lines: readonly (typeof rain)[]) => {
    const window = (due: number) => ({
      window: {
        earliest: inDays(due),
        due: inDays(due),
        latest: inDays(due),
        better: "later" as const,
      },
    });
    const was = placedOf({ day: inDays(3) }, { ...window(3), ...given });
    const now = placedOf({ day: inDays(6) }, { ...window(6), ...given });
    const [change] = changesOf({ before: [was], now: [now], diaryLines: lines, since }, [plan]);
    return change?.why.map((each) => each.replace(/^.*: /, ""));
  };

  test("is rain for watering alone", () => {
    expect(why({ basis: ["soil"] }, rain)).toEqual(["to fit the jobs beside it"]);
    expect(why({ practice: "water" }, rain)).toEqual(["an inch of rain"]);
  });

  test("is the soil's warmth for what waits for it", () => {
    expect(why({ basis: ["soil"] }, rain, soil)).toEqual(["soil 50 °F"]);
  });

  test("is nothing that was measured only after the task", () => {
    const later = line(40, "soil 60 °F", { what: "soil" });
    expect(why({ basis: ["soil"] }, later)).toEqual(["to fit the jobs beside it"]);
  });
});
