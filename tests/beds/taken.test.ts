import { describe, expect, test } from "vitest";
import { grownOf } from "../../src/beds/lives.ts";
import { standingIn, standsOn, takenCm } from "../../src/beds/taken.ts";
import { QUARRY } from "../gardens.ts";
import { on, sketchOf } from "../pictures/drawn.ts";

const season = sketchOf(QUARRY);
const bed = season.plans[0]?.beds.find(({ key }) => key === "root-bed");
if (!bed) throw new Error("the canonical garden has a root bed");
const standing = standingIn(grownOf(season), bed);

describe("what stands in a bed", () => {
  test("are its own plantings, from going in until they are gone", () => {
    expect(standing.length).toBeGreaterThan(0);
    for (const each of standing) {
      expect(each.planting.bed).toBe("root-bed");
      expect(standsOn(each, each.life.starts)).toBe(true);
      expect(standsOn(each, each.life.gone)).toBe(false);
    }
  });

  test("takes width only while it stands", () => {
    expect(takenCm(standing, on("2027-01-15"))).toBe(0);
    expect(takenCm(standing, on("2027-06-20"))).toBeGreaterThan(20);
  });

  test("takes more with more rows", () => {
    const more = sketchOf(QUARRY.replace("3 rows", "6 rows"));
    const wide = standingIn(grownOf(more), bed);
    const day = on("2027-06-20");
    expect(takenCm(wide, day)).toBeGreaterThan(takenCm(standing, day));
  });
});
