import { describe, expect, test, vi } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import type { Event } from "../../../src/app/records.ts";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import type { Engine } from "../../../src/host/edge/engine.ts";
import { buildRecord } from "../../../src/host/store/build.ts";
import { addLine } from "../../../src/host/store/diary.ts";
import { allEvents, formerTasks, inDayOrder } from "../../../src/host/store/events.ts";
import { movedBy } from "../../../src/host/store/moved.ts";
import { savedPlan } from "../../../src/host/store/plans.ts";
import { publishedState, storedTasks, tasksById } from "../../../src/host/store/tasks.ts";
import { ask, engine, inStore, linkTo, MORNING, PLAN, publish, shellWith } from "../web/garden.ts";

const shell = shellWith();
const TODAY = dayOrThrow(2027, 5, 7);
const THIN = "2027/thin-beets/do/1";

const home = async (garden: string) => linkTo(garden, "owner");

const engineWith = (over: Partial<Engine>): Engine => ({ ...engine, ...over });

/** An engine that gives each task a card of that day. */
const withCards = (day: (id: string) => number) =>
  engineWith({
    build: (input) => {
      const built = engine.build(input);
      const cards = Object.keys(built.publishedState).map((id) => card(id, day(id)));
      return { ...built, cards };
    },
  });

const card = (id: string, day: number): TaskCard => ({
  ...{ id, title: id, fullTitle: id, bedRank: 0, why: [], answers: [], done: null },
  ...{ bed: "", text: "", people: [], needs: [], minutes: null },
  ...{ day: day as typeof TODAY, earliest: TODAY, latest: TODAY },
});

describe("the year", () => {
  test("is stored whole: events, tasks as they were published, and what it was made from", async () => {
    await publish(shell, "quarry-lane");
    await inStore("quarry-lane", (sql) => {
      expect(Object.keys(publishedState(storedTasks(sql)))).toContain(THIN);
      expect(allEvents(sql).map(({ title }) => title)).toContain("Thin beets");
      expect(buildRecord(sql)).toMatchObject({ number: 1, revision: 1, code: "code 1" });
      expect(tasksById(sql, [THIN])[0]?.event).toBe(THIN);
    });
  });

  test("gives feeds the events that it has stored, in their order, without reading them again", async () => {
    let built: readonly Event[] = [];
    const build: Engine["build"] = (input) => {
      const year = engine.build(input);
      built = year.events;
      return year;
    };
    await publish({ ...shell, engine: engineWith({ build }) }, "weir");
    await inStore("weir", (sql) => {
      expect(allEvents(sql).length).toBeGreaterThan(1);
      expect(inDayOrder(built)).toStrictEqual(allEvents(sql));
    });
  });

  test("that can't be stored whole is not stored at all", async () => {
    vi.spyOn(console, "error").mockReturnValue();
    await publish(shell, "brook");
    const build: Engine["build"] = (input) => {
      const built = engine.build(input);
      return { ...built, events: [...built.events, { key: null } as never] };
    };
    const later = PLAN.replace("Thin beets", "Thin carrots");
    await publish({ ...shell, engine: engineWith({ build }) }, "brook", later, 1);
    await inStore("brook", (sql) => {
      expect(allEvents(sql).map(({ title }) => title)).not.toContain("Thin carrots");
      expect(Object.keys(publishedState(storedTasks(sql)))).toContain(THIN);
      expect(buildRecord(sql)).toMatchObject({ number: 1, failures: 1 });
    });
  });

  test("is built from how its tasks were last published", async () => {
    const build = vi.fn(engine.build);
    await publish(shell, "lea");
    await publish({ ...shell, engine: engineWith({ build }) }, "lea", `${PLAN}doubt\n`, 1);
    expect(Object.keys(build.mock.calls[0]?.[0].published ?? {})).toContain(THIN);
  });

  test("takes the baseline it has, until another plan or code is in force", async () => {
    const build = vi.fn((input: Parameters<Engine["build"]>[0]) => {
      const built = engine.build(input);
      return { ...built, year: { ...built.year, baseline: { [THIN]: TODAY } } };
    });
    const watched = { ...shell, engine: engineWith({ build }) };
    const given = () => build.mock.calls.map(([{ baseline }]) => baseline);
    await publish(watched, "orchard");
    await ask({ ...watched, now: () => MORNING + 86_400_000 }, await home("orchard"));
    expect(given()).toEqual([null, { [THIN]: TODAY }]);
    await ask({ ...watched, code: "code 2" }, await home("orchard"));
    expect(given().at(-1)).toBeNull();
    await publish({ ...watched, code: "code 2" }, "orchard", `${PLAN}doubt\n`, 1);
    expect(given()).toEqual([null, { [THIN]: TODAY }, null, null]);
  });

  test("remembers what its events were told with before", async () => {
    await publish(shell, "dell");
    await publish(shell, "dell", PLAN.replace("2027-05-08 Thin", "2027-05-15 Thin"), 1);
    expect(await inStore("dell", formerTasks)).toEqual({
      "imre/2027-05-08": { tasks: [THIN], at: MORNING },
    });
  });
});

