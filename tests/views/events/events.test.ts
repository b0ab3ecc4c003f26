import { describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { startOf } from "../../../src/base/days/instants.ts";
import type { PublishedState, ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { eventsOf } from "../../../src/views/events/events.ts";
import { inDays, placedOf, SATURDAY, windowOf } from "../../engine/schedule/given.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const told = (
  placed: readonly ScheduledTask[],
  given: Partial<Parameters<typeof eventsOf>[1]> = {},
) => eventsOf(placed, { plan: PLAN, publishedState: {}, openDays: {}, ...given });
const thin = (crop: string, given: Partial<ScheduledTask> = {}, task = {}) =>
  placedOf(given, {
    id: `2027/${crop}/thin/1`,
    title: { verb: "Thin", object: crop, where: "bed" },
    ...task,
  });
const MINUTE = 60_000;
const midnight = startOf(SATURDAY, PLAN.site.clock);

describe("work in somebody's gardening hours", () => {
  const [all, session] = told([thin("beet", { people: ["imre"] })]);

  test("stands all day in the tasks set", () => {
    expect(all).toMatchObject({
      key: "2027/beet/thin/1",
      set: "tasks",
      kind: "task",
      when: { kind: "all day", day: SATURDAY },
      busy: false,
      remindMinutesBefore: 360,
    });
  });

  test("stands in a session from the start of the hours for as long as it takes", () => {
    expect(session).toMatchObject({
      key: "imre/2027-05-08",
      set: "sessions",
      kind: "session",
      people: ["imre"],
      when: { kind: "timed", from: midnight + 540 * MINUTE, to: midnight + 560 * MINUTE },
      busy: true,
      remindMinutesBefore: 30,
    });
  });

  test("of one person's day is one session, whatever the jobs", () => {
    const events = told([
      thin("beet", { people: ["imre"] }),
      thin("carrot", { people: ["imre"] }, { practice: "weed", minutes: 45 }),
    ]);
    const sessions = events.filter((event) => event.kind === "session");
    expect(sessions).toHaveLength(1);
    expect(sessions[0]?.tasks).toEqual(["2027/beet/thin/1", "2027/carrot/thin/1"]);
    expect(sessions[0]?.when).toMatchObject({ to: midnight + (540 + 65) * MINUTE });
  });

  test("is told with what the hours do not hold, once a week, and is no longer than what they hold", () => {
    const long = (id: string, day = SATURDAY) =>
      thin(id, { people: ["imre"], day }, { minutes: 60 });
    const wednesday = inDays(4);
    const events = told(["a", "b", "c", "d"].map((id) => long(id)));
    const [over] = events.filter((event) => event.kind === "session");
    expect(over?.text).toContain("More than the hours hold.");
    expect(over?.when).toMatchObject({ to: midnight + (540 + 180) * MINUTE });
    const twice = told([
      ...["a", "b", "c", "d"].map((id) => long(id, inDays(-3))),
      ...["e", "f", "g", "h"].map((id) => long(id)),
      ...["i", "j"].map((id) => long(id, wednesday)),
    ]).filter((event) => event.kind === "session");
    expect(twice.map(({ text }) => text.includes("More than the hours hold."))).toEqual([
      true,
      false,
      true,
    ]);
  });

  test("begins sooner where the sun sets before it is done, no sooner than one is home", () => {
    const october = dayOrThrow(2027, 10, 27);
    const [begun] = told([
      thin("beet", { people: ["imre"], day: october }, { minutes: 45 }),
    ]).filter((event) => event.kind === "session");
    const at = startOf(october, "America/Denver");
    expect(begun?.when).toMatchObject({ from: at + (17 * 60 + 30) * MINUTE });
  });

  test("under a roof begins with the hours, whenever the sun sets", () => {
    const october = dayOrThrow(2027, 10, 27);
    const [begun] = told([
      thin("beet", { people: ["imre"], day: october }, { minutes: 45, indoors: true }),
    ]).filter((event) => event.kind === "session");
    const at = startOf(october, "America/Denver");
    expect(begun?.when).toMatchObject({ from: at + 18 * 60 * MINUTE });
  });

  test("is not told to readers by its session", () => {
    expect(session?.readerText).toBe("");
  });
});

describe("work in a session that is done", () => {
  const done = { day: SATURDAY, by: "oda" };
  const before = told([thin("beet", { people: ["imre"] })]);
  const after = told([thin("beet", { people: ["imre"], done })]);

  test("keeps its events, their kind and their hours, says so first, and rings no more", () => {
    const same = ({ key, set, kind, when, people }: (typeof before)[number]) => [
      ...[key, set, kind, when, people],
    ];
    expect(after.map(same)).toEqual(before.map(same));
    expect(after.map(({ title }) => title)).toEqual(["✓ Thin beet, Root bed", "✓ Thin beet"]);
    expect(after.map(({ remindMinutesBefore }) => remindMinutesBefore)).toEqual([null, null]);
    expect(after.every(({ text }) => text.includes("Done 8 May, Oda."))).toBe(true);
  });

  test("leaves the rest of the session to ring for what is open", () => {
    const [session] = told([
      thin("beet", { people: ["imre"], done }),
      thin("carrot", { people: ["imre"] }, { practice: "weed" }),
    ]).filter(({ kind }) => kind === "session");
    expect(session).toMatchObject({ title: "Thin carrot", remindMinutesBefore: 30 });
    expect(session?.text).toContain("✓ Thin beet, Root bed. Done 8 May, Oda.");
  });
});

describe("work without gardening hours", () => {
  test("stands in both sets alike, where its person gardens on other days", () => {
    const [event, ...more] = told([thin("beet", { people: ["oda"] })]);
    expect(event?.set).toBe("both");
    expect(more).toEqual([]);
  });

  test("stands in both sets where it is nobody's", () => {
    expect(told([thin("beet")]).map((event) => event.set)).toEqual(["both"]);
  });

  test("stands in both sets once it is done, where nobody is known to have had it", () => {
    const done = { day: SATURDAY, by: null };
    expect(told([thin("beet", { people: [], done })]).map((each) => each.set)).toEqual(["both"]);
  });

  test("is a daily look, a warning or a rung by its rhythm", () => {
    const kinds = (["daily", "warning", "timed"] as const).map(
      (rhythm) => told([thin("beet", {}, { rhythm })])[0]?.kind,
    );
    expect(kinds).toEqual(["daily", "warning", "rung"]);
  });
});

describe("a rung", () => {
  const at = { from: 600, to: 615 };
  const out = (crop: string, people: readonly string[]) =>
    thin(crop, { at, people }, { rhythm: "timed", practice: "harden off" });

  test("stands at its hour and rings ten minutes before", () => {
    expect(told([out("tomato", ["imre"])])[0]).toMatchObject({
      when: { kind: "timed", from: midnight + 600 * MINUTE, to: midnight + 615 * MINUTE },
      busy: false,
      remindMinutesBefore: 10,
    });
  });

  test("is one event for all that go out that day, whoever carries", () => {
    const events = told([out("tomato", ["imre"]), out("basil", ["oda"])]);
    expect(events.map((event) => event.tasks)).toEqual([
      ["2027/basil/thin/1", "2027/tomato/thin/1"],
    ]);
    expect(events[0]?.people).toEqual(["imre", "oda"]);
  });
});

describe("what anybody may do on a day on which somebody gardens", () => {
  const ready = (given = {}) =>
    thin(
      "garlic",
      { people: ["imre", "oda"] },
      { rhythm: "daily", harm: "when you can", ...given },
    );

  test("joins the session, which then stands for it alone too", () => {
    const events = told([ready(), thin("beet", { people: ["imre"] })]);
    expect(
      events.filter(({ set }) => set === "sessions").map(({ tasks }) => tasks.toSorted()),
    ).toEqual([["2027/beet/thin/1", "2027/garlic/thin/1"]]);
    expect(told([ready()]).map(({ key, set }) => `${set} ${key}`)).toEqual([
      "tasks 2027/garlic/thin/1",
      "sessions imre/2027-05-08",
    ]);
  });

  test("stands alone where it must be done that day", () => {
    expect(told([ready({ harm: "tonight" })]).map(({ set }) => set)).toEqual(["both"]);
  });
});

describe("like tasks of one day", () => {
  const both = [thin("beet"), thin("carrot")];

  test("are one event under the smallest id", () => {
    expect(told(both).map(({ key, title }) => [key, title])).toEqual([
      ["2027/beet/thin/1", "Thin beet and carrot, Root bed"],
    ]);
  });

  test("keep the id of the one that led them before", () => {
    const led = { day: SATURDAY, window: windowOf(7, 7), people: [], days: [], note: null };
    const standing: PublishedState = {
      "2027/beet/thin/1": { ...led, lead: false },
      "2027/carrot/thin/1": { ...led, lead: true },
    };
    const [event] = told(both, { publishedState: standing });
    expect(event?.key).toBe("2027/carrot/thin/1");
    expect(event?.tasks).toEqual(["2027/carrot/thin/1", "2027/beet/thin/1"]);
    expect(event?.title).toBe("Thin beet and carrot, Root bed");
  });

  test("are two events where they are other work, another day or another's", () => {
    const tasks = told([thin("beet"), thin("carrot", {}, { practice: "weed" })]);
    expect(tasks.filter(({ set }) => set === "tasks")).toHaveLength(2);
    expect(told([thin("beet"), thin("carrot", { day: inDays(1) })])).toHaveLength(2);
    expect(told([thin("beet"), thin("carrot", { people: ["oda"] })])).toHaveLength(2);
  });

  test("name every bed they touch", () => {
    const [event] = told([thin("beet"), thin("lettuce", {}, { bed: "salad-bed" })]);
    expect(event?.beds).toEqual(["root-bed", "salad-bed"]);
  });
});

describe("work that is still open", () => {
  const plan = { ...PLAN, assume: "open" } as const;
  const openDays = { imre: inDays(7), oda: inDays(8) };
  const events = told([thin("beet", { people: ["imre"] })], { plan, openDays });

  test("stands on its day in the tasks set and as open in the sessions", () => {
    expect(events.map(({ key, set, day }) => [key, set, day])).toEqual([
      ["2027/beet/thin/1", "tasks", SATURDAY],
      ["imre/open", "sessions", inDays(7)],
    ]);
  });
});

describe("each set", () => {
  const placed = [
    thin("beet", { people: ["imre"] }),
    thin("carrot", { people: ["oda"], day: inDays(1) }),
    thin("garlic"),
    thin("leek", { people: ["imre", "oda"] }, { rhythm: "daily" }),
    thin("tomato", { at: { from: 600, to: 615 }, people: ["oda"] }, { rhythm: "timed" }),
  ];
  const events = told(placed);

  test("holds every task in exactly one event", () => {
    for (const set of ["sessions", "tasks"] as const) {
      const tasks = events
        .filter((event) => event.set === "both" || event.set === set)
        .flatMap((event) => event.tasks);
      expect(tasks.toSorted()).toEqual(placed.map((each) => each.task.id).toSorted());
    }
  });

  test("has no key twice", () => {
    for (const set of ["sessions", "tasks"] as const) {
      const keys = events
        .filter((event) => event.set === "both" || event.set === set)
        .map((event) => event.key);
      expect(new Set(keys).size).toBe(keys.length);
    }
  });
});
