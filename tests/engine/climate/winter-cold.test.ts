import { describe, expect, test } from "vitest";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { coldestLowC, groundFreezes } from "../../../src/engine/climate/winter-cold.ts";
import { seasonOf } from "../../../src/garden/model/season.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const plan = planOf(QUARRY);
const season = seasonOf(plan);

describe("the cold of a season's winter", () => {
  test("is the mean low of its coldest two months", () => {
    const { lowC } = plan.site.normals ?? { lowC: [] };
    const [least, next] = [...lowC].sort((a, b) => a - b);
    const coldest = coldestLowC(climateOf(plan, []), season);
    expect(coldest).toBeGreaterThanOrEqual((least ?? 0) - 1);
    expect(coldest).toBeLessThan((next ?? 0) + 1);
  });

  test("freezes the ground at Quarry Lane, and not where lows stay above freezing", () => {
    expect(groundFreezes(climateOf(plan, []), season)).toBe(true);
    const mild = { lowC: Array(12).fill(3), highC: Array(12).fill(12) };
    const site = { ...plan.site, normals: { ...mild, spreadK: null, rainMm: null } };
    expect(groundFreezes(climateOf({ ...plan, site }, []), season)).toBe(false);
  });

  test("is not that of one cold week", () => {
    const site = {
      ...plan.site,
      normals: { lowC: Array(12).fill(0), highC: Array(12).fill(9), spreadK: null, rainMm: null },
    };
    const cold = new Map(
      Array.from(
        { length: 7 },
        (_, i) => [isoDay(`2027-02-0${i + 1}`), { lowC: -20, highC: -10 }] as const,
      ),
    );
    expect(groundFreezes(climateOf({ ...plan, site }, [], cold), season)).toBe(false);
  });
});
