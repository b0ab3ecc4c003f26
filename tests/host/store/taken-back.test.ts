import { expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { addLine, diaryLines, newestAnswer } from "../../../src/host/store/diary.ts";
import { gardenRecord } from "../../../src/host/store/gardens.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { daysOfManyLines, haveBack, takeBack } from "../../../src/host/store/taken-back.ts";
import { inStore } from "../in-store.ts";
import { firstOf, SAVED_AT } from "./made.ts";

const TASK = "2027/beet/thin/1";
const LINE = {
  ...{ day: dayOrThrow(2027, 5, 24), text: "carrots up", task: null },
  ...{ person: "oda", saidAt: SAVED_AT + 5 },
};

test("a flood of one person's lines is read no more once it is taken back, and again once it is had back", async () => {
  await inStore("flood", (sql) => {
    savePlan(sql, firstOf("flood"));
    addLine(sql, { ...LINE, text: "done", task: TASK });
    for (let count = 0; count < 30; count += 1) {
      addLine(sql, { ...LINE, person: "imre", text: "undo: done", task: TASK });
      if (count === 10) addLine(sql, { ...LINE, text: "frost" });
    }
    expect(newestAnswer(sql, TASK)?.text).toBe("undo: done");
    const [flood, ...more] = daysOfManyLines(sql);
    expect(more).toEqual([]);
    expect(flood).toMatchObject({ person: "imre", count: 30, isTakenBack: false });
    if (!flood) return;
    const before = gardenRecord(sql)?.revision ?? 0;
    takeBack(sql, flood, SAVED_AT + 9);
    takeBack(sql, flood, SAVED_AT + 9);
    expect(gardenRecord(sql)).toMatchObject({ revision: before + 1, changedAt: SAVED_AT + 9 });
    expect(diaryLines(sql).map(({ text }) => text)).toEqual(["done", "frost"]);
    expect(newestAnswer(sql, TASK)).toMatchObject({ text: "done", person: "oda" });
    expect(daysOfManyLines(sql)[0]).toMatchObject({ count: 30, isTakenBack: true });
    haveBack(sql, flood);
    expect(diaryLines(sql)).toHaveLength(32);
    expect(gardenRecord(sql)?.revision).toBe(before + 2);
  });
});

test("lines of whom nobody knows are their own, and a quiet day is not offered", async () => {
  await inStore("quiet", (sql) => {
    savePlan(sql, firstOf("quiet"));
    for (let count = 0; count < 25; count += 1) addLine(sql, { ...LINE, person: null });
    for (let count = 0; count < 19; count += 1) addLine(sql, LINE);
    const [only, ...more] = daysOfManyLines(sql);
    expect([only?.person, more.length]).toEqual([null, 0]);
    takeBack(sql, { person: null, first: 1, last: 100 }, SAVED_AT);
    expect(diaryLines(sql)).toHaveLength(19);
  });
});
