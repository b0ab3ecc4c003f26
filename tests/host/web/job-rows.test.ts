import { describe, expect, test } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import { dayOrThrow, plus } from "../../../src/base/days/day.ts";
import type { Link } from "../../../src/host/links/segment.ts";
import { addAnswer } from "../../../src/host/store/diary.ts";
import { storeEvents } from "../../../src/host/store/events.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { storeTasks } from "../../../src/host/store/tasks.ts";
import {
  jobRows,
  joinTitles,
  type RowOptions,
  sayMinutes,
} from "../../../src/host/web/job-rows.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { inStore } from "../in-store.ts";
import { eventOn, viewOf } from "./viewed.ts";

const TODAY = dayOrThrow(2027, 5, 8);
const ANSWERS = [
  { words: "Thinned today", says: "done" },
  { words: "Not yet", says: "not yet" },
];

const card = (id: string, over: Partial<TaskCard> = {}): TaskCard => ({
  ...{ id, title: `Thin ${id}`, fullTitle: `Thin ${id}, Root bed`, bedRank: 0, bed: "Root bed" },
  text: `How to thin ${id}.`,
  ...{ people: ["imre"], needs: [], minutes: 20, why: ["Shoots came on 1 May."], done: null },
  ...{ day: TODAY, earliest: TODAY, latest: plus(TODAY, 4), answers: ANSWERS },
  ...over,
});

type Given = {
  readonly cards: readonly TaskCard[];
  readonly events?: readonly Event[];
  readonly answers?: readonly { readonly task: string; readonly text: string }[];
  readonly link?: Partial<Link>;
  readonly options?: RowOptions;
};

/** The rows of all cards of a store that has just these, with what was answered to them now. */
function rowsOf(name: string, given: Given) {
  const { cards, events = [], answers = [], link = {}, options } = given;
  return inStore(name, (sql: SqlStore) => {
    const rest = { event: null, published: null, baseline: null };
    storeTasks(
      sql,
      cards.map((each) => ({ ...rest, id: each.id, card: each })),
    );
    storeEvents(sql, events);
    const view = viewOf(TODAY, link, sql);
    for (const { task, text } of answers)
      addAnswer(sql, { day: TODAY, text, task, person: "imre", saidAt: view.context.now() });
    return jobRows(
      view,
      cards.map(({ id }) => id),
      options,
    );
  });
}

const together = (...tasks: readonly string[]) =>
  eventOn(TODAY, { key: tasks[0] ?? "", tasks, title: "Thin a and b, Root bed", set: "tasks" });

describe("an open job", () => {
  test("has its title without the bed, where, how long, and till when it keeps", async () => {
    const [row] = await rowsOf("open", { cards: [card("a")], events: [together("a")] });
    expect(row?.job).toMatchObject({
      ...{ kind: "open", at: "job-a", title: "Thin a", text: "How to thin a.", why: [] },
      facts: ["Root bed", "20\u00a0min"],
      keeps: { days: 5, words: "till Wed 12 May" },
      href: "/g/l/m/on/a",
    });
  });

  test.each([
    [0, "today only"],
    [1, "till tomorrow"],
    [9, "till Mon 17 May"],
    [10, "till 18 May"],
    [331, "till 3 Apr 2028"],
  ])("that keeps %i days says %s", async (days, words) => {
    const given = { cards: [card("a", { latest: plus(TODAY, days) })] };
    const [row] = await rowsOf(`keeps ${days}`, given);
    expect(row?.job).toMatchObject({ keeps: { days: days + 1, words } });
  });

  test("keeps nothing where it has hours of its own or is past its days", async () => {
    for (const over of [{ minutes: null }, { latest: plus(TODAY, -1) }]) {
      const [row] = await rowsOf("past", { cards: [card("a", over)] });
      expect(row?.job).toMatchObject({ keeps: null });
    }
  });

  test("of an earlier day is said to be still open", async () => {
    const [row] = await rowsOf("late", { cards: [card("a", { day: plus(TODAY, -2) })] });
    expect(row?.job).toMatchObject({ facts: ["Root bed", "20\u00a0min", "still open"] });
  });

  test("on its own page says why, and from when to when it is right", async () => {
    const options = { together: true, leads: false };
    const [row] = await rowsOf("why", { cards: [card("a")], options });
    expect(row?.job).toMatchObject({
      ...{ why: ["Right from 8 May to 12 May.", "Shoots came on 1 May."], href: null },
    });
  });

  test("offers a reader nothing to answer or to open, and their own text", async () => {
    const link = { role: "reader" } as const;
    const [row] = await rowsOf("reader", { cards: [card("a")], events: [together("a")], link });
    expect(row?.job).toMatchObject({ taps: null, href: null, each: [], text: "For anybody." });
  });
});