describe("a plan's text", () => {
  test("is read again by newer code, once, and keeps its reading where it no longer passes", async () => {
    await publish(shell, "weir");
    const readPlan = vi.fn(engine.readPlan);
    const deployed = { ...shell, code: "code 2", engine: engineWith({ readPlan }) };
    await ask(deployed, await home("weir"));
    await ask(deployed, await home("weir"));
    expect(readPlan).toHaveBeenCalledTimes(1);
    const stricter = vi.fn(() => null);
    const third = { ...shell, code: "code 3", engine: engineWith({ readPlan: stricter }) };
    await ask(third, await home("weir"));
    expect(stricter).toHaveBeenCalledTimes(1);
    const saved = await inStore("weir", (sql) => savedPlan(sql, 2027));
    expect(saved).toMatchObject({ readBy: "code 3", summary: { name: "Quarry Lane" } });
    expect((await inStore("weir", buildRecord)).code).toBe("code 3");
  });

  test("is read again where its reading was cut short", async () => {
    await publish(shell, "fen");
    await inStore("fen", (sql) =>
      sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, 30) WHERE name LIKE 'reading/%'"),
    );
    await ask({ ...shell, now: () => MORNING + 86_400_000 }, await home("fen"));
    expect(await inStore("fen", buildRecord)).toMatchObject({ number: 2, failures: 0 });
  });
});

describe("what moved with a line of the diary", () => {
  const say = (garden: string, text: string, task: string | null = null) =>
    inStore(garden, (sql) => {
      addLine(sql, { day: TODAY, text, task, person: null, saidAt: MORNING });
    });

  test("is told by the builds before and after it, for every line that came between", async () => {
    const before = { ...shell, engine: withCards(() => TODAY) };
    await publish(before, "mill");
    await say("mill", "done", THIN);
    await say("mill", "a fox came by");
    const after = { ...shell, engine: withCards((id) => (id === THIN ? TODAY : TODAY + 3)) };
    await ask(after, await home("mill"));
    const moved = await inStore("mill", (sql) => [1, 2, 3].map((line) => movedBy(sql, line)));
    expect(moved[0]?.map(({ text }) => text)).toEqual([
      "2027/cover-squash/do/1: 10 May, was 7 May (3 days later)",
      "2027/hill-potatoes/do/1: 10 May, was 7 May (3 days later)",
    ]);
    expect(moved).toEqual([moved[0], moved[0], null]);
  });

  test("keeps the card of a task that was left, so that it can be had back", async () => {
    const shown = { ...shell, engine: withCards(() => TODAY) };
    await publish(shown, "ford");
    await say("ford", "left this year", THIN);
    const without = PLAN.replace(/.*Thin beets.*\n/, "");
    await publish(shown, "ford", without, 1);
    const stored = await inStore("ford", (sql) => tasksById(sql, [THIN]));
    expect(stored).toEqual([
      { id: THIN, event: null, card: card(THIN, TODAY), published: null, baseline: null },
    ]);
    await say("ford", "undo: left this year", THIN);
    await ask(shown, await home("ford"));
    expect(await inStore("ford", (sql) => tasksById(sql, [THIN]))).toEqual([]);
  });
});
