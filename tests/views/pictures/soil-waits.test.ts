import { expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { soilWaitsOf, soilWaitText } from "../../../src/views/pictures/soil-waits.ts";
import { soilIn } from "../../../src/views/pictures/warmth.ts";
import { QUARRY } from "../../gardens.ts";
import { GARDENS, on, sketchOf } from "./drawn.ts";

const drawn = sketchOf(QUARRY);
const { plan } = drawn;
const waiting = soilWaitsOf(drawn);

test("crops that want the same soil stand together, the coldest first; what stands the winter waits for none", () => {
  expect(waiting.map(({ soilC }) => soilC)).toEqual(
    waiting.map(({ soilC }) => soilC).sort((a, b) => a - b),
  );
  expect(waiting[0]?.names).toEqual(["potatoes", "carrots", "beets", "lettuce"]);
  expect(waiting.flatMap(({ names }) => names)).not.toContain("garlic");
});

test("the day is the first whose usual soil is warm enough, under film where the bed has it", () => {
  for (const { day, soilC, film } of waiting) {
    const bed = plan.beds.find((each) => each.warmed && film) ?? null;
    const soil = soilIn(drawn, bed);
    expect(day).not.toBeNull();
    expect(soil(day ?? on("2027-01-01")).usualC).toBeGreaterThanOrEqual(soilC);
    expect(soil(plus(day ?? on("2027-01-01"), -1)).usualC).toBeLessThan(soilC);
  }
  expect(waiting.find(({ names }) => names.includes("tomatoes"))?.film).toBe(true);
});

test("where the soil is always warm enough nothing waits, and that is said", () => {
  expect(waiting.filter(({ always }) => always)).toEqual([]);
  const shore = sketchOf(GARDENS["no frost and never cold"] ?? "");
  const all = soilWaitsOf(shore);
  expect(all.map(({ always }) => always)).toEqual(all.map(() => true));
  expect(all.flatMap(({ names }) => names)).toContain("lettuce");
  for (const each of all)
    expect(soilWaitText(each, shore.plan)).toMatch(/°F, warm enough all year\.$/);
});

test("it is said in the household's measures, and said too where it never comes", () => {
  const [first] = waiting;
  if (!first) throw new RangeError("nothing waits");
  expect(soilWaitText(first, plan)).toMatch(/^potatoes, .*: 45 °F, usually from \d+ (Apr|May)\.$/);
  expect(soilWaitText({ ...first, day: null }, plan)).toContain("never that warm");
});
