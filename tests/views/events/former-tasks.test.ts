import { expect, test } from "vitest";
import type { Event } from "../../../src/views/events/event.ts";
import { updateFormerTasks } from "../../../src/views/events/former-tasks.ts";

const event = (key: string, ...tasks: readonly string[]) => ({ key, tasks }) as unknown as Event;
const DAY = 86_400_000;

test("only what an event has lost is remembered, with what it lost earlier", () => {
  const first = updateFormerTasks(
    {},
    {
      was: [event("a", "1", "2"), event("b", "3")],
      is: [event("a", "1"), event("b", "3")],
      now: 0,
    },
  );
  expect(first).toEqual({ a: { tasks: ["2"], at: 0 } });
  const next = updateFormerTasks(first, { was: [event("a", "1")], is: [], now: DAY });
  expect(next).toEqual({ a: { tasks: ["2", "1"], at: DAY } });
});

test("what ended two weeks ago is forgotten", () => {
  const had = { a: { tasks: ["1"], at: 0 } };
  expect(updateFormerTasks(had, { was: [], is: [], now: 13 * DAY })).toEqual(had);
  expect(updateFormerTasks(had, { was: [], is: [], now: 14 * DAY })).toEqual({});
});
