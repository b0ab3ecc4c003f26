import { describe, expect, test } from "vitest";
import { dayOrThrow } from "../../../src/base/days/day.ts";
import { startOf } from "../../../src/base/days/instants.ts";
import { engine } from "../../../src/host/edge/core.ts";
import type { BuildInput, PlannedSeasons } from "../../../src/host/edge/engine.ts";
import { planOf, QUARRY } from "../../gardens.ts";

const plan = planOf(QUARRY);
const TODAY = dayOrThrow(2027, 5, 8);
const said = (text: string, line: number) => {
  const answers = { task: "2027/beet/thin/1", by: "oda" };
  const at = { file: "diary", line, column: 1 };
  return { day: TODAY, text, at, answers };
};

const input = (over: Partial<BuildInput> = {}): BuildInput => ({
  ...{ id: "quarry-lane", plans: [plan], published: {}, baseline: null, weather: null },
  instant: startOf(TODAY, plan.site.clock) + 3_600_000,
  ...over,
});

describe("a year as it is stored", () => {
  const built = engine.build(input());

  test("has a card and a publication for every task, and plain values alone", () => {
    expect(built.cards.length).toBeGreaterThan(50);
    for (const { id, day } of built.cards) expect(built.publishedState[id]?.day, id).toBe(day);
    expect(JSON.parse(JSON.stringify(built))).toEqual(built);
  });

  test("says of a task what its page shows", () => {
    const card = built.cards.find(({ id }) => id === "2027/beet/thin/1");
    expect(card).toMatchObject({
      title: "Thin beets",
      fullTitle: "Thin beets, Root bed",
      done: null,
    });
    expect(card?.answers.map(({ says }) => says)).toEqual(["done", "not yet", "left this year"]);
    expect(card?.why.length).toBeGreaterThan(0);
  });

  test("ends with the garden's day", () => {
    expect(built.until).toBeGreaterThan(input().instant);
    expect(built.until).toBeLessThanOrEqual(input().instant + 8 * 86_400_000);
  });

  test("is the same from its own baseline", () => {
    expect(engine.build(input({ baseline: built.year.baseline }))).toEqual(built);
  });

  test("says who did what is done by name, and shows the diary as it was understood", () => {
    const plans = [{ ...plan, diary: [...plan.diary, said("done", 7)] }];
    const after = engine.build(input({ plans }));
    const card = after.cards.find(({ id }) => id === "2027/beet/thin/1");
    expect(card?.done).toEqual({ day: TODAY, by: "Oda" });
    expect(after.diary[0]).toMatchObject({ line: 7, day: TODAY, text: "" });
    expect(after.diary[0]?.understood[0]).toContain("by Oda");
  });
});

test("what is worked out only when asked comes in words, HTML or a drawing, and null where there is none", () => {
  const { year, events } = engine.build(input());
  const planned: PlannedSeasons = (_, build) => build();
  expect(engine.frost(year, TODAY, -2).head.join(" ")).toContain("28 °F");
  expect(engine.room(year, TODAY, "root-bed")?.head.join(" ")).toContain("Root bed");
  expect(engine.room(year, TODAY, "nowhere")).toBeNull();
  for (const picture of ["frost", "soil", "season"] as const)
    expect(engine.draw(year, TODAY, picture)).toMatch(/^<svg /);
  const month = { month: dayOrThrow(2027, 6, 1), person: null, today: TODAY };
  expect(engine.month({ ...year, events }, month)).toContain("June 2027");
  expect(engine.review(year, { year: null, today: TODAY, planned })).toContain("2027");
  expect([
    engine.review(year, { year: 2027, today: TODAY, planned }) === null,
    engine.review(year, { year: 1999, today: TODAY, planned }),
  ]).toEqual([false, null]);
});
