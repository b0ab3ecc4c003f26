import { describe, expect, test } from "vitest";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import {
  hasSecrets,
  isNoRung,
  wholeDayEvents,
  wholeDaysOf,
} from "../../../src/views/events/whole-days.ts";
import { inDays, placedOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const job = (name: string, given: Partial<ScheduledTask> = {}, task = {}) =>
  placedOf(given, {
    id: `2027/${name}/1`,
    practice: name as "thin",
    title: { verb: name, object: "beets", where: null },
    ...task,
  });
const out = (people: readonly string[]) =>
  job("out", { at: { from: 600, to: 615 }, people }, { rhythm: "timed" });
const told = (...scheduled: readonly ScheduledTask[]) =>
  wholeDaysOf(scheduled, {}).flatMap((day) => wholeDayEvents(day, PLAN));
const inSet = (set: string, ...scheduled: readonly ScheduledTask[]) =>
  told(...scheduled).filter((event) => event.set === set);

describe("jobs of one day outside a session", () => {
  const [thin, weed] = [job("thin", { people: ["imre"] }), job("weed", { people: ["imre"] })];

  test("are one event for their person, all day", () => {
    expect(told(thin, weed)).toMatchObject([
      {
        key: "imre/2027-05-08/day",
        set: "sessions",
        tasks: ["2027/thin/1", "2027/weed/1"],
        people: ["imre"],
        when: { kind: "all day" },
        readerText: "",
      },
    ]);
  });

  test("are everybody's where nobody is named", () => {
    expect(told(job("thin"), job("weed"))).toMatchObject([
      { key: "everybody/2027-05-08/day", people: [] },
    ]);
  });

  test("stay as they are where there is one, where all are alike, or on other days", () => {
    expect(told(thin)).toEqual([]);
    expect(told(thin, job("thin", { people: ["imre"] }, { id: "2027/leek/1" }))).toEqual([]);
    expect(told(thin, job("weed", { people: ["imre"], day: inDays(1) }))).toEqual([]);
  });

  test("of two people are each their own, and what either may do is with one of them", () => {
    const either = job("water", { people: ["imre", "oda"] }, { rhythm: "daily" });
    expect(told(thin, job("weed", { people: ["oda"] }), either)).toMatchObject([
      { key: "imre/2027-05-08/day", people: ["imre"], tasks: ["2027/thin/1", "2027/water/1"] },
    ]);
  });

  test("are one visit though some are done", () => {
    const done = { day: inDays(0), by: null };
    expect(told(thin, job("weed", { people: ["imre"], done }))).toHaveLength(1);
  });

  test("leave alone a warning, and what must not wait a night", () => {
    expect(told(thin, job("weed", { people: ["imre"] }, { harm: "tonight" }))).toEqual([]);
    expect(told(thin, job("weed", { people: ["imre"] }, { rhythm: "warning" }))).toEqual([]);
  });
});

describe("jobs of a day on which plants harden off", () => {
  const thin = job("thin", { people: ["imre"] });

  test("are told with it to those who carry, and it stands alone in the tasks set", () => {
    const [alone] = inSet("tasks", out(["imre", "oda"]), thin);
    const [whole] = inSet("sessions", out(["imre", "oda"]), thin);
    expect(alone).toMatchObject({ key: "2027/out/1", tasks: ["2027/out/1"] });
    expect(whole).toMatchObject({
      key: "2027/out/1",
      tasks: ["2027/out/1", "2027/thin/1"],
      people: ["imre", "oda"],
      when: { kind: "timed" },
      readerText: "",
    });
    expect(whole?.text).toContain("For Imre:");
    expect(whole?.title).toMatch(/; thin beets$/);
  });

  test("stand apart for somebody who carries nothing", () => {
    expect(told(out(["oda"]), thin)).toMatchObject([{ set: "both", tasks: ["2027/out/1"] }]);
  });
});

test("a rung is carried out or brought in at an hour", () => {
  expect([isNoRung(out([])), isNoRung(job("thin"))]).toEqual([false, true]);
});

test("a text has secrets where it says who did it", () => {
  expect(hasSecrets(job("thin"))).toBe(false);
  expect(hasSecrets(job("thin", { done: { day: inDays(0), by: "imre" } }))).toBe(true);
});
