import { describe, expect, test } from "vitest";
import type { Day } from "../../src/base/days/day.ts";
import { chooseEvents } from "../../src/views/calendar/choose-events.ts";
import type { Event } from "../../src/views/events/event.ts";
import { drawnFor, samples } from "../depth.ts";
import { gardenOf } from "../gardens.ts";
import { once } from "../once.ts";
import { dawn, toldAt } from "./feeds.ts";
import { anyTrade } from "./trade.ts";

const PEOPLE = `people:
  Imre: { gardens: Wed 18-19 and Sat 9-12, home: weekdays from 17:30 and weekends, leave out: lifting }
  Oda: { gardens: Sun 10-12, home: every day but Tue }
`;

/** The events of one set that a feed of these has, reminders aside. */
const feedOf = (events: readonly Event[], of: "household" | { person: string }) =>
  chooseEvents(events, {
    of,
    kind: of === "household" ? "tasks" : "sessions",
    bed: null,
    quiet: false,
    reader: false,
  });

/** How many events a person has on each day that has any, carrying out and bringing in apart. */
function aDay(events: readonly Event[]): readonly number[] {
  const days = new Map<Day, number>();
  for (const { day, kind } of events) if (kind !== "rung") days.set(day, (days.get(day) ?? 0) + 1);
  return [...days.values()];
}

const GARDENS = samples(6, 3);
const gardens = once(() => {
  const roll = drawnFor(61);
  return Array.from({ length: GARDENS }, () => `${anyTrade(roll, 60, 3)}${PEOPLE}`).map((text) =>
    toldAt(gardenOf(text), dawn("2027-01-01")),
  );
});

describe("a garden of sixty plantings of twenty crops", () => {
  test("has fewer than 300 events among its tasks", () => {
    const most = Math.max(...gardens().map(({ events }) => feedOf(events, "household").length));
    expect(most).toBeLessThan(300);
    expect(most).toBeGreaterThan(100);
  });

  test.each(["imre", "oda"])(
    "gives %s at most four events a day on nine days of ten, and never more than six",
    (person) => {
      const days = gardens().flatMap(({ events }) => aDay(feedOf(events, { person })));
      expect(days.length).toBeGreaterThan(GARDENS * 30);
      expect(days.filter((n) => n > 4).length / days.length).toBeLessThanOrEqual(0.1);
      expect(Math.max(...days)).toBeLessThanOrEqual(6);
    },
  );
});
