import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/days/day.ts";
import { celsius, quantity } from "../../../src/base/quantities/quantity.ts";
import { type Climate, climateOf } from "../../../src/engine/climate/climate.ts";
import type { Observation } from "../../../src/garden/diary/observation.ts";
import type { Bed } from "../../../src/garden/model/plan.ts";
import { USUAL_SPREAD_K } from "../../../src/garden/station/spread.ts";
import { isoDay, normalsOf, planOf, QUARRY } from "../../gardens.ts";

const PLAN = planOf(QUARRY);
const bed = (key: string): Bed | null => PLAN.beds.find((each) => each.key === key) ?? null;

function measured(day: string, fahrenheit: number, inBed: string | null = null): Observation {
  const value = quantity(fahrenheit, "°F");
  return { kind: "measured", day: isoDay(day), what: "soil", bed: inBed, value };
}

const soil = (climate: Climate, day: string, inBed: string | null = null) =>
  Math.round(climate.soilC(isoDay(day), inBed === null ? null : bed(inBed)) * 10) / 10;

describe("the lane's air", () => {
  test("comes from its normals and is not rough", () => {
    const climate = climateOf(PLAN, []);
    expect(climate.rough).toBe(false);
    expect(climate.airC(isoDay("2027-05-15"))).toBeCloseTo(10, 0);
  });

  test("is the same on a day of any year, 29 February as the day before", () => {
    const climate = climateOf(PLAN, []);
    expect(climate.airC(isoDay("2028-07-01"))).toBe(climate.airC(isoDay("2027-07-01")));
    expect(climate.airC(isoDay("2028-02-29"))).toBe(climate.airC(isoDay("2028-02-28")));
    expect(climate.airC(isoDay("2028-03-01"))).toBe(climate.airC(isoDay("2027-03-01")));
  });

  test("is rough without normals", () => {
    const climate = climateOf({ ...PLAN, site: { ...PLAN.site, normals: null } }, []);
    expect(climate.rough).toBe(true);
    expect(climate.air(isoDay("2027-05-06")).lowC).toBeCloseTo(5.3, 0);
  });

  test("is not rough with both of its temperatures, and still has a width", () => {
    const temperatures = {
      hottestAfternoons: quantity(83, "°F"),
      coldestNights: quantity(11, "°F"),
    };
    const climate = climateOf(
      { ...PLAN, site: { ...PLAN.site, normals: null, ...temperatures } },
      [],
    );
    expect(climate.rough).toBe(false);
    expect(climate.curveK(isoDay("2027-07-15"))).toBeGreaterThan(1);
    expect(climateOf(PLAN, []).curveK(isoDay("2027-07-15"))).toBe(0);
  });
});

describe("a season warmer than usual", () => {
  const climate = climateOf(PLAN, []);
  const day = isoDay("2027-05-15");

  test("is so much warmer by night, by day and in the soil", () => {
    const [usual, warm] = [climate.air(day), climate.air(day, 2)];
    expect(warm.lowC).toBeCloseTo(usual.lowC + 2, 9);
    expect(warm.highC).toBeCloseTo(usual.highC + 2, 9);
    expect(climate.airC(day, -1.5)).toBeCloseTo(climate.airC(day) - 1.5, 9);
    expect(climate.soilC(day, null, 2)).toBeCloseTo(climate.soilC(day, null) + 2, 9);
  });

  test("lets frozen soil stay frozen until it is warm enough to thaw", () => {
    expect(climate.soilC(isoDay("2027-01-15"), null, 2)).toBe(0);
  });
});

describe("days whose air is known", () => {
  const day = isoDay("2027-05-15");
  const known = new Map([[day, { lowC: 3, highC: 31 }]]);
  const climate = climateOf(PLAN, [], known);

  test("take the place of the normals', in every season", () => {
    expect(climate.air(day)).toEqual({ lowC: 3, highC: 31 });
    expect(climate.airC(day, 2)).toBe(17);
    expect(climate.air(plus(day, 1))).toEqual(climateOf(PLAN, []).air(plus(day, 1)));
  });

  test("warm the soil for eleven days by an eleventh of what they are warmer", () => {
    const plain = climateOf(PLAN, []);
    const more = (on: number) =>
      climate.soilC(plus(day, on), null) - plain.soilC(plus(day, on), null);
    const eleventh = (17 - plain.airC(day)) / 11;
    expect(more(0)).toBeCloseTo(eleventh, 9);
    expect(more(10)).toBeCloseTo(eleventh, 9);
    expect(more(11)).toBeCloseTo(0, 9);
    expect(more(-1)).toBeCloseTo(0, 9);
  });
});

