import { describe, expect, test } from "vitest";
import { plus } from "../../src/base/days/day.ts";
import {
  penmanMonteithMm,
  referenceEvaporationMm,
  saturationKPa,
} from "../../src/engine/climate/evaporation.ts";
import {
  clearSkyMJ,
  geometricHours,
  netLongwaveMJ,
  netShortwaveMJ,
  solarFromSwingMJ,
  sunDeclination,
  sunDistance,
  sunsetAngle,
  topOfAirMJ,
} from "../../src/engine/climate/radiation.ts";
import { isoDay } from "../gardens.ts";
import { csvOf, yamlOf } from "./read.ts";

const MONTHS = "jan feb mar apr may jun jul aug sep oct nov dec".split(" ");
/** The 15th of each month as a day of the year, as both tables take it. */
const FIFTEENTHS = [15, 46, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349];

/** Cells of a table of months by latitude that ours is farther from than allowed. */
function wrongCells(
  name: string,
  ours: (latitude: number, dayOfYear: number) => number,
  allowed: number,
): { readonly cells: number; readonly wrong: readonly string[] } {
  const cells = csvOf(name).flatMap((row) =>
    MONTHS.map((month, m) => ({
      name: `${row.lat_deg} ${month}`,
      printed: row[month] === "" ? Number.NaN : Number(row[month]),
      ours: ours(Number(row.lat_deg), FIFTEENTHS[m] ?? 0),
    })),
  );
  const wrong = cells.filter((cell) => !(Math.abs(cell.ours - cell.printed) <= allowed + 1e-9));
  return { cells: cells.length, wrong: wrong.map((cell) => `${cell.name}: ${cell.ours}`) };
}

describe("FAO's tables", () => {
  test("of the sun at the top of the air are met to 0.15 MJ in 22 latitudes", () => {
    expect(wrongCells("fao56-ra.csv", topOfAirMJ, 0.15)).toEqual({ cells: 264, wrong: [] });
  });

  test("of daylight hours are met to 0.1 h in 15 latitudes", () => {
    const found = wrongCells("fao56-daylight-hours.csv", geometricHours, 0.1);
    expect(found).toEqual({ cells: 180, wrong: [] });
  });
});

type Lengths = {
  readonly mean_daylight_20N: { readonly lat: number; readonly months: readonly number[] };
  readonly ten_hour_rule: {
    readonly latitude_limit: { readonly geometric_without_refraction: number };
  };
};

describe("daylight by geometry alone", () => {
  const { mean_daylight_20N, ten_hour_rule } = yamlOf<Lengths>("day-length.yaml");

  test("meets Bautista's monthly means at 20 N to 0.05 h", () => {
    const { lat, months } = mean_daylight_20N;
    const hundredths = (dayOfYear: number) =>
      Math.round(geometricHours(lat, dayOfYear) * 100) / 100;
    const off = months.map((hours, m) => Math.abs(hours - hundredths(FIFTEENTHS[m] ?? 0)));
    expect(off).toHaveLength(12);
    expect(Math.max(...off)).toBeLessThanOrEqual(0.05 + 1e-9);
  });

  test("falls below ten hours at latitude 30.9, not at the almanac's 32.7", () => {
    const limit = ten_hour_rule.latitude_limit.geometric_without_refraction;
    const shortest = (latitude: number) =>
      Math.min(...Array.from({ length: 365 }, (_, i) => geometricHours(latitude, i + 1)));
    expect(shortest(limit - 0.1)).toBeGreaterThan(10);
    expect(shortest(limit + 0.1)).toBeLessThan(10);
  });
});

type Figures = Readonly<Record<string, number>>;
type Example = { readonly inputs: Figures & { readonly lat: string }; readonly answers: Figures };
type Examples = {
  readonly equations: Readonly<Record<string, unknown>>;
  readonly example_8: Example & { readonly unrounded: Figures };
  readonly example_9: Example & { readonly unrounded: Figures };
  readonly example_10: Example;
  readonly example_11: Example;
  readonly example_12: Example;
  readonly example_18: Example;
  readonly example_20: Example & {
    readonly answers_from_memory: Figures;
    readonly recomputed: Figures;
  };
  readonly hargreaves_unit_trap: { readonly note: string };
  readonly tables: readonly string[];
};

const FILE = yamlOf<Examples>("fao56-examples.yaml");

/** A printed figure of an example; throws where the file has none, so that no comparison is skipped. */
function figure(figures: Figures, name: string): number {
  const value = figures[name];
  if (typeof value !== "number") throw new Error(`no ${name}`);
  return value;
}

