import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { ALONE, tellOf } from "../../gardens.ts";
import { said } from "./told.ts";

const told = (crops: string, bed = "") =>
  tellOf(
    `${ALONE}  T:\n    is: 8 x 4 ft\n${bed}    crops:\n${crops
      .split("; ")
      .map((crop) => `      - ${crop}\n`)
      .join("")}`,
    { on: "2027-01-01" },
  )
    .scheduled.filter(({ task }) => task.practice === "cloches")
    .toSorted((a, b) => a.day - b.day)
    .map(({ task, day }) => ({ id: task.id, day: isoOf(day), text: said(task) }));

describe("cloches", () => {
  test("stand two weeks before what is sown under them, and come off when frost is over", () => {
    const [on, off, ...more] = told("turnip: 1 row, under cloches");
    expect(more).toEqual([]);
    expect(on?.id).toBe("2027/turnip/cloches/on");
    expect(off?.id).toBe("2027/turnip/cloches/off");
    expect(on?.text).toContain("warm the soil for turnips");
    expect(on?.text).toContain("caution: Open them on sunny days");
    expect((off?.day ?? "") > "2027-05-05").toBe(true);
  });

  test("of a whole bed are one job for all that stands in it", () => {
    const all = told("turnip: 1 row; head lettuce: 6 plants", "    cover: cloches\n");
    expect(all.map(({ id }) => id)).toEqual(["2027/bed/t/cloches/on", "2027/bed/t/cloches/off"]);
    expect(all[0]?.text).toContain("head lettuce and turnips");
  });

  test("go over what was sown in late summer before the first frost", () => {
    const [on, ...more] = told("corn salad: 1 row, sow 20 Aug, under cloches");
    expect(more).toEqual([]);
    expect(on?.day).toBe("2027-09-22");
    expect(on?.text).toContain("First frost is usually about 2 Oct");
  });

  test("are told of nothing that goes in when it is mild, that drops them, or that is in already", () => {
    expect(told("bush beans: 1 row, not before 20 Jun, sow 20 Jun")).toEqual([]);
    expect(told("turnip: 1 row, under cloches, without cloches")).toEqual([]);
    expect(told("kale: 3 plants, under cloches, in since 1 Mar 2027")).toEqual([]);
  });
});
