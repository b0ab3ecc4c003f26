import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Schedule, writeFeed } from "../../src/app/index.ts";
import { chooseEvents, type FeedChoice } from "../../src/app/records.ts";
import type { Day } from "../../src/base/days/day.ts";
import { dayAt, startOf } from "../../src/base/days/instants.ts";
import type { DiaryLine, Plan } from "../../src/garden/model/plan.ts";
import { ringsAt } from "../../src/views/calendar/reminders.ts";
import type { Event } from "../../src/views/events/event.ts";
import { ALONE, isoDay, planOf, QUARRY, tellOf } from "../gardens.ts";
import { once } from "../once.ts";
import { readStrictly, type StrictEvent } from "../strict.ts";
import { toldAt } from "./feeds.ts";

const at = (path: string) => readFileSync(new URL(path, import.meta.url), "utf8");
const GOLDEN = readdirSync(new URL("../golden/gardens/", import.meta.url))
  .filter((name) => name.endsWith(".yaml"))
  .map((name): readonly [string, string] => [name, at(`../golden/gardens/${name}`)]);
const LANE = at("../../plans/quarry-lane/2027.yaml");

/** Every garden that stands in files, and the canonical one with people and without. */
const GARDENS: readonly (readonly [name: string, text: string])[] = [
  ["quarry", QUARRY],
  ["nobody named", ALONE],
  ["first steps", at("../../plans/first-steps/2027.yaml")],
  ["quarry lane", LANE],
  ...GOLDEN,
];

/** Every feed that a link of the garden offers: the household's, and each person's. */
function choicesOf(plan: Plan): readonly FeedChoice[] {
  const whose = ["household" as const, ...plan.people.map(({ key }) => ({ person: key }))];
  return whose.flatMap((of) =>
    (["sessions", "tasks"] as const).map((kind): FeedChoice => {
      return { of, kind, bed: null, quiet: false, reader: false };
    }),
  );
}

type Feed = {
  readonly plan: Plan;
  readonly events: readonly Event[];
  readonly choice: FeedChoice;
  readonly now: number;
};

function feedOf({ plan, events, choice, now }: Feed): readonly StrictEvent[] {
  const { text } = writeFeed({
    ...{ garden: "g", name: plan.name, events, choice, link: null },
    ...{ clock: plan.site.clock, cause: now, now, ledger: null },
  });
  return readStrictly(new TextEncoder().encode(text)).events;
}

/** The instants [ms] at which a feed rings, as a phone in the garden hears it. */
function ringing(events: readonly StrictEvent[], clock: string): readonly number[] {
  return events.flatMap(({ start, alarm }) => {
    if (alarm === null) return [];
    const begins = start.kind === "instant" ? start.at : startOf(start.day as Day, clock);
    return [begins - alarm * 1000];
  });
}

function mostInADay(instants: readonly number[], clock: string): number {
  const days = new Map<Day, number>();
  for (const instant of instants) {
    const day = dayAt(instant, clock);
    days.set(day, (days.get(day) ?? 0) + 1);
  }
  return Math.max(0, ...days.values());
}

describe.each(GARDENS)("%s", (_, text) => {
  const plan = planOf(text);
  const { clock } = plan.site;
  const told = once((): Schedule => tellOf(text, { on: `${plan.year}-01-05` }));

  test("rings at most three times on a day in every feed", () => {
    const now = startOf(isoDay(`${plan.year}-01-05`), clock);
    const most = choicesOf(plan).map((choice) =>
      mostInADay(ringing(feedOf({ plan, events: told().events, choice, now }), clock), clock),
    );
    expect(Math.max(...most)).toBeLessThanOrEqual(3);
    expect(Math.max(...most)).toBeGreaterThan(1);
  });

  test("subscribed to in November, rings of nothing that is over", () => {
    const now = startOf(isoDay(`${plan.year}-11-10`), clock) + 9 * 3_600_000;
    const { events } = tellOf(text, { on: `${plan.year}-11-10` });
    for (const choice of choicesOf(plan)) {
      const rings = ringing(feedOf({ plan, events, choice, now }), clock);
      expect(rings.filter((instant) => instant <= now)).toEqual([]);
    }
    const passed = events.filter((event) => (ringsAt(event, clock) ?? now) < now);
    expect(passed.length).toBeGreaterThan(10);
  });
});

