import { describe, expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import {
  allEvents,
  eventOf,
  eventsBetween,
  formerTasks,
  formerTasksOf,
  inDayOrder,
  nextEvents,
  storeEvents,
  storeFormerTasks,
} from "../../../src/host/store/events.ts";
import { storeTasks } from "../../../src/host/store/tasks.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { inStore } from "../in-store.ts";

const event = (key: string, day = 1, set: Event["set"] = "both", title = key) =>
  ({ key, set, day, title, tasks: [] }) as unknown as Event;

const keys = (events: readonly Event[]) => events.map(({ key }) => key);

describe("events", () => {
  test("come back in day order, from one day on and before another", async () => {
    await inStore("days", (sql) => {
      storeEvents(sql, [event("a", 3), event("c", 2), event("b", 2), event("d", 4)]);
      expect(keys(allEvents(sql))).toEqual(["b", "c", "a", "d"]);
      const unordered = [event("a", 3), event("c", 2), event("b", 2), event("d", 4)];
      expect(inDayOrder(unordered)).toEqual(allEvents(sql));
      expect(keys(eventsBetween(sql, { from: 2 as Day, before: 4 as Day, set: "tasks" }))).toEqual([
        "b",
        "c",
        "a",
      ]);
    });
  });

  test("that come next are as many as asked for, of one set", async () => {
    await inStore("next", (sql) => {
      storeEvents(sql, [event("a", 3), event("c", 2), event("b", 9), event("d", 5, "sessions")]);
      const next = (from: number, count: number) =>
        keys(nextEvents(sql, { from: from as Day, set: "tasks" }, count));
      expect(next(1, 2)).toEqual(["c", "a"]);
      expect(next(3, 9)).toEqual(["a", "b"]);
      expect(next(10, 9)).toEqual([]);
    });
  });

  test("of one key stand in both sets apart", async () => {
    await inStore("sets", (sql) => {
      const both = [event("a", 1, "tasks"), event("a", 1, "sessions")];
      storeEvents(sql, both);
      expect(allEvents(sql)).toHaveLength(2);
      expect(inDayOrder(both)).toEqual(allEvents(sql));
      const days = { from: 1 as Day, before: 2 as Day };
      const inSet = (set: "sessions" | "tasks") => eventsBetween(sql, { ...days, set });
      expect(inSet("tasks").map(({ set }) => set)).toEqual(["tasks"]);
      expect(inSet("sessions").map(({ set }) => set)).toEqual(["sessions"]);
    });
  });

  test("that are stored again are written where they differ, and those that fell away go", async () => {
    await inStore("again", (sql) => {
      storeEvents(sql, [event("a"), event("b"), event("c")]);
      sql.rows("ALTER TABLE events ADD COLUMN mark TEXT");
      sql.rows("UPDATE events SET mark = 'old'");
      storeEvents(sql, [event("a"), event("b", 1, "both", "anew"), event("d")]);
      expect(sql.rows("SELECT key, mark FROM events ORDER BY key")).toEqual([
        { key: "a", mark: "old" },
        { key: "b", mark: null },
        { key: "d", mark: null },
      ]);
      expect(eventOf(sql, "b")?.title).toBe("anew");
    });
  });

  test("are found by their own key first, then by a task in them", async () => {
    await inStore("found", (sql) => {
      storeEvents(sql, [event("a"), event("b")]);
      const row = { card: null, published: null, baseline: null };
      storeTasks(sql, [
        { id: "b", event: "a", ...row },
        { id: "t", event: "a", ...row },
        { id: "off", event: null, ...row },
      ]);
      const found = ["b", "t", "off", "nowhere"].map((key) => eventOf(sql, key)?.key ?? null);
      expect(found).toEqual(["b", "a", null, null]);
    });
  });
});

test("what events were told with before is kept, changed and forgotten as it is stored", async () => {
  await inStore("former", (sql) => {
    storeFormerTasks(sql, { a: { tasks: ["x"], at: 1 }, b: { tasks: ["y"], at: 1 } });
    storeFormerTasks(sql, { b: { tasks: ["y", "z"], at: 2 }, c: { tasks: [], at: 2 } });
    expect(formerTasks(sql)).toEqual({
      b: { tasks: ["y", "z"], at: 2 },
      c: { tasks: [], at: 2 },
    });
    expect([formerTasksOf(sql, "b"), formerTasksOf(sql, "a")]).toEqual([["y", "z"], []]);
  });
});
