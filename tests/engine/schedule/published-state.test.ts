import { describe, expect, test } from "vitest";
import { how, sign } from "../../../src/engine/practices/sentence.ts";
import {
  daysNamed,
  publishedStateOf,
  withPublishedDays,
} from "../../../src/engine/schedule/published-state.ts";
import { inDays, placedOf, SATURDAY, windowOf } from "./given.ts";

describe("days that sentences name", () => {
  const say = [
    how("Up about ", { day: SATURDAY }, ", sow again by ", { day: inDays(9) }, "."),
    sign("Green shows."),
  ];

  test("are found in order", () => {
    expect(daysNamed(say)).toEqual([SATURDAY, inDays(9)]);
  });

  test("are none in sentences without a day", () => {
    expect(daysNamed([sign("Green shows.")])).toEqual([]);
  });

  test("keep what was told where each has moved by less than three days", () => {
    const kept = withPublishedDays(say, [inDays(2), inDays(8)]);
    expect(daysNamed(kept)).toEqual([inDays(2), inDays(8)]);
  });

  test("are all their own again where one has moved by three", () => {
    expect(withPublishedDays(say, [inDays(3), inDays(9)])).toEqual(say);
  });

  test("are their own where fewer were told before", () => {
    expect(withPublishedDays(say, [SATURDAY])).toEqual(say);
  });

  test("keep their weekday where they are told with one", () => {
    const [kept] = withPublishedDays([how({ day: SATURDAY, weekday: true }, ".")], [inDays(1)]);
    expect(kept?.pieces[0]).toEqual({ day: inDays(1), weekday: true });
  });
});

test("what is kept of a telling is each task's day, window, people, days it names and whether it led", () => {
  const placed = placedOf(
    { people: ["oda"] },
    { say: [how("Up about ", { day: inDays(3) }, ".")] },
  );
  const kept = publishedStateOf([placed], new Set(["2027/beet/thin/1"]));
  expect(kept["2027/beet/thin/1"]).toEqual({
    day: SATURDAY,
    window: windowOf(7, 7),
    people: ["oda"],
    days: [inDays(3)],
    lead: true,
    note: null,
  });
  expect(publishedStateOf([placed], new Set())["2027/beet/thin/1"]?.lead).toBe(false);
});