/** Half a unit of the last of so many printed decimals. */
const half = (decimals: number) => 0.5 * 10 ** -decimals + 1e-9;

/** Each figure named is met to half a unit of its last printed decimal. */
function met(figures: Figures, ours: Readonly<Record<string, readonly [number, number]>>): void {
  for (const [name, [value, decimals]] of Object.entries(ours))
    expect(Math.abs(value - figure(figures, name)), `${name}: ${value}`).toBeLessThanOrEqual(
      half(decimals),
    );
  const compared = Object.keys(ours);
  expect(Object.keys(figures).filter((name) => !compared.includes(name))).toEqual([]);
}

describe("FAO's worked examples", () => {
  const SOUTH_20 = -20;

  test("8: the sun at the top of the air, 3 September at 20 S", () => {
    const { inputs, answers, unrounded } = FILE.example_8;
    expect(inputs.lat).toBe("20 S");
    const day = figure(inputs, "J");
    expect((SOUTH_20 * Math.PI) / 180).toBeCloseTo(figure(inputs, "phi_rad"), 2);
    const topMJ = topOfAirMJ(SOUTH_20, day);
    met(answers, {
      dr: [sunDistance(day), 3],
      delta: [sunDeclination(day), 3],
      omega_s: [sunsetAngle(SOUTH_20, day), 3],
      Ra: [topMJ, 1],
    });
    expect(topMJ).toBeCloseTo(figure(unrounded, "Ra"), 3);
  });

  test("9: daylight hours of the same day", () => {
    const { inputs, answers, unrounded } = FILE.example_9;
    const hours = geometricHours(SOUTH_20, figure(FILE.example_8.inputs, "J"));
    expect(sunsetAngle(SOUTH_20, 246)).toBeCloseTo(figure(inputs, "omega_s"), 3);
    met(answers, { N: [hours, 1] });
    expect(hours).toBeCloseTo(figure(unrounded, "N"), 5);
  });

  test("10: the sun by its hours, in Rio in May (the place from memory)", () => {
    const { inputs, answers } = FILE.example_10;
    const rio = [-(22 + 54 / 60), 135] as const;
    met(
      { N: figure(inputs, "N"), Ra: figure(inputs, "Ra") },
      {
        N: [geometricHours(...rio), 1],
        Ra: [topOfAirMJ(...rio), 1],
      },
    );
    const solarMJ = (hours: number, topMJ: number) =>
      (0.25 + 0.5 * (figure(inputs, "n_h_per_day") / hours)) * topMJ;
    met(answers, {
      Rs: [solarMJ(geometricHours(...rio), topOfAirMJ(...rio)), 1],
      // From the figures as the page rounds them.
      Rs_unrounded: [solarMJ(figure(inputs, "N"), figure(inputs, "Ra")), 2],
    });
  });

  test("11: what the ground loses to the sky", () => {
    const { inputs, answers } = FILE.example_11;
    const lost = netLongwaveMJ({
      lowC: figure(inputs, "Tmin"),
      highC: figure(inputs, "Tmax"),
      vapourKPa: figure(inputs, "ea"),
      solarMJ: figure(inputs, "Rs"),
      clearSkyMJ: figure(inputs, "Rso"),
    });
    met(answers, { Rnl: [lost, 1] });
  });

  test("12: what the ground keeps of the sun", () => {
    const { inputs, answers } = FILE.example_12;
    // The page carries 14.45 on, which it prints as 14.5; then it subtracts what it printed.
    const carried = figure(FILE.example_10.answers, "Rs_unrounded");
    expect(Math.abs(carried - figure(inputs, "Rs"))).toBeLessThanOrEqual(half(1));
    const kept = netShortwaveMJ(carried);
    const net = Math.round(kept * 10) / 10 - figure(FILE.example_11.answers, "Rnl");
    met(answers, { Rns: [kept, 1], Rn: [net, 1] });
  });

  test("18: a day in Brussels, 6 July (inputs but Ra and altitude from memory)", () => {
    const { inputs, answers } = FILE.example_18;
    const brussels = 50.8;
    const topMJ = figure(inputs, "Ra");
    const altitudeM = figure(inputs, "z_m");
    expect(topOfAirMJ(brussels, 187)).toBeCloseTo(topMJ, 1);
    const clear = clearSkyMJ(topMJ, altitudeM);
    const swing = { lowC: 12.3, highC: 21.5 };
    const vapourKPa = (saturationKPa(12.3) * 0.84 + saturationKPa(21.5) * 0.63) / 2;
    const solarMJ = (0.25 + 0.5 * (9.25 / geometricHours(brussels, 187))) * topMJ;
    const lost = netLongwaveMJ({ ...swing, vapourKPa, solarMJ, clearSkyMJ: clear });
    const netMJ = netShortwaveMJ(solarMJ) - lost;
    const given = penmanMonteithMm({ ...swing, vapourKPa, windMs: 2.078, netMJ, altitudeM });
    met(answers, { Rso: [clear, 2], ETo_PM: [given, 1] });
  });

  test("20: the damp of the air by the low, in Lyon in July", () => {
    const { inputs, answers } = FILE.example_20;
    met(answers, { ea_kPa: [saturationKPa(figure(inputs, "Tmin")), 2] });
  });

  test("20: from lows and highs alone (the answers, place and altitude from memory)", () => {
    const { inputs, answers_from_memory, recomputed } = FILE.example_20;
    const [lowC, highC] = [figure(inputs, "Tmin"), figure(inputs, "Tmax")];
    const lyon = 45 + 43 / 60;
    expect(Math.abs(topOfAirMJ(lyon, 196) - figure(inputs, "Ra"))).toBeLessThanOrEqual(0.15);
    const given = referenceEvaporationMm({
      day: isoDay("2027-07-15"),
      latitude: lyon,
      altitudeM: 200,
      lowC,
      highC,
    });
    const { status: _, ...memory } = answers_from_memory;
    const outside = hargreavesMm({ lowC, highC }, figure(inputs, "Ra"));
    met(memory, { ETo_hargreaves: [outside, 1], ETo_PM_missing_data: [given, 2] });
    expect(outside).toBeCloseTo(figure(recomputed, "ETo_hargreaves"), 2);
  });

  test("are all compared, and both tables", () => {
    const known = ["equations", "hargreaves_unit_trap", "tables"].concat(
      [8, 9, 10, 11, 12, 18, 20].map((number) => `example_${number}`),
    );
    expect(Object.keys(FILE).sort()).toEqual(known.sort());
    expect(FILE.tables).toEqual(["fao56-ra.csv", "fao56-daylight-hours.csv"]);
  });
});

