import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import { CROPS } from "../../../src/crops/crops.ts";
import { chancesIn } from "../../../src/engine/beds/crop-chances.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const chances = (on: string) => {
  const bed = PLAN.beds.find(({ key }) => key === "salad-bed");
  return bed ? chancesIn(bed, { plan: PLAN, day: isoDay(on), observations: [] }) : [];
};

describe("what may go into a bed", () => {
  test("is every crop of the facts in every way it may begin, each once", () => {
    const all = chances("2027-05-20");
    expect(new Set(all.map(({ crop }) => crop)).size).toBe(CROPS.length);
    const ways = all.map(({ crop, way }) => `${crop} ${way}`);
    expect(new Set(ways).size).toBe(ways.length);
    expect(ways).toContain("lettuce seed");
    expect(ways).toContain("lettuce plants");
    expect(ways).not.toContain("carrot plants");
  });

  test("is ready in order, and in time where it is safe", () => {
    for (const { verdict, ripe, end } of chances("2027-06-15"))
      if (verdict === "safe" && ripe?.warm && ripe.usual && ripe.cold) {
        expect(ripe.warm).toBeLessThanOrEqual(ripe.usual);
        expect(ripe.usual).toBeLessThanOrEqual(ripe.cold);
        expect(ripe.cold).toBeLessThanOrEqual(end?.day ?? Number.POSITIVE_INFINITY);
      }
  });

  test("opens after the day asked where it is not yet time, and only then", () => {
    for (const on of ["2027-02-01", "2027-05-20", "2027-08-01"])
      for (const { verdict, opens } of chances(on))
        expect(opens === null ? "has begun" : opens > isoDay(on)).toBe(
          verdict === "not yet" ? true : "has begun",
        );
  });

  test("is worth starting a day before it is safe, unless it is too early or the season spoils it", () => {
    for (const on of ["2027-05-20", "2027-06-20", "2027-07-20", "2027-08-20"]) {
      const before = chances(on);
      const after = chances(isoOf(plus(isoDay(on), 1)));
      for (const [i, { verdict, crop }] of after.entries())
        if (verdict === "safe") expect(["safe", "not yet"], crop).toContain(before[i]?.verdict);
    }
  });
});
