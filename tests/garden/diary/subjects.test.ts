import { describe, expect, it } from "vitest";
import { dayOrThrow, plus } from "../../../src/base/days/day.ts";
import {
  bedNamed,
  overwinters,
  sayPlanting,
  subjectOf,
} from "../../../src/garden/diary/subjects.ts";
import type { Planting } from "../../../src/garden/model/plan.ts";
import { seasonOf } from "../../../src/garden/model/season.ts";
import { least, on, PLAN, planOf } from "../plan/canonical.ts";

const year = (y: number, crops: string) => planOf(least(crops).replace("2027", String(y)));
const LAST = year(2026, "crops:\n  - carrot\n  - {name: hardy garlic, crop: garlic}");
const THIS = year(2027, "crops:\n  - carrot\n  - lettuce: every 14 days");

function named(name: string, day = on(6, 1), plans = [LAST, THIS]) {
  const found = subjectOf(name, { day }, plans);
  return "planting" in found ? [found.planting.key, found.sowing] : found.why;
}

describe("what a name in a line means", () => {
  it("is the season's own planting first", () => {
    expect(named("carrots")).toEqual(["2027/carrot", null]);
    expect(named("carrots", dayOrThrow(2026, 6, 1))).toEqual(["2026/carrot", null]);
  });

  it("is the season's own from its first day to its last, both with it", () => {
    const { from, to } = seasonOf(THIS);
    const on = [plus(from, -1), from, to, plus(to, 1)];
    expect(on.map((day) => named("carrots", day))).toEqual([
      ["2026/carrot", null],
      ["2027/carrot", null],
      ["2027/carrot", null],
      "carrots fits carrot and carrot",
    ]);
  });

  it("is one that stands over from the year before", () => {
    expect(named("garlic", on(7, 20))).toEqual(["2026/hardy-garlic", null]);
  });

  it("is a planting of another year where the season has none of that name", () => {
    expect(named("lettuce", dayOrThrow(2026, 6, 1))).toEqual(["2027/lettuce", null]);
  });

  it("has the number of a sowing", () => {
    for (const name of [
      "lettuce 2",
      "second lettuce",
      "2nd lettuce",
      "second sowing of lettuce",
      "lettuce sowing 2",
      "lettuce #2",
    ])
      expect(named(name), name).toEqual(["2027/lettuce", 2]);
  });

  it("is only one of which the line can speak", () => {
    const canBe = ({ inSince }: Planting) => inSince === null;
    const found = subjectOf("garlic", { day: on(10, 20), canBe }, [PLAN]);
    expect("planting" in found && found.planting.key).toBe("2027/second-garlic");
  });

  it("is nothing, with the reason, where none fits", () => {
    expect(named("moonflower")).toBe("no planting is called moonflower");
  });
});

describe("plantings as they are spoken of", () => {
  it("have their own name, else variety and crop", () => {
    expect(PLAN.plantings.map(sayPlanting)).toEqual([
      "early red potato",
      "carrot",
      "beet",
      "tomato",
      "lettuce",
      "garlic",
      "second garlic",
    ]);
  });

  it("stand the winter where their crop is planted in autumn", () => {
    expect(PLAN.plantings.filter(overwinters).map(({ crop }) => crop)).toEqual([
      "garlic",
      "garlic",
    ]);
    expect(year(2027, "crops:\n  - moonflower").plantings.map(overwinters)).toEqual([false]);
  });
});

it("a bed goes by its name, with the word bed or without", () => {
  for (const name of ["South bed", "south", "south-bed"])
    expect(bedNamed(name, [PLAN])?.key, name).toBe("south-bed");
  expect(bedNamed("north", [PLAN])).toBeNull();
});