type Swing = { readonly lowC: number; readonly highC: number };
const MM_PER_MJ = 0.408;

/** FAO's other equation (eq. 52), a check from outside: what grass gives off [mm] by lows, highs and the sun above. */
function hargreavesMm({ lowC, highC }: Swing, topMJ: number): number {
  return 0.0023 * ((lowC + highC) / 2 + 17.8) * Math.sqrt(highC - lowC) * MM_PER_MJ * topMJ;
}

describe("Hargreaves beside ours", () => {
  const SWINGS: readonly Swing[] = [
    { lowC: 5, highC: 17 },
    { lowC: 10, highC: 24 },
    { lowC: 15, highC: 30 },
    { lowC: 18, highC: 28 },
  ];
  const cases = [0, 20, 34, 40, 46.6, 52, -34].flatMap((latitude) =>
    [104, 195, 287].flatMap((after) => SWINGS.map((swing) => ({ latitude, after, ...swing }))),
  );

  test("lies within 15 % from April to October, from the equator to 52 N", () => {
    const wrong = cases.filter(({ latitude, after, lowC, highC }) => {
      const day = plus(isoDay("2027-01-01"), after);
      const ours = referenceEvaporationMm({ day, latitude, lowC, highC });
      const theirs = hargreavesMm({ lowC, highC }, topOfAirMJ(latitude, after + 1));
      return !(Math.abs(ours / theirs - 1) <= 0.15);
    });
    expect(cases).toHaveLength(84);
    expect(wrong).toEqual([]);
  });

  test("is 2.45 times too much where the sun stays in megajoules, which a printed figure does", () => {
    const { note } = FILE.hargreaves_unit_trap;
    const [wrong = 0, right = 0, mean = 0, factor = 0] = [
      ...note.matchAll(/\d+\.\d+|(?<=Tmean )\d+/g),
    ].map(([printed]) => Number(printed));
    expect(mean).toBe(22);
    const day = { lowC: 19, highC: 25 };
    const ours = hargreavesMm(day, 32);
    expect(Math.abs(ours - right)).toBeLessThanOrEqual(half(2));
    expect(Math.abs(ours / MM_PER_MJ - wrong)).toBeLessThanOrEqual(half(2));
    expect(wrong / right).toBeCloseTo(factor, 2);
    const solarMJ = solarFromSwingMJ(day, 32);
    expect(solarMJ).toBeLessThan(32);
  });
});
