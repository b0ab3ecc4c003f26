import { describe, expect, test } from "vitest";
import { EVENING_BEFORE } from "../../../src/views/events/event.ts";
import { eventFor } from "../../../src/views/events/event-for.ts";
import { placedOf, SATURDAY } from "../../engine/schedule/given.ts";

const PARTICULARS = {
  key: "2027/beet/thin/1",
  set: "both",
  kind: "task",
  title: "Thin beets",
  text: "Thin.",
  readerText: "Thin.",
  when: { kind: "all day", day: SATURDAY },
  day: SATURDAY,
  busy: false,
  remindMinutesBefore: EVENING_BEFORE,
} as const;

describe("an event", () => {
  test("tells its tasks in their order, and people, beds and practices once, sorted", () => {
    const two = placedOf(
      { people: ["oda", "imre"] },
      { id: "b", bed: "south-bed", practice: "weed" },
    );
    const one = placedOf({ people: ["imre"] }, { id: "a", bed: "root-bed", practice: "thin" });
    expect(eventFor([two, one, one], PARTICULARS)).toMatchObject({
      ...PARTICULARS,
      tasks: ["b", "a", "a"],
      people: ["imre", "oda"],
      beds: ["root-bed", "south-bed"],
      categories: ["thin", "weed"],
    });
  });

  test("of no task touches nobody and nothing", () => {
    const { tasks, people, beds, categories } = eventFor([], PARTICULARS);
    expect([tasks, people, beds, categories]).toEqual([[], [], [], []]);
  });

  test("weighs what its worst open task would cost, and a warning more than any work", () => {
    const done = { day: SATURDAY, by: null };
    const worst = placedOf({}, { harm: "tonight" });
    const weight = (group: Parameters<typeof eventFor>[0], kind: "task" | "warning" = "task") =>
      eventFor(group, { ...PARTICULARS, kind }).weight;
    const [one, two] = [weight([placedOf(), worst]), weight([placedOf(), { ...worst, done }])];
    expect(one).toBeGreaterThan(two);
    expect(weight([], "warning")).toBeGreaterThan(one);
  });

  test("rings until all is done", () => {
    const done = placedOf({ done: { day: SATURDAY, by: null } });
    const rings = (group: Parameters<typeof eventFor>[0]) =>
      eventFor(group, PARTICULARS).remindMinutesBefore;
    expect([rings([]), rings([done, placedOf()]), rings([done])]).toEqual([360, 360, null]);
  });
});
