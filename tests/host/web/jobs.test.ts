import { describe, expect, test } from "vitest";
import { type Day, dayOrThrow, plus } from "../../../src/base/days/day.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import type { Link } from "../../../src/host/links/segment.ts";
import type { StoredGarden } from "../../../src/host/store/gardens.ts";
import type { AppContext } from "../../../src/host/web/app-context.ts";
import { buildScheduleNow, type GardenView } from "../../../src/host/web/garden-request.ts";
import { comingUp, jobSummaryOf, movedPartOf, partOf } from "../../../src/host/web/jobs.ts";
import { chooseEvents } from "../../../src/views/calendar/choose-events.ts";
import type { Event } from "../../../src/views/events/event.ts";

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
    ...over,
  };
}

const on = (title: string, day: Day) => event({ title, day, when: { kind: "all day", day } });

function telling(events: readonly Event[], over: Partial<Link> = {}): GardenView {
  const people = [{ key: "imre", name: "Imre" }];
  const plan = { site: { clock: CLOCK }, measures: "metric", people } as unknown as Plan;
  const stored = { id: "g", plans: [{ plan }], lines: [], standing: {} } as unknown as StoredGarden;
  const core = {
    choose: chooseEvents,
    horizonAt: () => null,
    tell: () => ({ events, placed: [], standing: {} }),
  };
  const now = () => Date.UTC(2027, 2, 11, 6);
  const shell = { core, now } as unknown as AppContext;
  const link: Link = { garden: "g", role: "owner", person: null, serial: 1, ...over };
  return { context: shell, stored, link, base: "/g/l/m/" };
}

const titles = (events: readonly Event[], over: Partial<Link> = {}) => {
  const at = telling(events, over);
  const { week, weekAfter, later } = comingUp(at, buildScheduleNow(at).events);
  return [week, weekAfter, later].map((jobs) => jobs.map(({ title }) => title));
};

describe("what comes up", () => {
  test("is seven days from the garden's own today, and the seven after, in order", () => {
    const days = [14, 13, 7, 6, -1, 0].map((ahead) => on(`in ${ahead}`, plus(TODAY, ahead)));
    expect(titles(days)).toEqual([["in 0", "in 6"], ["in 7", "in 13"], []]);
  });

  test("is the one job after them where both are empty, and nothing where there is none", () => {
    const events = [on("later", plus(TODAY, 60)), on("next", plus(TODAY, 40))];
    expect(titles(events)).toEqual([[], [], ["next"]]);
    expect(titles([])).toEqual([[], [], []]);
  });

  test("is a helper's own and everybody's, and not the season's line", () => {
    const events = [
      event({ title: "mine", people: ["imre"] }),
      event({ title: "theirs", people: ["oda"] }),
      event({ title: "ours" }),
      event({ title: "season", kind: "season" }),
    ];
    const imre = { role: "helper", person: "imre" } as const;
    expect(titles(events, imre)[0]).toEqual(["mine", "ours"]);
  });

  test("is the tasks set for a reader, and sessions for the household", () => {
    const events = [
      event({ title: "visit", set: "sessions" }),
      event({ title: "t", set: "tasks" }),
    ];
    expect(titles(events, { role: "reader" })[0]).toEqual(["t"]);
    expect(titles(events)[0]).toEqual(["visit"]);
  });
});

describe("a job", () => {
  test("says its hours on the garden's clock, on the day a clock change skips an hour too", () => {
    const [from, to] = [Date.UTC(2027, 2, 14, 8), Date.UTC(2027, 2, 14, 16)];
    const job = jobSummaryOf(
      telling([]),
      event({ day: dayOrThrow(2027, 3, 14), when: { kind: "timed", from, to } }),
    );
    expect(job.when).toBe("Sunday 14 Mar, 01:00 to 10:00");
  });

  test("gives a reader their own text and no page to open", () => {
    expect(jobSummaryOf(telling([]), event({}))).toMatchObject({
      text: "For the household.",
      href: "/g/l/m/on/2027/beet/thin/1",
    });
    const reader = jobSummaryOf(telling([], { role: "reader" }), event({}));
    expect(reader).toMatchObject({ text: "For anybody.", href: null });
  });
});

describe("a task's part of its event's page", () => {
  const because = () => [
    ["Shoots came on ", { day: TODAY }],
    ["Sown by ", { person: "imre" }],
  ];
  const task = { title: { verb: "Thin", object: "beets" }, because };
  const placed = (from: Day, to: Day) =>
    ({ task, window: { earliest: from, latest: to } }) as unknown as ScheduledTask;

  test("says both days of its window, or the one", () => {
    expect(partOf(telling([]), placed(TODAY, plus(TODAY, 9))).window).toBe(
      "Any day from 10 Mar to 19 Mar does no harm.",
    );
    expect(partOf(telling([]), placed(TODAY, TODAY)).window).toBe("Its day is 10 Mar.");
  });

  test("says why then, nearest reason first, in the household's words", () => {
    expect(partOf(telling([]), placed(TODAY, TODAY))).toMatchObject({
      title: "Thin beets",
      why: ["Shoots came on 10 Mar", "Sown by Imre"],
    });
  });

  test("says where it stands now, if its event had it before", () => {
    const moved = { ...placed(TODAY, TODAY), day: plus(TODAY, 2) } as ScheduledTask;
    expect(movedPartOf(telling([]), moved).now).toBe("Now on Friday 12 Mar.");
    expect(partOf(telling([]), moved).now).toBe("");
  });
});