describe("beds of equal soil", () => {
  const south = bed("south-bed");

  test("are those in the open, and those under film", () => {
    const { soilKey: soilOf } = climateOf(PLAN, []);
    expect(soilOf(bed("root-bed"))).toBe(soilOf(bed("salad-bed")));
    expect(soilOf(bed("root-bed"))).toBe(soilOf(null));
    expect(soilOf(south)).not.toBe(soilOf(null));
  });

  test("are each its own where its soil was measured, and the others as they were", () => {
    const { soilKey: soilOf } = climateOf(PLAN, [measured("2027-05-25", 58, "root-bed")]);
    expect(new Set([bed("root-bed"), bed("salad-bed"), south].map(soilOf)).size).toBe(3);
    expect(soilOf(bed("salad-bed"))).toBe(soilOf(null));
    const everywhere = climateOf(PLAN, [measured("2027-05-25", 58)]);
    const all = [bed("root-bed"), bed("salad-bed"), south, null].map(everywhere.soilKey);
    expect(new Set(all).size).toBe(4);
  });
});

describe("the spread from year to year", () => {
  const { normals } = PLAN.site;
  if (!normals) throw new Error("the lane has normals");
  const may = isoDay("2027-05-31");

  test("is the month's own in its middle where the site says, and goes over to the next", () => {
    const spreadK = [3, 3, 2.5, 2, 1.8, 1.4, 1.1, 1.2, 1.6, 1.9, 2.4, 2.9];
    const site = { ...PLAN.site, normals: { ...normals, spreadK } };
    const climate = climateOf({ ...PLAN, site }, []);
    expect(climate.spreadK(isoDay("2027-05-16"))).toBeCloseTo(1.8, 2);
    expect(climate.spreadK(isoDay("2027-06-16"))).toBeCloseTo(1.4, 1);
    expect(climate.spreadK(may)).toBeCloseTo(1.6, 1);
    expect(climate.spreadK(isoDay("2027-01-01"))).toBeCloseTo(2.95, 1);
    for (let day = isoDay("2027-01-01"); day < isoDay("2028-01-10"); day = plus(day, 1))
      expect(Math.abs(climate.spreadK(plus(day, 1)) - climate.spreadK(day))).toBeLessThan(0.03);
  });

  test("is the usual one where it does not, and where the curve is rough", () => {
    expect(climateOf(PLAN, []).spreadK(may)).toBe(USUAL_SPREAD_K);
    const rough = climateOf({ ...PLAN, site: { ...PLAN.site, normals: null } }, []);
    expect(rough.spreadK(may)).toBe(USUAL_SPREAD_K);
  });
});

describe("the length of a day", () => {
  test("is told where the plan gives a latitude", () => {
    const hours = climateOf(PLAN, []).dayHours;
    expect(hours?.(isoDay("2027-06-21"))).toBeCloseTo(15.8, 1);
  });

  test("is nothing where it does not", () => {
    expect(climateOf({ ...PLAN, site: { ...PLAN.site, latitude: null } }, []).dayHours).toBeNull();
  });
});

describe("the lane's soil", () => {
  const climate = climateOf(PLAN, []);

  test("lags behind the air in winter, as the mean of eleven days", () => {
    const days = Array.from({ length: 11 }, (_, back) =>
      climate.airC(isoDay(`2027-03-${String(20 - back).padStart(2, "0")}`)),
    );
    const mean = days.reduce((a, b) => a + b, 0) / 11;
    expect(climate.soilC(isoDay("2027-03-20"), null)).toBeCloseTo(mean, 9);
  });

  test("is never below freezing", () => {
    expect(soil(climate, "2027-01-15")).toBe(0);
  });

  test("is half as much warmed by the sun where the row is kept damp, and as it is under glass or where it was measured", () => {
    const climate = climateOf(planOf(QUARRY), []);
    const july = isoDay("2027-07-20");
    const bySunK = climate.soilC(july, null) - climate.airC(plus(july, -5));
    expect(bySunK).toBeGreaterThan(2);
    expect(climate.soilC(july, null) - climate.dampSoilC(july, null)).toBeCloseTo(bySunK / 2, 1);
    const winter = isoDay("2027-01-20");
    expect(climate.dampSoilC(winter, null)).toBe(climate.soilC(winter, null));
  });

  test("is three degrees warmer under film", () => {
    const open = climate.soilC(isoDay("2027-05-20"), bed("root-bed"));
    expect(climate.soilC(isoDay("2027-05-20"), bed("south-bed")) - open).toBeCloseTo(3, 9);
  });
});

