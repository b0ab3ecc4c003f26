import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { chooseEvents, type FeedChoice } from "../../src/app/feed.ts";
import { type Day, isoOf } from "../../src/base/days/day.ts";
import { planOf, tellOf } from "../gardens.ts";

const GARDENS = ["cold", "maritime", "mediterranean", "southern", "very-short"];
const read = (path: string) => readFileSync(join(import.meta.dirname, path), "utf8");
const texts: readonly (readonly [string, string])[] = [
  ["the demo", read("../../plans/quarry-lane/2027.yaml")],
  ...GARDENS.map((name) => [name, read(`../golden/gardens/${name}.yaml`)] as const),
];

/** The same people at home, without any gardening hours. */
const withoutHours = (text: string) =>
  text.replace(/gardens: [^,}]+(?<end>[,}])/g, (_, end: string) => (end === "}" ? "}" : ""));

/** The most events that a phone gets in a month. Source: the aim of the calendar; fewer than one a day. */
const MOST_A_MONTH = 25;

function fullestMonth(days: readonly Day[]): number {
  const months = new Map<string, number>();
  for (const day of days) {
    const month = isoOf(day).slice(0, 7);
    months.set(month, (months.get(month) ?? 0) + 1);
  }
  return Math.max(...months.values());
}

describe.each(texts)("%s", (_, written) => {
  describe.each([
    ["with hours", written],
    ["without hours", withoutHours(written)],
  ])("%s", (__, text) => {
    const { events, scheduled, year } = tellOf(text, { on: "2027-01-02" });
    const { people } = planOf(text);
    const feed = (choice: Pick<FeedChoice, "of" | "kind">) =>
      chooseEvents(events, { bed: null, quiet: false, reader: false, ...choice });

    test("each person's phone gets no more events in its fullest month than it should", () => {
      expect(people.length).toBeGreaterThan(1);
      for (const { key } of people) {
        const own = feed({ of: { person: key }, kind: "sessions" });
        expect(fullestMonth(own.map(({ day }) => day)), key).toBeLessThanOrEqual(MOST_A_MONTH);
      }
    });

    test("no job is lost: each stands in one event of each set, and its day is the event's", () => {
      const shown = scheduled.filter(({ day }) => day >= year.horizon.firstDay);
      const days = new Map(shown.map(({ task, day }) => [task.id, day]));
      for (const kind of ["sessions", "tasks"] as const) {
        const all = feed({ of: "household", kind });
        expect(all.flatMap(({ tasks }) => tasks).toSorted()).toEqual([...days.keys()].toSorted());
        for (const { tasks, day, kind: is } of all)
          if (is !== "open") for (const id of tasks) expect(days.get(id), id).toBe(day);
      }
    });

    test("an event of many jobs can be read, and names each of them or counts them", () => {
      for (const event of feed({ of: "household", kind: "sessions" })) {
        expect(event.text.length, event.text).toBeLessThanOrEqual(900);
        expect(event.title.length, event.title).toBeLessThanOrEqual(50);
        expect(event.text.trim(), event.title).not.toBe("");
      }
    });

    test("a day has one event of hardening off for everybody", () => {
      const rungs = feed({ of: "household", kind: "tasks" }).filter(({ kind }) => kind === "rung");
      expect(new Set(rungs.map(({ day }) => day)).size).toBe(rungs.length);
    });
  });
});
