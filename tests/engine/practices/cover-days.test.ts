import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import { flowerMilestone } from "../../../src/engine/growth/flower.ts";
import { isReached } from "../../../src/engine/growth/milestones.ts";
import { dayInPlace, inTime } from "../../../src/engine/practices/cover-days.ts";
import { window } from "../../../src/engine/practices/task.ts";
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

test("a cover that comes off before the first flower does so by then, and not for bees", () => {
  const text = QUARRY.replace("      - beet: 2 rows", "      - sunflower: 4 plants");
  const context = growingOf(text, "sunflower", { acts: { start: "2027-05-29", up: "2027-06-16" } });
  const flower = flowerMilestone(context);
  if (!isReached(flower)) throw new Error("no flower");
  const on = must(dayInPlace(context));
  const due = plus(flower.early, -5);
  const off = { ...on, window: window(due, due, plus(flower.early, 8)) };
  const period = { context, against: "birds", thing: "net", suffix: "", offSign: null } as const;
  const [net] = inTime({ ...period, on, off });
  expect(net?.forBees).toBe(false);
  expect(net?.off?.window).toMatchObject({ due, latest: flower.early });
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
