import { describe, expect, test } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import type { StoredGarden } from "../../../src/host/store/gardens.ts";
import {
  nameOf,
  placeOf,
  saidOf,
  tapsOf,
  undoTaps,
  withAnswer,
} from "../../../src/host/web/taps.ts";
import { inDays } from "../../engine/schedule/given.ts";

const TODAY = inDays(0);
const DONE = { words: "Thinned today", says: "done" };
const NOT_YET = { words: "Not tall enough yet", says: "not yet" };
const CARD: TaskCard = {
  ...{ id: "2027/beet/thin/1", title: "Thin beets", fullTitle: "Thin beets", bedRank: 0, why: [] },
  ...{ bed: "", text: "", people: [], needs: [], minutes: 20 },
  ...{ day: TODAY, earliest: TODAY, latest: TODAY, done: null },
  answers: [DONE, NOT_YET],
};

const line = (text: string, task: string | null = CARD.id) => ({
  ...{ id: 1, day: inDays(0), person: "oda", saidAt: 0 },
  ...{ text, task },
});

describe("the answers to a job", () => {
  test("are those of its card, the one that is wanted most apart", () => {
    expect(tapsOf([CARD])).toEqual({ tasks: [CARD.id], done: DONE, others: [NOT_YET] });
  });

  test("of several tasks are for all of them at once", () => {
    const other = { ...CARD, id: "2027/carrot/thin/1", answers: [] };
    expect(tapsOf([CARD, other])?.tasks).toEqual([CARD.id, other.id]);
  });

  test("are none where nothing can be answered", () => {
    expect(tapsOf([{ ...CARD, answers: [] }])).toBeNull();
    expect(tapsOf([])).toBeNull();
  });

  test("can be taken back, whatever was said", () => {
    for (const said of ["done", "not yet", "left this year", "up"])
      expect(undoTaps([CARD.id], said)).toEqual({
        tasks: [CARD.id],
        done: { words: "Undo", says: `undo: ${said}` },
        others: [],
      });
  });
});

test("what was said is told with its day and by whom", () => {
  expect(saidOf("done", { day: TODAY, by: "Oda" })).toBe("Done 8 May, Oda.");
  expect(saidOf("left this year", { day: TODAY, by: null })).toBe("Left this year, 8 May.");
  expect(saidOf("not yet", { day: TODAY, by: "Oda" })).toBe("Not yet, 8 May, Oda.");
});

test("a task's place on a page is a name that an address can have, another for each", () => {
  expect(placeOf("2027/bush-beans/sow-outdoors/1")).toBe("job-2027-bush-beans-sow-outdoors-1");
  expect(placeOf("2027/häu fen/x/1")).toMatch(/^[\w-]+$/);
  expect(placeOf("2027/beet/thin/1")).not.toBe(placeOf("2027/beet/thin/2"));
});

describe("an answer that no build knows yet", () => {
  const summary = (name: string) => ({ summary: { people: [{ key: "oda", name }] } });
  const garden = { plans: [summary("O."), summary("Oda")] } as unknown as StoredGarden;

  test("shows as done at once, by whom the newest plan calls so", () => {
    expect(withAnswer(CARD, line("done"), garden).done).toEqual({ day: TODAY, by: "Oda" });
    expect(withAnswer(CARD, { ...line("done"), person: "cy" }, garden).done?.by).toBe("cy");
    expect(withAnswer(CARD, { ...line("done"), person: null }, garden).done?.by).toBeNull();
    expect(nameOf("oda", garden)).toBe("Oda");
  });

  test("takes back what was done, and changes nothing else", () => {
    const done = { ...CARD, done: { day: TODAY, by: null } };
    const told = { ...done, text: "Done 8 May.\nTwo fingers apart." };
    expect(withAnswer(told, line("undo: done"), garden)).toEqual({
      ...CARD,
      text: "Two fingers apart.",
    });
    for (const text of ["not yet", "up", "undo: left this year"])
      expect(withAnswer(done, line(text), garden)).toBe(done);
    expect(withAnswer(CARD, undefined, garden)).toBe(CARD);
  });
});
