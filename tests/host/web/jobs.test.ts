import { describe, expect, test } from "vitest";
import type { TaskCard } from "../../../src/app/answers.ts";
import { type Day, dayOrThrow, plus } from "../../../src/base/days/day.ts";
import type { Link } from "../../../src/host/links/segment.ts";
import { storeEvents } from "../../../src/host/store/events.ts";
import type { StoredGarden } from "../../../src/host/store/gardens.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import type { GardenContext } from "../../../src/host/web/garden-context.ts";
import type { GardenView } from "../../../src/host/web/garden-request.ts";
import {
  comingUp,
  jobSummaryOf,
  movedPartOf,
  partOf,
  summaryBeforeBuild,
} from "../../../src/host/web/jobs.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { inStore } from "../in-store.ts";

const CLOCK = "America/Denver";
const TODAY = dayOrThrow(2027, 3, 10);

function event(over: Partial<Event>): Event {
  return {
    key: "2027/beet/thin/1",
    set: "both",
    kind: "task",
    tasks: ["2027/beet/thin/1"],
    people: [],
    beds: [],
    title: "Thin beets",
    text: "For the household.",
    readerText: "For anybody.",
    categories: [],
    day: TODAY,
    when: { kind: "all day", day: TODAY },
    busy: false,
    remindMinutesBefore: 360,
    weight: 10,
    ...over,
  };
}

const on = (title: string, day: Day) =>
  event({ key: title, title, day, when: { kind: "all day", day } });

function view(over: Partial<Link> = {}, sql: SqlStore | null = null): GardenView {
  const plans = [{ summary: { clock: CLOCK } }];
  const now = () => Date.UTC(2027, 2, 11, 6);
  const link: Link = { garden: "g", role: "owner", person: null, serial: 1, ...over };
  return {
    context: { sql, now } as unknown as GardenContext,
    stored: { id: "g", plans } as unknown as StoredGarden,
    ...{ link, base: "/g/l/m/" },
  };
}

const titles = (events: readonly Event[], over: Partial<Link> = {}) =>
  inStore("coming", (sql) => {
    storeEvents(sql, events);
    const { week, weekAfter, later } = comingUp(view(over, sql));
    return [week, weekAfter, later].map((jobs) => jobs.map(({ title }) => title));
  });

describe("what comes up", () => {
  test("is seven days from the garden's own today, and the seven after, in order", async () => {
    const days = [14, 13, 7, 6, -1, 0].map((ahead) => on(`in ${ahead}`, plus(TODAY, ahead)));
    expect(await titles(days)).toEqual([["in 0", "in 6"], ["in 7", "in 13"], []]);
  });

  test("is the one job after them where both are empty, and nothing where there is none", async () => {
    const events = [on("later", plus(TODAY, 60)), on("next", plus(TODAY, 40))];
    expect(await titles(events)).toEqual([[], [], ["next"]]);
    expect(await titles([])).toEqual([[], [], []]);
  });

  test("is a helper's own and everybody's, and not the season's line", async () => {
    const events = [
      event({ key: "1", title: "mine", people: ["imre"] }),
      event({ key: "2", title: "theirs", people: ["oda"] }),
      event({ key: "3", title: "ours" }),
      event({ key: "4", title: "season", kind: "season" }),
    ];
    const imre = { role: "helper", person: "imre" } as const;
    expect((await titles(events, imre))[0]).toEqual(["mine", "ours"]);
  });

  test("is the tasks set for a reader, and sessions for the household", async () => {
    const events = [
      event({ title: "visit", set: "sessions" }),
      event({ title: "t", set: "tasks" }),
    ];
    expect((await titles(events, { role: "reader" }))[0]).toEqual(["t"]);
    expect((await titles(events))[0]).toEqual(["visit"]);
  });
});

describe("a job", () => {
  test("says its hours on the garden's clock, on the day a clock change skips an hour too", () => {
    const [from, to] = [Date.UTC(2027, 2, 14, 8), Date.UTC(2027, 2, 14, 16)];
    const job = jobSummaryOf(
      view(),
      event({ day: dayOrThrow(2027, 3, 14), when: { kind: "timed", from, to } }),
    );
    expect(job.when).toBe("Sunday 14 Mar, 01:00 to 10:00");
  });

  test("gives a reader their own text and no page to open", () => {
    expect(jobSummaryOf(view(), event({}))).toMatchObject({
      text: "For the household.",
      href: "/g/l/m/on/2027/beet/thin/1",
    });
    const reader = jobSummaryOf(view({ role: "reader" }), event({}));
    expect(reader).toMatchObject({ text: "For anybody.", href: null });
  });
});

describe("a task's part of its event's page", () => {
  const card = (from: Day, to: Day, over: Partial<TaskCard> = {}): TaskCard => ({
    ...{ id: "2027/beet/thin/1", title: "Thin beets", fullTitle: "Thin beets", bedRank: 0 },
    ...{ day: from, earliest: from, latest: to, answers: [], done: null },
    why: ["Shoots came on 10 Mar", "Sown by Imre"],
    ...over,
  });

  test("says both days of its window, or the one, and neither of what is done", () => {
    expect(partOf(card(TODAY, plus(TODAY, 9))).window).toBe(
      "Any day from 10 Mar to 19 Mar does no harm.",
    );
    expect(partOf(card(TODAY, TODAY)).window).toBe("Its day is 10 Mar.");
    const done = { day: TODAY, by: null };
    expect(partOf(card(TODAY, TODAY, { done })).window).toBe("");
  });

  test("says why then, nearest reason first", () => {
    expect(partOf(card(TODAY, TODAY))).toMatchObject({
      title: "Thin beets",
      why: ["Shoots came on 10 Mar", "Sown by Imre"],
    });
  });

  test("says where it stands now, if its event had it before", () => {
    const moved = card(TODAY, TODAY, { day: plus(TODAY, 2) });
    expect(movedPartOf(moved).now).toBe("Now on Friday 12 Mar.");
    expect(partOf(moved).now).toBe("");
    const done = { day: TODAY, by: null };
    expect(movedPartOf({ ...moved, done }).now).toBe("");
  });
});

test("until a build knows an answer, what is told of being done is left to the job's own parts", () => {
  const summary = {
    title: "✓ Thin beets",
    when: "Saturday",
    text: "Done 8 May, Oda.\nSlowly.\n✓ Sow peas. Done 8 May.",
    href: null,
  };
  expect(summaryBeforeBuild(summary)).toEqual({ ...summary, title: "Thin beets", text: "Slowly." });
});
