import { describe, expect, it } from "vitest";
import {
  bearing,
  FED_IN_SPRING,
  FRUIT,
  nettedInFruit,
  picked,
  plantedBare,
  prunedInWinter,
  yearlyJob,
} from "../../src/crops/fruit-ways.ts";

describe("what fruit has in common", () => {
  it("is planted bare before spring, and is hardy", () => {
    expect(FRUIT.frost.value).toBe("very hardy");
    expect(plantedBare(10, 12, "Plant.")?.weeksFromLastFrost.value).toBeLessThan(0);
    expect(plantedBare(10, 12, "Plant.")?.apartCm.value).toBeCloseTo(304.8, 9);
  });

  it("is picked after some years, and cleared at its season's end", () => {
    const facts = bearing(3, { days: [110, 150], weeks: [3, 6], years: [15, 30] });
    expect(facts).toMatchObject({ firstHarvestYear: { value: 3 }, ends: "clear" });
    expect(picked(3, { sign: "Ripe.", how: "Pick.", holdsDays: 7 }).days.value).toEqual([
      730, 1095,
    ]);
  });

  it("is pruned in winter, fed in spring and netted as it colours, in that order", () => {
    const jobs = [prunedInWinter("Cut.", "Light."), FED_IN_SPRING, nettedInFruit([40, 60])];
    expect(jobs.map(({ step }) => step)).toEqual(["prune", "feed", "net"]);
    const first = jobs.map(({ days }) => days.value[0]);
    expect([...first].sort((a, b) => a - b)).toEqual(first);
    for (const { practice, from } of jobs)
      expect([practice, from]).toEqual(["yearly", "last frost"]);
  });

  it("may have a job of its own, of little harm where nothing else is said", () => {
    const words = { verb: "Thin", how: "Thin.", sign: null, why: "Size." };
    expect(yearlyJob("thin", [40, 55], words)).toMatchObject({ harm: "when you can", needs: [] });
  });
});
