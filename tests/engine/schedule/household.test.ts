import { describe, expect, test } from "vitest";
import { householdOf, minutesOn } from "../../../src/engine/schedule/household.ts";
import { hours, IMRE, inDays, ODA, personOf, SATURDAY } from "./given.ts";

const AWAY = { person: "imre", from: inDays(-1), to: inDays(1) };
const HOME = householdOf([IMRE, ODA], []);
const LEFT = householdOf([IMRE, ODA], [AWAY]);

describe("gardening hours", () => {
  test("are those of the weekday", () => {
    expect(HOME.gardening(IMRE, SATURDAY)).toEqual([hours(6, 9, 12)]);
    expect(HOME.gardening(IMRE, inDays(1))).toEqual([]);
  });

  test("are none while away", () => {
    expect(LEFT.gardening(IMRE, SATURDAY)).toEqual([]);
  });

  test("add up over a day", () => {
    const twice = personOf("ada", { gardens: [hours(6, 7, 8), hours(6, 17, 19)] });
    expect(minutesOn(householdOf([twice], []), twice, SATURDAY)).toBe(180);
  });

  test("are given by some and not by others", () => {
    expect(HOME.hasHours(IMRE)).toBe(true);
    expect(HOME.hasHours(personOf("ada"))).toBe(false);
  });
});

describe("an absence", () => {
  test("counts its first and its last day", () => {
    expect(LEFT.absence(IMRE, inDays(-1))).toEqual(AWAY);
    expect(LEFT.absence(IMRE, inDays(1))).toEqual(AWAY);
  });

  test("does not reach past either", () => {
    expect(LEFT.absence(IMRE, inDays(-2))).toBeNull();
    expect(LEFT.absence(IMRE, inDays(2))).toBeNull();
  });

  test("of one is not the other's", () => {
    expect(LEFT.absence(ODA, SATURDAY)).toBeNull();
  });

  test("of nobody in particular is everybody's", () => {
    const all = householdOf([IMRE, ODA], [{ ...AWAY, person: null }]);
    expect(all.around(SATURDAY)).toBe(false);
    expect(all.around(inDays(2))).toBe(true);
  });
});

describe("somebody is about", () => {
  test("on a day with hours at home", () => {
    expect(HOME.about(IMRE, inDays(2))).toBe(true);
    expect(HOME.about(ODA, inDays(3))).toBe(false);
  });

  test("on a day of gardening hours, at home or not", () => {
    const only = personOf("ada", { home: [hours(1, 8, 9)], gardens: [hours(6, 9, 12)] });
    expect(householdOf([only], []).about(only, SATURDAY)).toBe(true);
  });

  test("always where no hours at home are given, but not while away", () => {
    const ada = personOf("ada");
    const household = householdOf([ada], [{ person: "ada", from: SATURDAY, to: SATURDAY }]);
    expect(household.about(ada, inDays(1))).toBe(true);
    expect(household.about(ada, SATURDAY)).toBe(false);
  });

  test("always where the plan names nobody", () => {
    expect(householdOf([], []).around(SATURDAY)).toBe(true);
  });
});

describe("somebody is home at an hour", () => {
  test("from the first minute of their hours to just before the last", () => {
    expect(HOME.homeAt(IMRE, inDays(2), 1049)).toBe(false);
    expect(HOME.homeAt(IMRE, inDays(2), 1050)).toBe(true);
    expect(HOME.homeAt(IMRE, inDays(2), 1440)).toBe(false);
  });

  test("in their gardening hours too", () => {
    const ada = personOf("ada", { home: [hours(1, 8, 9)], gardens: [hours(6, 9, 12)] });
    expect(householdOf([ada], []).homeAt(ada, SATURDAY, 600)).toBe(true);
  });

  test("never while away", () => {
    expect(LEFT.homeAt(IMRE, SATURDAY, 600)).toBe(false);
  });
});
