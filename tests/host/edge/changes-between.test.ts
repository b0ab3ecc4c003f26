import { expect, test } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import { type Day, dayOrThrow } from "../../../src/base/days/day.ts";
import { changesBetween } from "../../../src/host/edge/changes-between.ts";

const on = (date: number) => dayOrThrow(2027, 5, date);

const card = (id: string, day: Day, over: Partial<TaskCard> = {}): TaskCard => ({
  ...{ id, title: id, fullTitle: `${id}, Root bed`, bedRank: 0, why: [], answers: [] },
  ...{ bed: "", text: "", people: [], needs: [], minutes: null },
  ...{ day, earliest: day, latest: day, done: null },
  ...over,
});

const cards = (...all: readonly TaskCard[]) => new Map(all.map((each) => [each.id, each]));

const texts = (before: ReadonlyMap<string, TaskCard>, now: ReadonlyMap<string, TaskCard>) =>
  changesBetween(before, now).map(({ text }) => text);

test("what was done, moved or came new stands in day order, then what fell away", () => {
  const before = cards(card("a", on(4)), card("b", on(9)), card("c", on(1)), card("d", on(2)));
  const done = { done: { day: on(3), by: null } };
  const now = cards(card("a", on(5)), card("b", on(2)), card("new", on(3)), card("d", on(3), done));
  expect(texts(before, now)).toEqual([
    "b, Root bed: 2 May, was 9 May (7 days sooner)",
    "d, Root bed: done 3 May",
    "new, Root bed: new, 3 May",
    "a, Root bed: 5 May, was 4 May (1 day later)",
    "c, Root bed: no longer, was 1 May",
  ]);
});

test("each change says its task and the day it stands on, or stood on last", () => {
  expect(changesBetween(cards(card("c", on(1))), cards(card("a", on(5))))).toMatchObject([
    { id: "a", day: on(5) },
    { id: "c", day: on(1) },
  ]);
});

test("a build like the one before moves nothing, and what was done before is not said again", () => {
  const done = cards(card("a", on(4), { done: { day: on(3), by: "Oda" } }));
  expect(changesBetween(done, done)).toEqual([]);
});
