import { describe, expect, test } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import { type Day, dayOrThrow } from "../../../src/base/days/day.ts";
import type { PublishedTask } from "../../../src/engine/schedule/scheduled-task.ts";
import { addLine } from "../../../src/host/store/diary.ts";
import { storeFormerTasks } from "../../../src/host/store/events.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import {
  cardsById,
  hasTask,
  loadBaseline,
  publishedState,
  storedTasks,
  storeTasks,
  type TaskRow,
  taskCards,
  tasksById,
} from "../../../src/host/store/tasks.ts";
import { inStore } from "../in-store.ts";

const TODAY = dayOrThrow(2027, 5, 8);
const PUBLISHED = { day: TODAY } as unknown as PublishedTask;

const card = (id: string, bedRank = 0): TaskCard => {
  const days = { day: TODAY, earliest: TODAY, latest: TODAY };
  const rest = { bed: "", text: "", people: [], needs: [], minutes: null };
  return {
    id,
    title: id,
    fullTitle: id,
    bedRank,
    ...days,
    ...rest,
    why: [],
    answers: [],
    done: null,
  };
};

const row = (id: string, over: Partial<TaskRow> = {}): TaskRow => {
  return { id, event: "e", card: card(id), published: PUBLISHED, baseline: TODAY, ...over };
};

const idsOf = (sql: SqlStore) =>
  sql.rows<{ readonly id: string }>("SELECT id FROM tasks ORDER BY id").map(({ id }) => id);

describe("tasks", () => {
  test("come back by their ids, in the order of a walk through the garden", async () => {
    await inStore("walk", (sql) => {
      storeTasks(sql, [
        row("c", { card: card("c", -1) }),
        row("a", { card: card("a", 2) }),
        row("b", { card: card("b", 2) }),
        row("d", { card: null }),
      ]);
      const asked = ["d", "b", "a", "c", "nowhere"];
      expect(cardsById(sql, asked).map(({ id }) => id)).toEqual(["c", "a", "b"]);
      expect(tasksById(sql, asked).map(({ id }) => id)).toEqual(["a", "b", "c", "d"]);
      sql.rows("UPDATE tasks SET card = '{' WHERE id = 'a'");
      expect(() => cardsById(sql, asked)).toThrow("can't be read");
      expect(tasksById(sql, ["b"])).toEqual([row("b", { card: card("b", 2) })]);
    });
  });

  test("whose cards earlier code stored have what cards had not then", async () => {
    await inStore("early", (sql) => {
      const { bed: _, text: _t, people: __, needs: ___, minutes: ____, ...early } = card("a");
      storeTasks(sql, [row("a", { card: early as TaskCard })]);
      expect(cardsById(sql, ["a"])).toEqual([card("a")]);
    });
  });

  test("that are stored again are written where they differ, and those that fell away go", async () => {
    await inStore("again", (sql) => {
      storeTasks(sql, [row("a"), row("b"), row("c")]);
      // Marks rows by where they lie: one written anew would lose its mark.
      sql.rows("ALTER TABLE tasks ADD COLUMN mark TEXT");
      sql.rows("UPDATE tasks SET mark = 'old'");
      storeTasks(sql, [row("a"), row("b", { baseline: (TODAY + 1) as Day }), row("d")]);
      expect(sql.rows("SELECT id, mark FROM tasks ORDER BY id")).toEqual([
        { id: "a", mark: "old" },
        { id: "b", mark: null },
        { id: "d", mark: null },
      ]);
      expect(idsOf(sql)).toEqual(["a", "b", "d"]);
    });
  });

  test("are published, have a day in a mean year, or both", async () => {
    await inStore("parts", (sql) => {
      storeTasks(sql, [
        row("a"),
        row("b", { published: null, card: null }),
        row("c", { baseline: null }),
      ]);
      expect(publishedState(storedTasks(sql))).toEqual({ a: PUBLISHED, c: PUBLISHED });
      expect(loadBaseline(sql)).toEqual({ a: TODAY, b: TODAY });
    });
  });

  test("that were left have a card and are not scheduled", async () => {
    await inStore("left", (sql) => {
      storeTasks(sql, [row("a"), row("b", { published: null, event: null })]);
      expect([...taskCards(storedTasks(sql)).keys()]).toEqual(["a"]);
    });
  });

  test("that can't be read count as never stored, and the rest stand", async () => {
    await inStore("cut", (sql) => {
      storeTasks(sql, [row("a"), row("b")]);
      sql.rows(`UPDATE tasks SET published = '{"day":', card = '{"id' WHERE id = 'a'`);
      expect(publishedState(storedTasks(sql))).toEqual({ b: PUBLISHED });
      expect([...taskCards(storedTasks(sql)).keys()]).toEqual(["b"]);
    });
  });
});

test("a task is known while it is stored, while an event had it lately, and once it was answered", async () => {
  await inStore("known", (sql) => {
    storeTasks(sql, [row("stored")]);
    storeFormerTasks(sql, { e: { tasks: ["other", "former"], at: 1 } });
    addLine(sql, { day: TODAY, text: "done", task: "answered", person: null, saidAt: 0 });
    const known = ["stored", "former", "answered", "nowhere"].map((id) => hasTask(sql, id));
    expect(known).toEqual([true, true, true, false]);
  });
});
