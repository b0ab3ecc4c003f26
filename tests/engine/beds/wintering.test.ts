import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import { rootingChance, winterChance } from "../../../src/engine/beds/wintering.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";

const garlic = growingOf(QUARRY, "garlic", { planting: { within: null } });
const on = (day: string) => winterChance(garlic, isoDay(day));

describe("what is planted to stand the winter", () => {
  test("waits for the weeks round the killing frost, then is safe, a gamble and too late", () => {
    const verdicts = ["2027-05-01", "2027-10-20", "2027-10-27", "2027-11-01", "2027-12-20"].map(
      (day) => on(day)?.verdict,
    );
    expect(verdicts).toEqual(["not yet", "not yet", "safe", "a gamble", "too late"]);
    const opens = on("2027-05-01")?.opens ?? null;
    expect(opens && isoOf(opens)).toBe("2027-10-24");
  });

  test("is safe and a gamble to the very last day of each", () => {
    const days = [
      "2027-10-23",
      "2027-10-24",
      "2027-10-30",
      "2027-10-31",
      "2027-12-04",
      "2027-12-05",
    ];
    expect(days.map((day) => on(day)?.verdict)).toEqual([
      ...["not yet", "safe", "safe"],
      ...["a gamble", "a gamble", "too late"],
    ]);
  });

  test("is ready in the summer after", () => {
    const usual = on("2027-10-27")?.ripe?.usual ?? null;
    expect(usual && isoOf(usual)).toMatch(/^2028-0[78]/);
  });

  test("has no days in a place without frost", () => {
    const site = { ...garlic.plan.site, firstFrost: null };
    expect(
      winterChance({ ...garlic, plan: { ...garlic.plan, site } }, isoDay("2027-10-27")),
    ).toBeNull();
  });
});

test("what stands for years need only take root: from its spring day to six weeks before hard frost", () => {
  const beet = growingOf(QUARRY, "beet");
  const root = (day: string) => rootingChance(beet, isoDay(day))?.verdict;
  expect(["2027-03-01", "2027-06-01", "2027-09-04", "2027-09-05"].map(root)).toEqual([
    "not yet",
    "safe",
    "safe",
    "too late",
  ]);
});
