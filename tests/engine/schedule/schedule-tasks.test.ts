import { describe, expect, test } from "vitest";
import { householdOnly, how, why } from "../../../src/engine/practices/sentence.ts";
import { HARM_WEIGHT, scheduleTasks } from "../../../src/engine/schedule/schedule-tasks.ts";
import type { PublishedState } from "../../../src/engine/schedule/scheduled-task.ts";
import {
  hours,
  IMRE,
  inDays,
  ODA,
  personOf,
  placingOf,
  SATURDAY,
  taskOf,
  windowOf,
} from "./given.ts";

const ids = (placed: readonly { readonly task: { readonly id: string } }[]) =>
  placed.map((each) => each.task.id);
const beside = (id: string, given: Parameters<typeof taskOf>[0] = {}) => taskOf({ id, ...given });

describe("tasks that share a day", () => {
  const away = [{ person: null, from: SATURDAY, to: inDays(8) }];
  const both = (latest: number) => [
    beside("a", { window: windowOf(0, 5), together: "a" }),
    beside("b", { window: windowOf(0, latest), together: "a" }),
  ];
  const days = (latest: number) =>
    scheduleTasks(both(latest), placingOf([], away)).map(({ day }) => day);

  test("wait past the end of one, where all are away till then and the other can", () => {
    expect(days(12)).toEqual([inDays(9), inDays(9)]);
  });

  test("stay on their day where none can wait so long", () => {
    expect(days(7)).toEqual([SATURDAY, SATURDAY]);
  });
});

describe("harm", () => {
  test("weighs ten times more from step to step", () => {
    expect(HARM_WEIGHT).toEqual({ tonight: 100, "this week": 10, "when you can": 1 });
  });

  test("decides who gets the hours: most to lose first", () => {
    const people = [personOf("imre", { gardens: [hours(6, 9, 10)] })];
    const window = windowOf(0, 14);
    const tasks = [
      beside("a", { window, minutes: 60, harm: "when you can" }),
      beside("b", { window, minutes: 60, harm: "tonight" }),
    ];
    const [a, b] = scheduleTasks(tasks, placingOf(people));
    expect([a?.day, b?.day]).toEqual([inDays(7), SATURDAY]);
  });
});

describe("where nobody is named", () => {
  test("every task falls on its due day and to everybody", () => {
    const [placed] = scheduleTasks([taskOf()], placingOf([]));
    expect(placed).toMatchObject({ day: SATURDAY, people: [], at: null, note: null });
  });

  test("what keeps to a round falls on its last day on or before its due day", () => {
    const dayFor = (days: number, before = 16) => {
      const window = windowOf(before, 3, "earlier", inDays(days));
      return scheduleTasks([taskOf({ round: "every other Saturday", window })], placingOf([]))[0]
        ?.day;
    };
    const days = [0, 1, 6, 7, 13, 14].map((each) => (dayFor(each) ?? 0) - SATURDAY);
    expect(new Set(days.map((each) => (each + 14) % 14)).size).toBe(1);
    expect(days).toEqual([...days].sort((a, b) => a - b));
    expect(days.every((each, i) => each <= ([0, 1, 6, 7, 13, 14][i] ?? 0))).toBe(true);
    expect((days[5] ?? 0) - (days[0] ?? 0)).toBe(14);
    expect(dayFor(4, 2)).toBe(inDays(4));
  });

  test("a rung has its hour all the same", () => {
    const timed = { run: "2027/tomato/1", part: "in", lasts: 60 } as const;
    const [placed] = scheduleTasks([taskOf({ rhythm: "timed", timed })], placingOf([]));
    expect(placed?.at).toEqual({ from: 660, to: 675 });
  });
});

describe("placing", () => {
  test("gives tasks in the order of their ids, whatever order they come in", () => {
    const tasks = [beside("b"), beside("a"), beside("c")];
    const placed = scheduleTasks(tasks, placingOf([IMRE, ODA]));
    expect(ids(placed)).toEqual(["a", "b", "c"]);
    expect(scheduleTasks(tasks.toReversed(), placingOf([IMRE, ODA]))).toEqual(placed);
  });

  test("counts work given against the hours of its day", () => {
    const load = new Map<string, number>();
    scheduleTasks([taskOf({ minutes: 45 })], placingOf([IMRE], [], { load }));
    expect([...load]).toEqual([[`imre|${SATURDAY}`, 45]]);
  });

  test("puts tasks that belong together on one day inside all their windows", () => {
    const tasks = [
      beside("a", { together: "a", window: windowOf(3, 3) }),
      beside("b", { together: "a", window: windowOf(0, 9, "later", inDays(2)) }),
    ];
    const days = scheduleTasks(tasks, placingOf([])).map((each) => each.day);
    expect(days).toEqual([inDays(2), inDays(2)]);
  });

  test("tells a warning to everybody, on the first of its days on which somebody is about", () => {
    const warned = (away: Parameters<typeof placingOf>[1]) =>
      scheduleTasks([taskOf({ rhythm: "warning" })], placingOf([IMRE], away))[0];
    expect(warned([])).toMatchObject({ day: inDays(-7), people: [], note: null });
    const until = (to: number) => [{ person: null, from: inDays(-9), to: inDays(to) }];
    expect(warned(until(2))).toMatchObject({ day: inDays(3), people: [] });
    expect(warned(until(30))).toMatchObject({ day: inDays(-7), people: [] });
  });

  test("tells nobody in particular on a day on which everybody is away, where another will do", () => {
    const away = [{ person: null, from: inDays(-1), to: inDays(2) }];
    const [placed] = scheduleTasks([taskOf({})], placingOf([], away));
    expect(placed?.day).toBe(inDays(-2));
    const [fixed] = scheduleTasks([taskOf({ window: windowOf(0, 0) })], placingOf([], away));
    expect(fixed?.day).toBe(inDays(0));
  });

  test("says beside a rung that nobody is home, instead of where to put it", () => {
    const timed = { run: "2027/tomato/4", part: "out", lasts: 240 } as const;
    const task = taskOf({
      rhythm: "timed",
      timed,
      window: windowOf(0, 0, "later", inDays(2)),
      say: [how("Out for four hours."), why("They go out soon.")],
    });
    const [placed] = scheduleTasks([task], placingOf([IMRE]));
    expect(JSON.stringify(placed?.task.say[0])).toMatch(/full shade/);
    expect(placed?.task.say[1]).toEqual(why("They go out soon."));
  });

  test("tells the usual day where a usual year has one", () => {
    const usual = { "2027/beet/thin/1": inDays(-9) };
    expect(scheduleTasks([taskOf()], placingOf([], [], { baseline: usual }))[0]?.usual).toBe(
      inDays(-9),
    );
    expect(scheduleTasks([taskOf()], placingOf([]))[0]?.usual).toBeNull();
  });
});

