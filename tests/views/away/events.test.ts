import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { chooseEvents, type FeedChoice } from "../../../src/views/calendar/choose-events.ts";
import type { Event } from "../../../src/views/events/event.ts";
import { QUARRY, tellOf } from "../../gardens.ts";

const AWAY = QUARRY.replace(
  "beds:\n",
  "away:\n  - Oda, 19 to 23 Jun\n  - everybody, 1 to 7 Aug\nbeds:\n",
);
const { events } = tellOf(AWAY, { on: "2027-05-01" });
const about = (some: readonly Event[]) =>
  some
    .filter(({ key }) => key.includes("/away/"))
    .map(({ title, day, people }) => `${isoOf(day)} ${title} (${people.join(", ")})`);
const feed = (choice: Partial<FeedChoice>) =>
  chooseEvents(events, {
    of: "household",
    kind: "sessions",
    bed: null,
    quiet: false,
    reader: false,
    ...choice,
  });

describe("an absence in the calendar", () => {
  test("is told the day before and the day after, to those who go, with the neighbour's list where nobody is left", () => {
    expect(about(events)).toEqual([
      "2027-06-18 Before you go on 19 June (oda)",
      "2027-06-24 When you're back, after 23 June (oda)",
      "2027-07-31 Before you go on 1 Aug ()",
      "2027-07-31 For the neighbour, 1 to 7 Aug ()",
      "2027-08-08 When you're back, after 7 Aug ()",
    ]);
  });

  test("is nobody else's, and in no reader's feed", () => {
    expect(about(feed({ of: { person: "imre" } }))).toHaveLength(3);
    expect(about(feed({ of: { person: "oda" } }))).toHaveLength(5);
    expect(about(feed({ kind: "tasks" }))).toEqual([]);
    expect(about(feed({ kind: "tasks", reader: true }))).toEqual([]);
    expect(
      events.filter(({ key }) => key.includes("/away/")).every((each) => each.readerText === ""),
    ).toBe(true);
  });

  test("is told of every absence that was not over when the calendar begins, and keeps its key", () => {
    const later = tellOf(AWAY, { on: "2027-09-01" }).events;
    expect(about(later)).toEqual(about(events));
    expect(
      tellOf(QUARRY, { on: "2027-05-01" }).events.some(({ key }) => key.includes("/away/")),
    ).toBe(false);
  });
});