describe("soil measured in the diary", () => {
  test("is taken on its day", () => {
    expect(soil(climateOf(PLAN, [measured("2027-05-25", 58)]), "2027-05-25")).toBe(
      Math.round(celsius(58) * 10) / 10,
    );
  });

  test("does not change the days before", () => {
    const plain = climateOf(PLAN, []);
    const climate = climateOf(PLAN, [measured("2027-05-25", 70)]);
    expect(soil(climate, "2027-05-24")).toBe(soil(plain, "2027-05-24"));
  });

  test("has half its weight after a week and none after two", () => {
    const plain = climateOf(PLAN, []);
    const climate = climateOf(PLAN, [measured("2027-05-25", 70)]);
    const more = (day: string) => climate.soilC(isoDay(day), null) - plain.soilC(isoDay(day), null);
    expect(more("2027-06-01")).toBeCloseTo(more("2027-05-25") / 2, 9);
    expect(more("2027-06-08")).toBe(0);
  });

  test("in one bed says nothing of another", () => {
    const plain = climateOf(PLAN, []);
    const climate = climateOf(PLAN, [measured("2027-05-25", 70, "south-bed")]);
    expect(soil(climate, "2027-05-25", "south-bed")).toBe(21.1);
    expect(soil(climate, "2027-05-25", "root-bed")).toBe(soil(plain, "2027-05-25", "root-bed"));
  });

  test("gives way to what was measured later", () => {
    const lines = [measured("2027-05-25", 70), measured("2027-05-28", 55)];
    expect(soil(climateOf(PLAN, lines), "2027-05-28")).toBe(12.8);
  });

  test("gives way to the later day whatever the order of the lines", () => {
    const lines = [measured("2027-05-28", 55), measured("2027-05-25", 70)];
    expect(soil(climateOf(PLAN, lines), "2027-05-28")).toBe(12.8);
  });

  test("is the same on its day in a warm and in a cold season", () => {
    const climate = climateOf(PLAN, [measured("2027-05-25", 58)]);
    const inSeasons = [-2, 0, 2].map((warmerK) =>
      climate.soilC(isoDay("2027-05-25"), null, warmerK),
    );
    for (const soilC of inSeasons) expect(soilC).toBeCloseTo(celsius(58), 9);
    const later = isoDay("2027-06-01");
    expect(climate.soilC(later, null, 2) - climate.soilC(later, null)).toBeCloseTo(1, 9);
  });

  test("is not told below freezing either, once the air has gone colder since", () => {
    const same = Array(12).fill(celsius(32.9));
    const cold = { ...PLAN, site: { ...PLAN.site, normals: normalsOf(same, same) } };
    const frozen = climateOf(
      cold,
      [measured("2027-11-20", 32)],
      new Map([21, 22, 23, 24].map((date) => [isoDay(`2027-11-${date}`), { lowC: -3, highC: 1 }])),
    );
    expect(frozen.soilC(isoDay("2027-11-20"), null)).toBeCloseTo(0, 9);
    expect(frozen.soilC(isoDay("2027-11-24"), null)).toBe(0);
  });
});

describe("the year beside a usual one", () => {
  const may = isoDay("2027-05-20");
  const hot = new Map(
    Array.from({ length: 40 }, (_, back) => [plus(may, -back), { lowC: 14, highC: 30 }] as const),
  );
  const known = climateOf(PLAN, [], hot);
  const usual = climateOf(PLAN, []);

  test("is that of the curves, whatever weather is known, and itself where none is", () => {
    expect(known.usual().airC(may)).toBeCloseTo(usual.airC(may), 9);
    expect(known.usual()).toBe(known.usual());
    expect(usual.usual()).toBe(usual);
  });

  test("is half way to what lasted, and little off after one hot day", () => {
    const half = (usual.airC(may) + 22) / 2;
    expect(Math.abs(known.airAheadC(may) - half)).toBeLessThan(1);
    const one = climateOf(PLAN, [], new Map([[may, { lowC: 20, highC: 36 }]]));
    expect(one.airAheadC(may) - usual.airC(may)).toBeLessThan(1);
    expect(usual.airAheadC(may)).toBe(usual.airC(may));
  });
});
