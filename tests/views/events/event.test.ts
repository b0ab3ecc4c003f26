import { describe, expect, test } from "vitest";
import { EVENING_BEFORE, eventFor } from "../../../src/views/events/event.ts";
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

  test("rings at six the evening before where it is all day", () => {
    expect(24 - EVENING_BEFORE / 60).toBe(18);
  });
});
