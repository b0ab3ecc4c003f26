import { describe, expect, test } from "vitest";
import {
  SOIL_AVERAGES_DAYS,
  soilCurve,
  soilWarmedBy,
  sunWarmsK,
} from "../../../src/engine/climate/soil.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";
import { ALONE, tellOf } from "../../gardens.ts";

/** Days whose lows and highs are the same, so that no sun warms the ground. */
const dull = (air: (day: number) => number) => {
  const curve = Float64Array.from({ length: 365 }, (_, i) => air(i));
  return { lowC: curve, highC: curve };
};
const soilOf = (air: (day: number) => number) => soilCurve(dull(air), 45);

describe("a year of soil", () => {
  test("is the air's own where that never changes", () => {
    const soil = soilOf(() => 14);
    expect(soil).toHaveLength(365);
    expect([...soil].every((each) => Math.abs(each - 14) < 1e-9)).toBe(true);
  });

  test("is the mean of eleven days' air, the day's own among them", () => {
    expect(SOIL_AVERAGES_DAYS).toBe(11);
    expect(soilOf((day) => day)[100]).toBe(95);
  });

  test("feels one warm day for eleven days and no longer", () => {
    const soil = soilOf((day) => (day === 100 ? 22 : 0));
    expect([99, 100, 110, 111].map((day) => soil[day])).toEqual([0, 2, 2, 0]);
  });

  test("goes round the year, the first days after the last", () => {
    const soil = soilOf((day) => (day === 364 ? 11 : 0));
    expect([364, 0, 9, 10].map((day) => soil[day])).toEqual([1, 1, 1, 0]);
  });

  test("goes below freezing here, for freezing is held later", () => {
    expect(soilOf(() => -9)[0]).toBeCloseTo(-9, 9);
  });
});

describe("what the sun adds to bare ground", () => {
  const JUNE_MJ = 41.5;

  test("is some degrees under a clear sky, less under a hazy one, and nothing under a dull one", () => {
    const [clear, hazy, dark] = [16, 10, 4].map((swing) =>
      sunWarmsK({ lowC: 15 - swing / 2, highC: 15 + swing / 2 }, JUNE_MJ),
    );
    expect(clear).toBeCloseTo(((0.85 * 0.16 * 4 * JUNE_MJ - 14) / 20) * 8, 9);
    expect(hazy).toBeGreaterThan(0);
    expect(hazy).toBeLessThan((clear ?? 0) / 2);
    expect(dark).toBe(0);
  });

  test("never makes it colder than the air, though the published relation would in winter", () => {
    expect(sunWarmsK({ lowC: -8, highC: 4 }, 9)).toBe(0);
  });

  const day = (month: number) => month * 30 + 14;
  const swings = {
    lowC: new Float64Array(365).fill(4),
    highC: new Float64Array(365).fill(18),
  };

  test("comes in summer, six months apart in the two halves of the earth", () => {
    const [north, south] = [soilCurve(swings, 45), soilCurve(swings, -45)];
    expect(north[day(5)]).toBeGreaterThan((north[day(11)] ?? 0) + 2);
    expect(south[day(11)]).toBeGreaterThan((south[day(5)] ?? 0) + 2);
  });

  test("goes by the warmer half of the year where the plan gives no latitude", () => {
    const warmJanuary = {
      ...swings,
      highC: Float64Array.from({ length: 365 }, (_, i) => (i < 60 || i > 300 ? 20 : 16)),
    };
    expect([...soilCurve(warmJanuary, null)]).toEqual([...soilCurve(warmJanuary, -45)]);
    expect([...soilCurve(swings, null)]).toEqual([...soilCurve(swings, 45)]);
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
