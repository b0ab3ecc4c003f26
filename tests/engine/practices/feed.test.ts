import { describe, expect, test } from "vitest";
import { FEED } from "../../../src/engine/practices/feed.ts";
import { QUARRY } from "../../gardens.ts";
import { always, growingOf } from "../growth/growing.ts";
import { said, stepOf, tasksIn, titles, windowsOf } from "./told.ts";

const acts = { start: "2027-05-03", up: "2027-05-20" };
const sown = (name: string, airC: number, more = {}) =>
  growingOf(QUARRY, name, { acts, plan: { site: always(airC) }, ...more });

describe("a look for pale leaves", () => {
  const beets = sown("beet", 8);

  test("comes ten to fourteen days after they are up in soil still cold", () => {
    expect(windowsOf(FEED, beets)).toEqual(["pale 05-30 06-01 06-07"]);
    expect(titles(tasksIn(FEED, beets))).toEqual(["Look for pale leaves on beets [bed]"]);
    expect(said(tasksIn(FEED, beets)[0])).toContain("caution: Feed: no more than the label says.");
  });

  test("is none in warm soil, before they are up, nor for what was raised or stands the winter", () => {
    expect(windowsOf(FEED, sown("beet", 12))).toEqual([]);
    expect(windowsOf(FEED, sown("beet", 3, { acts: {} }))).toEqual([]);
    expect(stepOf(FEED, sown("tomato", 8), "pale")).toBeUndefined();
    expect(windowsOf(FEED, sown("garlic", 8))).toEqual([]);
  });
});
