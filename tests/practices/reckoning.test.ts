import { describe, expect, test } from "vitest";
import { type Reckoned, settingOutDay } from "../../src/growth/starting.ts";
import { testsTold, whyDecided } from "../../src/practices/reckoning.ts";
import { isoDay, QUARRY } from "../gardens.ts";
import { type Given, growingOf } from "../growth/growing.ts";
import { words } from "./told.ts";

const GUARDS = { risk: "raised", soilMinC: 12.8 } as const;

const reckonedBy = (...tests: Reckoned["tests"]): Reckoned => ({
  day: isoDay("2027-05-21"),
  grounds: [],
  tests,
  stop: null,
  stopped: false,
});
const FROST = { ground: "last frost", day: isoDay("2027-05-21") } as const;
const SOIL = { ground: "soil", day: isoDay("2027-05-25") } as const;
const GIVEN = { ground: "given", day: isoDay("2027-06-08") } as const;
const FREE = { ground: "place free", day: isoDay("2027-06-10") } as const;

const tomatoes = (given: Given = {}) => growingOf(QUARRY, "tomato", given);
const ROUGH = { plan: { site: { ...tomatoes().plan.site, normals: null } } };

const decided = (reckoned: Reckoned, given: Given = {}) =>
  words([whyDecided(tomatoes(given), reckoned, GUARDS)]);
const tests = (reckoned: Reckoned, given: Given = {}) =>
  testsTold(tomatoes(given), reckoned, GUARDS)
    .map((pieces) => words([{ part: "why", for: "all", pieces }]))
    .join("\n");

describe("the one reason that decided", () => {
  test("is the frost, by its odds", () => {
    expect(decided(reckonedBy(FROST))).toBe(
      "why: Only 1 spring in 10 still has a frost worth fearing.",
    );
  });

  test("is the soil, by its temperature, where that came later", () => {
    expect(decided(reckonedBy(FROST, SOIL))).toBe("why: The soil should have warmed to 55 °F.");
  });

  test("is said to be rough where it was reckoned from the frost dates alone", () => {
    expect(decided(reckonedBy(FROST, SOIL), ROUGH)).toContain(
      "A rough guess, from the frost dates alone.",
    );
  });

  test("is the plan, where the gardener asked for later", () => {
    expect(decided(reckonedBy(FROST, SOIL, GIVEN))).toBe("why: The plan asks for this day.");
  });

  test("is the place, where that was free last of all", () => {
    expect(decided(reckonedBy(FROST, GIVEN, FREE))).toBe("why: Its place is free now.");
  });

  test("is the short season, where the hold ended in cold soil", () => {
    expect(decided({ ...reckonedBy(SOIL), stopped: true })).toBe(
      "why: The soil is still cold, but the season is too short to wait longer.",
    );
  });

  test("is the time of year where nothing else is known", () => {
    const none = { ground: "time of year", day: isoDay("2027-01-01") } as const;
    expect(decided(reckonedBy(none))).toBe("why: It is the time of year.");
  });
});

describe("the tests a day had to pass", () => {
  test("are all told, the one that decided first", () => {
    expect(tests(reckonedBy(FROST, GIVEN, SOIL)).split("\n")).toEqual([
      "why: The plan asks for 8 June or later.",
      "why: The soil is at 55 °F from about 25 May.",
      "why: With a frost after it in 1 spring in 10, the frost test gives 21 May.",
    ]);
  });

  test("tell when the place is free", () => {
    expect(tests(reckonedBy(FREE))).toContain("free from 10 June");
  });

  test("say where the soil is a rough estimate", () => {
    expect(tests(reckonedBy(SOIL), ROUGH)).toContain("a rough estimate from the frost dates");
  });

  test("tell the stop day first where the hold ended there", () => {
    const held = { ...reckonedBy(SOIL), stop: isoDay("2027-06-11"), stopped: true };
    expect(tests(held).split("\n")[0]).toBe("why: It is held no later than 11 June.");
  });
});

test("the canonical tomatoes are decided by the frost", () => {
  const reckoned = settingOutDay(tomatoes());
  expect(reckoned && decided(reckoned)).toContain("1 spring in 10");
});
