import { expect, test } from "vitest";
import { before } from "../../../src/views/events/before.ts";
import type { Event } from "../../../src/views/events/event.ts";

const event = (key: string, ...tasks: readonly string[]) => ({ key, tasks }) as unknown as Event;
const DAY = 86_400_000;

test("only what an event has lost is remembered, with what it lost earlier", () => {
  const first = before(
    {},
    {
      was: [event("a", "1", "2"), event("b", "3")],
      is: [event("a", "1"), event("b", "3")],
      now: 0,
    },
  );
  expect(first).toEqual({ a: { tasks: ["2"], at: 0 } });
  const next = before(first, { was: [event("a", "1")], is: [], now: DAY });
  expect(next).toEqual({ a: { tasks: ["2", "1"], at: DAY } });
});

test("what ended two weeks ago is forgotten", () => {
  const had = { a: { tasks: ["1"], at: 0 } };
  expect(before(had, { was: [], is: [], now: 13 * DAY })).toEqual(had);
  expect(before(had, { was: [], is: [], now: 14 * DAY })).toEqual({});
});
