import { describe, expect, test } from "vitest";
import type { Day } from "../../../src/base/days/day.ts";
import { soakTasks } from "../../../src/engine/practices/soak.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { ending, toldWith } from "./garden.ts";
import { said, windows } from "./told.ts";

const given: Given = { acts: { start: "2027-06-03" } };
const beets = growingOf(QUARRY, "beet", given);
const soaked = (hours: readonly [number, number]) => {
  const { outdoors } = beets.crop;
  if (!outdoors) throw new Error("beets are sown outdoors");
  const soakHours = { value: hours, source: { kind: "common practice" } } as const;
  return { ...beets, crop: { ...beets.crop, outdoors: { ...outdoors, soakHours } } };
};

describe("soaking", () => {
  test("is on the day before seed is sown, in its evening, for its hours", () => {
    const tasks = soakTasks(soaked([8, 12]));
    expect(windows(tasks)).toEqual(["soak 06-02 06-02 06-02"]);
    expect(said(tasks[0])).toContain("water this evening, for 8 to 12 hours and no longer");
  });

  test("begins in the morning where it takes most of a day", () => {
    expect(said(soakTasks(soaked([24, 36]))[0])).toContain("this morning");
  });

  test("is nothing in soil so cold that full seed would rot", () => {
    const cold = growingOf(QUARRY, "beet", { acts: { start: "2027-04-20" } });
    expect(soakTasks({ ...soaked([8, 12]), anchors: cold.anchors })).toEqual([]);
  });

  test("is in the morning of the sowing where nobody is about the day before, if it is short", () => {
    const around = (day: Day) => day !== isoDay("2027-06-02");
    const [task] = soakTasks({ ...soaked([8, 12]), around });
    expect(windows(task ? [task] : [])).toEqual(["soak 06-03 06-03 06-03"]);
    expect(said(task)).toContain("this morning");
    expect(soakTasks({ ...soaked([12, 24]), around })).toEqual([]);
  });

  test("is told of peas in a garden, the day before they are sown", () => {
    const placed = toldWith(["pea: 1 row, sow 1 Jun"]);
    const before = ending(placed, "/things-to-have/soak");
    expect(before.day).toBe(ending(placed, "/sow-outdoors/1").day - 1);
  });

  test("is nothing for what is sown dry, is bought, or is in since before", () => {
    const wet = soaked([8, 12]);
    expect(soakTasks(beets)).toEqual([]);
    expect(soakTasks({ ...wet, planting: { ...wet.planting, start: "plants" } })).toEqual([]);
    const inSince = isoDay("2027-03-01");
    expect(soakTasks({ ...wet, planting: { ...wet.planting, inSince } })).toEqual([]);
  });
});
