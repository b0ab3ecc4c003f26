import { describe, expect, test } from "vitest";
import { type Day, dayOrThrow, plus } from "../../../src/base/days/day.ts";
import type { Link } from "../../../src/host/links/segment.ts";
import { storeEvents } from "../../../src/host/store/events.ts";
import type { SqlStore } from "../../../src/host/store/sql.ts";
import { chosenBetween, dayAhead, daysAhead, setOf } from "../../../src/host/web/days-ahead.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { inStore } from "../in-store.ts";
import { eventOn, viewOf } from "./viewed.ts";

const TODAY = dayOrThrow(2027, 3, 10);
const IMRE = { role: "helper", person: "imre" } as const;

const on = (title: string, day: Day, over: Partial<Event> = {}) =>
  eventOn(day, { key: title, title, ...over });

const view = (over: Partial<Link> = {}, sql: SqlStore | null = null) => viewOf(TODAY, over, sql);

describe("the days ahead", () => {
  test("are seven from tomorrow on, and the seven after, each with what is told of it", async () => {
    const days = [15, 14, 8, 7, 1, 0].map((ahead) => on(`in ${ahead}`, plus(TODAY, ahead)));
    const weeks = await inStore("ahead", (sql) => {
      storeEvents(sql, days);
      return daysAhead(view({}, sql));
    });
    expect(
      weeks.map((week) => week.map(({ jobs }) => jobs.map(({ title }) => title).join())),
    ).toEqual([
      ["in 1", "", "", "", "", "", "in 7"],
      ["in 8", "", "", "", "", "", "in 14"],
    ]);
    expect(weeks[0]?.[0]).toMatchObject({ weekday: "Thu", date: "11 Mar" });
  });

  test("name whose a job is where it is another's, and nobody where it is one's own", () => {
    const events = [
      on("mine", TODAY, { people: ["imre"] }),
      on("theirs", TODAY, { people: ["oda"] }),
      on("ours", TODAY),
    ];
    const facts = (over: Partial<Link>) =>
      dayAhead(view(over), TODAY, events).jobs.map((job) => job.facts.join());
    expect(facts(IMRE)).toEqual(["", "Oda", ""]);
    expect(facts({})).toEqual(["Imre", "Oda", ""]);
  });

  test("say hours on the garden's clock, on the day a clock change skips an hour too", () => {
    const [from, to] = [Date.UTC(2027, 2, 14, 8), Date.UTC(2027, 2, 14, 16)];
    const day = dayOrThrow(2027, 3, 14);
    const event = on("visit", day, { when: { kind: "timed", from, to } });
    expect(dayAhead(view(), day, [event]).jobs[0]?.facts).toEqual(["01:00 to 10:00"]);
  });

  test("give a reader neither people nor hours nor pages", () => {
    const [from, to] = [Date.UTC(2027, 2, 10, 8), Date.UTC(2027, 2, 10, 9)];
    const event = on("visit", TODAY, { people: ["imre"], when: { kind: "timed", from, to } });
    const [job] = dayAhead(view({ role: "reader" }), TODAY, [event]).jobs;
    expect(job).toEqual({ title: "visit", href: null, facts: [] });
  });
});

describe("the events of a link", () => {
  const chosen = (over: Partial<Link>, person: string | null) =>
    inStore("chosen", (sql) => {
      storeEvents(sql, [
        on("mine", TODAY, { people: ["imre"], set: "sessions" }),
        on("theirs", TODAY, { people: ["oda"], set: "sessions" }),
        on("ours", TODAY),
        on("task", TODAY, { set: "tasks" }),
        on("season", TODAY, { kind: "season" }),
      ]);
      const set = setOf(view(over));
      const range = { from: TODAY, before: plus(TODAY, 1), set };
      return chosenBetween(view(over, sql), range, person).map(({ title }) => title);
    });

  test("are one person's and everybody's, or the household's, and never the season's line", async () => {
    expect(await chosen(IMRE, "imre")).toEqual(["mine", "ours"]);
    expect(await chosen(IMRE, null)).toEqual(["mine", "ours", "theirs"]);
  });

  test("are tasks alone for a reader, whoever is asked about", async () => {
    expect(await chosen({ role: "reader" }, null)).toEqual(["ours", "task"]);
  });
});