describe("several tasks", () => {
  const cards = [card("a"), card("b", { latest: plus(TODAY, 1) })];

  test("that are told together are one job, which keeps as long as the first of them, each with answers of its own", async () => {
    const rows = await rowsOf("one", { cards, events: [together("a", "b")] });
    expect(rows).toHaveLength(1);
    expect(rows[0]?.job).toMatchObject({
      ...{ title: "Thin a and b", text: "", facts: ["Root bed", "40\u00a0min"] },
      ...{ keeps: { days: 2 }, taps: { tasks: ["a", "b"] } },
      each: [
        { title: "Thin a, Root bed", text: "How to thin a." },
        { title: "Thin b, Root bed", text: "How to thin b." },
      ],
    });
  });

  test("of several beds are a job for each bed, but for what has hours of its own, and for a reader", async () => {
    const other = card("c", { bed: "Pea bed", fullTitle: "Thin c, Pea bed" });
    const events = [together("a", "b", "c")];
    const titles = async (name: string, given: Partial<Given>) =>
      (await rowsOf(name, { cards: [...cards, other], events, ...given })).map(
        ({ job }) => job.title,
      );
    expect(await titles("beds", {})).toEqual(["Thin a and b", "Thin c"]);
    expect(await titles("read", { link: { role: "reader" } })).toEqual(["Thin a, b and c"]);
    const carried = [...cards, other].map((each) => ({ ...each, minutes: null }));
    expect(await titles("carried", { cards: carried })).toEqual(["Thin a and b, Root bed"]);
  });

  test("stay apart where they are told apart, and where they are to be", async () => {
    expect(await rowsOf("apart", { cards })).toHaveLength(2);
    const options = { together: false, leads: true };
    expect(await rowsOf("each", { cards, events: [together("a", "b")], options })).toHaveLength(2);
  });

  test("that one tap answered are taken back by one, and those left are told without them", async () => {
    const more = [...cards, card("c")];
    const answers = ["a", "b"].map((task) => ({ task, text: "left this year" }));
    const rows = await rowsOf("answered", { cards: more, events: [together("c")], answers });
    expect(rows.map(({ job }) => [job.kind, job.title])).toEqual([
      ["answered", "Thin a and b"],
      ["open", "Thin c"],
    ]);
    expect(rows[0]?.job).toMatchObject({
      ...{ done: false, said: "Left this year, 8 May, Imre." },
      undo: { tasks: ["a", "b"], done: { says: "undo: left this year" } },
    });
  });
});

describe("what was answered", () => {
  const answered = async (text: string, over: Partial<TaskCard> = {}) => {
    const given = { cards: [card("a", over)], answers: [{ task: "a", text }] };
    const [row] = await rowsOf(`answer ${text}`, given);
    return row;
  };

  test("is done, with whom, before a build knows it too", async () => {
    const row = await answered("done");
    expect(row?.job).toMatchObject({ kind: "answered", done: true, said: "Done 8 May, Imre." });
    expect(row?.saidAt).toBeGreaterThan(0);
  });

  test("is not yet, with the day it stands on now", async () => {
    expect((await answered("not yet", { day: plus(TODAY, 3) }))?.job).toMatchObject({
      said: "Not yet, 8 May, Imre. Now on Tuesday 11 May.",
      undo: { done: { says: "undo: not yet" } },
    });
  });

  test("is open again once it is taken back", async () => {
    for (const text of ["undo: done", "undo: left this year"])
      expect((await answered(text))?.job.kind).toBe("open");
  });
});

test("titles that begin and end alike are one, others stand one after another", () => {
  expect(joinTitles(["Sow beets"])).toBe("Sow beets");
  expect(joinTitles(["Thin carrots again", "Thin beets again"])).toBe(
    "Thin carrots and beets again",
  );
  expect(joinTitles(["Sow peas", "Hill potatoes"])).toBe("Sow peas and Hill potatoes");
});

test("minutes are said as one says them, from an hour and a half on in half hours", () => {
  expect([0, 20, 90, 91, 130].map(sayMinutes)).toEqual([
    ...["", "20\u00a0min", "90\u00a0min", "2 hours", "2½ hours"],
  ]);
});