describe("what is done", () => {
  const done = new Map([["2027/beet/thin/1", { day: inDays(-3), by: "oda" }]]);

  test("stands on the day it was done, by whom", () => {
    const [placed] = scheduleTasks([taskOf()], placingOf([IMRE, ODA], [], { done }));
    expect(placed).toMatchObject({ day: inDays(-3), people: ["oda"], done: { by: "oda" } });
    expect(placed?.task.certainty).toBe("done");
  });

  test("takes nobody's hours", () => {
    const load = new Map<string, number>();
    scheduleTasks([taskOf()], placingOf([IMRE, ODA], [], { done, load }));
    expect(load.size).toBe(0);
  });
});

describe("what was told", () => {
  const told = (days: number, given = {}): PublishedState => ({
    "2027/beet/thin/1": {
      day: inDays(days),
      window: windowOf(9, 9),
      people: [],
      days: [],
      lead: false,
      note: null,
      ...given,
    },
  });
  const placed = (standing: PublishedState, task = taskOf(), placing = placingOf([])) =>
    scheduleTasks([task], { ...placing, publishedState: standing })[0];

  test("stays, day and window, while the new day is near", () => {
    expect(placed(told(2))).toMatchObject({ day: inDays(2), window: windowOf(9, 9) });
  });

  test("goes, day and window, when the due day has moved by three days", () => {
    const window = windowOf(7, 7, "later", inDays(3));
    expect(placed(told(0), taskOf({ window }))).toMatchObject({ day: inDays(3), window });
  });

  test("stays where only what stands beside it has changed", () => {
    expect(placed(told(6))).toMatchObject({ day: inDays(6), window: windowOf(9, 9) });
  });

  test("stays with its note", () => {
    const note = householdOnly(why("Oda is away."));
    expect(placed(told(1, { note }))?.note).toEqual(note);
  });

  test("keeps the days its sentences named", () => {
    const task = taskOf({ say: [why("Up on ", { day: inDays(-20) }, ".")] });
    const kept = placed(told(1, { days: [inDays(-21)] }), task);
    expect(kept?.task.say[0]?.pieces[1]).toEqual({ day: inDays(-21) });
  });

  test("stays with the person it was told to", () => {
    const household = placingOf([IMRE, ODA]);
    expect(placed(told(1, { people: ["oda"] }), taskOf(), household)).toMatchObject({
      day: inDays(1),
      people: ["oda"],
    });
  });

  test("goes when that person has gone away", () => {
    const away = [{ person: "oda", from: inDays(1), to: inDays(1) }];
    const household = placingOf([IMRE, ODA], away);
    expect(placed(told(1, { people: ["oda"] }), taskOf(), household)).toMatchObject({
      day: SATURDAY,
      people: ["imre"],
    });
  });

  test("goes when that person is no longer in the plan", () => {
    const household = placingOf([IMRE]);
    expect(placed(told(1, { people: ["oda"] }), taskOf(), household)?.people).toEqual(["imre"]);
  });

  test("to nobody goes when there are people", () => {
    expect(placed(told(1), taskOf(), placingOf([IMRE]))?.people).toEqual(["imre"]);
  });

  test("of placing itself changes nothing", () => {
    const tasks = [beside("a"), beside("b", { window: windowOf(3, 3, "later", inDays(2)) })];
    const first = scheduleTasks(tasks, placingOf([IMRE, ODA]));
    const standing = Object.fromEntries(
      first.map(({ task, day, window, people, note }) => [
        task.id,
        { day, window, people, days: [], lead: false, note },
      ]),
    );
    expect(scheduleTasks(tasks, placingOf([IMRE, ODA], [], { publishedState: standing }))).toEqual(
      first,
    );
  });
});
