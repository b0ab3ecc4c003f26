import { expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { laddersOf } from "../../../src/views/paper/ladder.ts";
import { planOf, QUARRY, tellOf } from "../../gardens.ts";

const laddersIn = (text: string) =>
  laddersOf(
    tellOf(text, { on: "2027-04-01" }).scheduled.filter(({ task }) => task.rhythm === "timed"),
    planOf(text),
  );

test("twenty outs and ins are one ladder with a line a day, and what holds each day is said once", () => {
  const [ladder, ...others] = laddersIn(QUARRY);
  expect(others).toEqual([]);
  expect(ladder?.title).toBe("Harden off tomatoes");
  expect(ladder?.how).toBe("Water first. A cold or windy day: give the last hours again instead.");
  const rungs = ladder?.rungs ?? [];
  expect(new Set(rungs.map(({ day }) => isoOf(day))).size).toBe(rungs.length);
  expect(rungs[0]?.hours).toMatch(/^\d\d:\d\d to \d\d:\d\d$/);
  expect(rungs[0]?.how).toBe("Out for one hour, in full shade and out of the wind.");
  expect(rungs.at(-1)?.hours).toMatch(/^from /);
});

test("plants of the same days and hours share a ladder, others have their own", () => {
  const two = QUARRY.replace(
    "- tomato: 6 plants, from seed indoors",
    "- tomato: 6 plants, from seed indoors\n      - name: plums\n        crop: tomato\n        plants: 2\n        from: seed indoors",
  );
  expect(laddersIn(two).map(({ title }) => title)).toEqual(["Harden off plums and tomatoes"]);
  expect(laddersOf([], planOf(QUARRY))).toEqual([]);
});