test("many a day would ring more often", () => {
  const { events } = tellOf(LANE, { on: "2027-01-05" });
  const { clock } = planOf(LANE).site;
  const wanted = chooseEvents(events, {
    ...{ of: "household", kind: "tasks", bed: null, quiet: false, reader: false },
  }).flatMap((event) => ringsAt(event, clock) ?? []);
  expect(mostInADay(wanted, clock)).toBeGreaterThan(6);
});

/** Kinds of what nobody does: it is told and passes. */
const ONLY_TOLD: readonly Event["kind"][] = ["warning", "away", "season"];

describe("a year of which everything is done on its day", () => {
  const plan = planOf(LANE);
  const { clock } = plan.site;
  const months = ["2027-04-20", "2027-05-31", "2027-07-31", "2027-10-31", "2027-12-31"];

  /** The garden told five times in the year, all that was due by then answered with done. */
  const year = once(() => {
    let published: Schedule["publishedState"] = {};
    const lines = new Map<string, DiaryLine>();
    return months.map((month) => {
      const now = startOf(isoDay(month), clock);
      const told = () =>
        toldAt(
          { id: "quarry-lane", plans: [{ ...plan, diary: [...plan.diary, ...lines.values()] }] },
          now,
          published,
        );
      const open = told();
      published = open.publishedState;
      for (const { task, day, people, done } of open.scheduled)
        if (!done && day <= dayAt(now, clock) && task.rhythm !== "warning")
          lines.set(task.id, {
            ...{ day, text: "done", at: { file: "answers", line: 1, column: 1 } },
            answers: { task: task.id, by: people[0] ?? null },
          });
      const after = told();
      published = after.publishedState;
      return { now, before: open.events, after: after.events };
    });
  });

  test("has hundreds of done jobs, and none looks open in any feed, or rings", () => {
    const looksOpen: string[] = [];
    let seen = 0;
    for (const { now, after } of year())
      for (const choice of choicesOf(plan))
        for (const event of feedOf({ plan, events: after, choice, now })) {
          const begins =
            event.start.kind === "date" ? event.start.day : dayAt(event.start.at, clock);
          const own = after.find(({ title, day }) => title === event.summary && day === begins);
          if (begins > dayAt(now, clock) || !own || ONLY_TOLD.includes(own.kind)) continue;
          seen += 1;
          if (!event.summary.startsWith("✓ ") || event.alarm !== null)
            looksOpen.push(`${begins} ${event.summary}`);
        }
    expect(seen).toBeGreaterThan(1000);
    expect([...new Set(looksOpen)]).toEqual([]);
  });

  test("keeps every event that was done under its key, of its kind, at its hours", () => {
    const moved: string[] = [];
    let kept = 0;
    for (const { now, before, after } of year()) {
      const found = new Map(after.map((event) => [`${event.set} ${event.key}`, event]));
      for (const event of before.filter(({ day }) => day <= dayAt(now, clock))) {
        const is = found.get(`${event.set} ${event.key}`);
        const same =
          is?.kind === event.kind && JSON.stringify(is.when) === JSON.stringify(event.when);
        if (same) kept += 1;
        // What is sown already asks for no soaking.
        else if (!event.tasks.some((id) => id.endsWith("/soak")))
          moved.push(`${event.set} ${event.key} ${event.title}`);
      }
    }
    expect(kept).toBeGreaterThan(500);
    expect([...new Set(moved)]).toEqual([]);
  });
});
