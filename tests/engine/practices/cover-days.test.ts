import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { dayInPlace, inTime } from "../../../src/engine/practices/cover-days.ts";
import { QUARRY } from "../../gardens.ts";
import { must } from "../../sources/ours.ts";
import { growingOf } from "../growth/growing.ts";

const beets = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03", up: "2027-05-20" } });

describe("the day a crop goes into its place", () => {
  test("is that of its sowing, or of its setting out; none before that is known", () => {
    expect(isoOf(must(dayInPlace(beets)).window.due)).toBe("2027-05-03");
    const acts = { start: "2027-03-20", "set out": "2027-05-28" };
    const tomatoes = growingOf(QUARRY, "tomato", { acts });
    expect(isoOf(must(dayInPlace(tomatoes)).stage.day)).toBe("2027-05-28");
    expect(dayInPlace(growingOf(QUARRY, "beet"))).toBeNull();
  });
});

test("a cover that bees do not end keeps the end it has", () => {
  const on = must(dayInPlace(beets));
  const period = {
    context: beets,
    against: null,
    thing: "net",
    suffix: "",
    offSign: null,
  } as const;
  expect(inTime({ ...period, on, off: null })).toEqual([
    { ...period, on, off: null, forBees: false },
  ]);
});
