import { beforeAll, describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import {
  addAnswer,
  addLine,
  addWords,
  answeredSince,
  answersAmong,
  diaryLines,
  newestAnswer,
  newestAnswers,
  type SaidLine,
  whyFull,
  withDiary,
} from "../../../src/host/store/diary.ts";
import { gardenRecord, loadFullPlans, loadGarden } from "../../../src/host/store/gardens.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { inStore } from "../in-store.ts";
import { bare, firstOf, SAVED_AT } from "./made.ts";

const UP: SaidLine & { readonly task: null } = {
  day: dayOrThrow(2027, 5, 24),
  text: "carrots up",
  task: null,
  person: "oda",
  saidAt: SAVED_AT + 5,
};

const inDell = <Result>(work: (sql: SqlStore) => Result) => inStore("dell", work);

describe("a line said over a link", () => {
  beforeAll(async () => {
    await inDell((sql) => savePlan(sql, firstOf("dell", { plan: bare("Dell", 2027, ["Oda"]) })));
  });

  test("is kept in the order it was said and raises the garden's revision", async () => {
    const before = await inDell(gardenRecord);
    expect(await inDell((sql) => addWords(sql, UP))).toBe(true);
    const undo = { ...UP, text: "undo: carrots up", person: null };
    expect(await inDell((sql) => addWords(sql, undo))).toBe(true);
    const lines = await inDell((sql) => diaryLines(sql));
    expect(lines.map(({ text, day }) => [day, text])).toEqual([
      [UP.day, "carrots up"],
      [UP.day, "undo: carrots up"],
    ]);
    const after = await inDell(gardenRecord);
    expect(after?.revision).toBe((before?.revision ?? 0) + 2);
    expect(after?.changedAt).toBe(UP.saidAt);
    expect(await inDell((sql) => diaryLines(sql, lines[0]?.id))).toEqual(lines.slice(1));
  });

  test("stands in the diary of the garden's newest plan, by whom it was said", async () => {
    const plans = await inDell((sql) => {
      const stored = loadGarden(sql);
      return stored && loadFullPlans(sql, stored).plans;
    });
    expect(plans?.[0]?.diary.map(({ text }) => text)).toEqual([
      "Oda: carrots up",
      "undo: carrots up",
    ]);
  });

  test("said again by the same person of the same day is one, and of another day another", async () => {
    expect(await inDell((sql) => addWords(sql, UP))).toBe(false);
    const next = { ...UP, day: dayOrThrow(2027, 5, 25) };
    expect(await inDell((sql) => addWords(sql, next))).toBe(true);
    expect(await inDell((sql) => diaryLines(sql))).toHaveLength(3);
  });

  test("that answers a task is one however often it is tapped, till another answer comes", async () => {
    const answer = { ...UP, task: "2027/beet/thin/1", text: "done" };
    const add = (over: Partial<typeof answer> = {}) =>
      inDell((sql) => addAnswer(sql, { ...answer, ...over }));
    expect(await add()).toBe(true);
    expect(await add({ person: "imre" })).toBe(false);
    expect(await add({ text: "undo: done" })).toBe(true);
    expect(await add()).toBe(true);
    const newest = await inDell((sql) => newestAnswer(sql, answer.task));
    expect(newest).toMatchObject({ text: "done", person: "oda", day: UP.day });
    expect(await inDell((sql) => newestAnswer(sql, "2027/beet/weed/1"))).toBeNull();
    const asked = ["2027/beet/weed/1", answer.task, answer.task];
    const found = await inDell((sql) => [...newestAnswers(sql, asked)]);
    expect(found).toEqual([[answer.task, newest]]);
  });

  test("that it is not yet time is another answer on another day, and one on each", async () => {
    const notYet = { ...UP, task: "2027/beet/hill/1", text: "not yet" };
    const added = await inDell((sql) =>
      [24, 24, 26, 26].map((day) => addAnswer(sql, { ...notYet, day: dayOrThrow(2027, 5, day) })),
    );
    expect(added).toEqual([true, false, true, false]);
  });
});

describe("the diary", () => {
  beforeAll(async () => {
    await inStore("brook", (sql) => {
      savePlan(sql, firstOf("brook"));
      addLine(sql, UP);
    });
  });

  test("raises the instant of change, never back", async () => {
    await inStore("brook", (sql) => {
      addLine(sql, { ...UP, saidAt: SAVED_AT + 5000 });
      addLine(sql, { ...UP, text: "told late", saidAt: SAVED_AT - 5000 });
      expect(gardenRecord(sql)?.changedAt).toBe(SAVED_AT + 5000);
    });
  });

  test.each([
    ["changed", "UPDATE diary SET text = 'never'"],
    ["removed", "DELETE FROM diary"],
    [
      "replaced",
      "INSERT OR REPLACE INTO diary (id, day, text, said_at) SELECT id, day, 'never', 0 FROM diary",
    ],
  ])("can't be %s", async (_, query) => {
    const refused = await inStore("brook", (sql) => {
      try {
        sql.rows(query);
        return null;
      } catch (error) {
        return String(error);
      }
    });
    expect(refused).toContain("only ever added to");
  });
});

test("the tasks that were answered since an instant come back once each", async () => {
  const found = await inStore("since", (sql) => {
    savePlan(sql, firstOf("since"));
    for (const [task, saidAt] of [
      ["old", SAVED_AT],
      ["a", SAVED_AT + 10],
      ["b", SAVED_AT + 20],
      ["a", SAVED_AT + 30],
    ] as const)
      addLine(sql, { ...UP, text: saidAt % 3 === 0 ? "done" : "not yet", task, saidAt });
    addLine(sql, { ...UP, saidAt: SAVED_AT + 40 });
    expect(answersAmong(sql, [1, 3, 5]).map(({ id, task }) => [id, task])).toEqual([
      [1, "old"],
      [3, "b"],
    ]);
    return answeredSince(sql, SAVED_AT + 10);
  });
  expect([...found].sort()).toEqual(["a", "b"]);
});

test("plans to which nothing was said stay the very same", () => {
  const plans: readonly Plan[] = [];
  expect(withDiary(plans, [])).toBe(plans);
});

test("one person may write two hundred lines within a day, whichever link it is by, and others still may", async () => {
  const now = SAVED_AT + 86_400_000;
  await inStore("full", (sql) => {
    savePlan(sql, firstOf("full"));
    for (let count = 0; count < 199; count += 1) addLine(sql, { ...UP, saidAt: now - 1000 });
    expect(whyFull(sql, "oda", now)).toBeNull();
    addLine(sql, { ...UP, saidAt: now });
    expect(whyFull(sql, "oda", now)).toContain("200 lines within a day");
    expect(whyFull(sql, "imre", now)).toBeNull();
    expect(whyFull(sql, null, now)).toBeNull();
    expect(whyFull(sql, "oda", now + 86_400_000)).toBeNull();
    expect(whyFull(sql, "oda", now - 3_600_000)).toBeNull();
  });
});
