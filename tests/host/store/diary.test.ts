import { env } from "cloudflare:workers";
import { beforeAll, describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { addAnswer, addWords, type SaidLine, withDiary } from "../../../src/host/store/diary.ts";
import { gardenIn, loadStoredGarden } from "../../../src/host/store/gardens.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { firstOf, SAVED_AT } from "./made.ts";

const UP: SaidLine & { readonly task: null } = {
  day: dayOrThrow(2027, 5, 24),
  text: "carrots up",
  task: null,
  person: "oda",
  saidAt: SAVED_AT + 5,
};

async function stored(garden: string) {
  const opened = await loadStoredGarden(env.DB, garden);
  if (opened === null) throw new Error("no such garden");
  return opened.stored;
}

describe("a line said over a link", () => {
  beforeAll(async () => {
    const plan = {
      name: "Dell",
      year: 2027,
      people: [{ key: "oda", name: "Oda" }],
      diary: [],
    } as unknown as Plan;
    await savePlan(env.DB, firstOf("dell", { plan }));
  });

  test("is kept in the order it was said and raises the garden's revision", async () => {
    const before = await stored("dell");
    expect(await addWords(env.DB, "dell", UP)).toBe(true);
    const undo = { ...UP, text: "undo: carrots up", person: null };
    expect(await addWords(env.DB, "dell", undo)).toBe(true);
    const after = await stored("dell");
    expect(after.lines.map(({ text, day }) => [day, text])).toEqual([
      [UP.day, "carrots up"],
      [UP.day, "undo: carrots up"],
    ]);
    expect([after.revision - before.revision, after.changedAt]).toEqual([2, UP.saidAt]);
  });

  test("stands in the diary of the garden's newest plan, by whom it was said", async () => {
    const { plans } = gardenIn(await stored("dell"));
    expect(plans[0]?.diary.map(({ text }) => text)).toEqual([
      "Oda: carrots up",
      "undo: carrots up",
    ]);
  });

  test("is none for a garden that is not there", async () => {
    expect(await addWords(env.DB, "nowhere", UP)).toBe(false);
    expect(await addAnswer(env.DB, "nowhere", { ...UP, task: "2027/beet/thin/1" })).toBe(false);
  });

  test("said again by the same person of the same day is one, and of another day another", async () => {
    expect(await addWords(env.DB, "dell", UP)).toBe(false);
    expect(await addWords(env.DB, "dell", { ...UP, day: dayOrThrow(2027, 5, 25) })).toBe(true);
    expect((await stored("dell")).lines).toHaveLength(3);
  });

  test("that answers a task is one however often it is tapped, till another answer comes", async () => {
    const answer = { ...UP, task: "2027/beet/thin/1", text: "done" };
    expect(await addAnswer(env.DB, "dell", answer)).toBe(true);
    expect(await addAnswer(env.DB, "dell", { ...answer, person: "imre" })).toBe(false);
    expect(await addAnswer(env.DB, "dell", { ...answer, text: "undo: done" })).toBe(true);
    expect(await addAnswer(env.DB, "dell", answer)).toBe(true);
  });
});

test("plans to which nothing was said stay the very same", () => {
  const plans: readonly Plan[] = [];
  expect(withDiary(plans, [])).toBe(plans);
});
