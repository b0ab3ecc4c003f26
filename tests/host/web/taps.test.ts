import { describe, expect, test } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import type { StoredGarden } from "../../../src/host/store/gardens.ts";
import { restoreTaps, tapsOf, withAnswer } from "../../../src/host/web/taps.ts";
import { inDays } from "../../engine/schedule/given.ts";

const TODAY = inDays(0);
const CARD: TaskCard = {
  ...{ id: "2027/beet/thin/1", title: "Thin beets", fullTitle: "Thin beets", bedRank: 0, why: [] },
  ...{ day: TODAY, earliest: TODAY, latest: TODAY, done: null },
  answers: [{ words: "Thinned today", says: "done" }],
};

const line = (text: string, task: string | null = CARD.id) => ({
  ...{ id: 1, day: inDays(0), person: "oda", saidAt: 0 },
  ...{ text, task },
});

describe("the answers to a job", () => {
  test("are those of its card while it is open", () => {
    expect(tapsOf(CARD)).toEqual({ task: CARD.id, said: null, taps: CARD.answers });
  });

  test("of what is done are its undoing alone, beside who did it and when", () => {
    const done = { day: inDays(0), by: "Oda" };
    expect(tapsOf({ ...CARD, done })).toEqual({
      task: "2027/beet/thin/1",
      said: "Done 8 May, Oda.",
      taps: [{ words: "Undo", says: "undo: done" }],
    });
    expect(tapsOf({ ...CARD, done: { day: inDays(0), by: null } })?.said).toBe("Done 8 May.");
  });

  test("are none where nothing can be answered", () => {
    expect(tapsOf({ ...CARD, answers: [] })).toBeNull();
  });
});

describe("an answer that no build knows yet", () => {
  const summary = (name: string) => ({ summary: { people: [{ key: "oda", name }] } });
  const garden = { plans: [summary("O."), summary("Oda")] } as unknown as StoredGarden;

  test("shows as done at once, by whom the newest plan calls so", () => {
    expect(withAnswer(CARD, line("done"), garden).done).toEqual({ day: TODAY, by: "Oda" });
    expect(withAnswer(CARD, { ...line("done"), person: "cy" }, garden).done?.by).toBe("cy");
    expect(withAnswer(CARD, { ...line("done"), person: null }, garden).done?.by).toBeNull();
  });

  test("takes back what was done, and changes nothing else", () => {
    const done = { ...CARD, done: { day: TODAY, by: null } };
    expect(withAnswer(done, line("undo: done"), garden)).toEqual(CARD);
    for (const text of ["not yet", "up", "undo: left this year"])
      expect(withAnswer(done, line(text), garden)).toBe(done);
    expect(withAnswer(CARD, undefined, garden)).toBe(CARD);
  });
});

test("a job that was left this year can be had back, and no other that is gone", () => {
  expect(restoreTaps(line("left this year"))).toEqual({
    task: "2027/beet/thin/1",
    said: "Left this year, said 8 May.",
    taps: [{ words: "Undo", says: "undo: left this year" }],
  });
  expect(restoreTaps(line("undo: left this year"))).toBeNull();
  expect(restoreTaps(line("left this year", null))).toBeNull();
  expect(restoreTaps(null)).toBeNull();
});
