import { describe, expect, test } from "vitest";
import { SOIL_AVERAGES_DAYS, soilCurve, soilWarmedBy } from "../../../src/engine/climate/soil.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";
import { ALONE, tellOf } from "../../gardens.ts";

const yearOf = (air: (day: number) => number) =>
  Float64Array.from({ length: 365 }, (_, i) => air(i));

describe("a year of soil", () => {
  test("is the air's own where that never changes", () => {
    const soil = soilCurve(yearOf(() => 14));
    expect(soil).toHaveLength(365);
    expect([...soil].every((each) => Math.abs(each - 14) < 1e-9)).toBe(true);
  });

  test("is the mean of eleven days' air, the day's own among them", () => {
    expect(SOIL_AVERAGES_DAYS).toBe(11);
    const soil = soilCurve(yearOf((day) => day));
    expect(soil[100]).toBe(95);
  });

  test("feels one warm day for eleven days and no longer", () => {
    const soil = soilCurve(yearOf((day) => (day === 100 ? 22 : 0)));
    expect([99, 100, 110, 111].map((day) => soil[day])).toEqual([0, 2, 2, 0]);
  });

  test("goes round the year, the first days after the last", () => {
    const soil = soilCurve(yearOf((day) => (day === 364 ? 11 : 0)));
    expect([364, 0, 9, 10].map((day) => soil[day])).toEqual([1, 1, 1, 0]);
  });

  test("goes below freezing here, for freezing is held later", () => {
    expect(soilCurve(yearOf(() => -9))[0]).toBeCloseTo(-9, 9);
  });
});

describe("what warms a bed's soil", () => {
  const plan = planOf(
    least(
      "beds:\n  A:\n    warmed by: film\n    cover: cloches\n  B:\n    cover: cloches\n  C:\n    cover: net",
    ),
  );

  test("is film, else cloches by less, and nothing else", () => {
    expect(plan.beds.map(soilWarmedBy)).toEqual([
      { by: "film", warmerK: 3 },
      { by: "cloches", warmerK: 2 },
      { by: "open", warmerK: 0 },
    ]);
    expect(soilWarmedBy(null).warmerK).toBe(0);
  });

  test("brings a sowing there forward", () => {
    const sown = (under: string) => {
      const text = `${ALONE}  T:\n    is: 8 x 4 ft\n    crops:\n      - turnip: 1 row${under}\n`;
      const { scheduled } = tellOf(text, { on: "2027-01-01" });
      return scheduled.find(({ task }) => task.id === "2027/turnip/sow-outdoors/1")?.day ?? 0;
    };
    expect(sown(", under cloches")).toBeLessThan(sown("") - 5);
  });
});
