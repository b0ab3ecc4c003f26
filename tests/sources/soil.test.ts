import { describe, expect, test } from "vitest";
import { DAYS_IN_YEAR, type Day, dayOfYear } from "../../src/base/days/day.ts";
import { climateOf } from "../../src/engine/climate/climate.ts";
import { type DayAir, meanC } from "../../src/engine/climate/day-air.ts";
import { topOfAirMJ } from "../../src/engine/climate/radiation.ts";
import { SOIL_AVERAGES_DAYS, sunWarmsK } from "../../src/engine/climate/soil.ts";
import { dampingDepthM, REACH_M, waveC } from "../../src/engine/climate/wave.ts";
import { isoDay, planOf, QUARRY } from "../gardens.ts";
import { must } from "./ours.ts";
import { csvOf, spanOf, yamlOf } from "./read.ts";
import { SEATTLE } from "./stations.ts";
import { unlisted, watched } from "./watched.ts";

type Shares = { readonly air: number; readonly soil_10cm: number };
type Soil = {
  readonly damped_sinusoid: {
    readonly form: { readonly text: string };
    readonly worked_damping_depths: {
      readonly rows: readonly {
        readonly Dh_m2_s: number;
        readonly annual_d_m: number;
        readonly daily_d_m: number;
      }[];
      readonly ratio_annual_to_daily: number;
    };
    readonly worked_temperatures: {
      readonly params: {
        readonly Ta: number;
        readonly A0: number;
        readonly d_m: number;
        readonly t0: number;
      };
      readonly values: string;
    };
  };
  readonly persaud_chang_1983: {
    readonly annual_cycle_share_of_variance_pct: Shares;
    readonly semiannual_pct: Shares;
  };
  readonly zheng_hunt_running_1993: { readonly idea: string };
  readonly measuring: {
    readonly depth_in: number;
    readonly time: string;
  };
};

/** What of the file is not compared, and why. */
const NOT_COMPARED = {
  "damped_sinusoid.form": "The formula in words; its worked temperatures are compared.",
  "damped_sinusoid.symbols": "Words.",
  "persaud_chang_1983.site": "Words; its two years are not at hand, another station's four are.",
  zhao_2021:
    "How much a model with snow and moisture is better in the mean of 87 stations; ours knows neither.",
  "measuring.consecutive_days": "How many days to measure; ours takes what the diary has.",
};

const FILE = watched(yamlOf<Soil>("soil-temperature.yaml"));
const WAVE = FILE.tree.damped_sinusoid;

describe("the damped yearly wave", () => {
  test.each([...WAVE.worked_damping_depths.rows])(
    "reaches the printed depths at $Dh_m2_s m²/s, of the year to 5 mm and of the day to half one",
    ({ Dh_m2_s, annual_d_m, daily_d_m }) => {
      expect(Math.abs(dampingDepthM(Dh_m2_s, DAYS_IN_YEAR) - annual_d_m)).toBeLessThanOrEqual(
        0.005,
      );
      expect(Math.abs(dampingDepthM(Dh_m2_s, 1) - daily_d_m)).toBeLessThanOrEqual(0.0005);
    },
  );

  test("reaches as much deeper than the day's as is printed", () => {
    const { ratio_annual_to_daily } = WAVE.worked_damping_depths;
    expect(Math.abs(REACH_M.year / REACH_M.day - ratio_annual_to_daily)).toBeLessThan(0.05);
  });

  test("has the worked temperatures, 4 depths on 11 days, to 0.002 °C", () => {
    const { params, values } = WAVE.worked_temperatures;
    const wave = { meanC: params.Ta, swingK: params.A0, coldest: params.t0 };
    const rows = csvOf(values);
    const wrong = rows.filter(({ z_m, day_of_year, temp_c }) => {
      const ours = waveC(wave, Number(day_of_year), Number(z_m), params.d_m);
      return !(Math.abs(ours - Number(temp_c)) <= 0.002);
    });
    expect(rows).toHaveLength(44);
    expect(wrong).toEqual([]);
  });
});

const plan = planOf(QUARRY);
const climate = climateOf(plan, [], SEATTLE);

/** Seattle's four years, without the first days, whose soil hangs on days before them. */
const DAYS = [...SEATTLE.keys()].sort((a, b) => a - b).slice(SOIL_AVERAGES_DAYS);

/** The share [%] of a series' variance that lies in a wave of so many days. */
function shareIn(of: (day: Day) => number, periodDays: number): number {
  const values = DAYS.map(of);
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  const part = (wave: (angle: number) => number) =>
    DAYS.reduce(
      (sum, day, i) => sum + ((values[i] ?? 0) - mean) * wave((2 * Math.PI * day) / periodDays),
      0,
    );
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return ((100 * 2) / values.length / variance) * (part(Math.cos) ** 2 + part(Math.sin) ** 2);
}

describe("Persaud and Chang's filter", () => {
  const soil = (day: Day) => climate.soilC(day, null);
  const shares = (periodDays: number) =>
    [climate.airC, soil].map((of) => shareIn(of, periodDays)) as [number, number];

  test("leaves more of the variance to the year in our soil than in the air, as in theirs", () => {
    const { annual_cycle_share_of_variance_pct: theirs } = FILE.tree.persaud_chang_1983;
    const [air, ours] = shares(365.25);
    expect(theirs.soil_10cm).toBeGreaterThan(theirs.air);
    expect(ours).toBeGreaterThan(air);
    expect([air, ours].map(Math.round)).toEqual([77, 91]);
    expect(Math.abs(ours - air - (theirs.soil_10cm - theirs.air))).toBeLessThan(5);
  });

  test("leaves the half year a share as small as theirs, to two points", () => {
    const { semiannual_pct: theirs } = FILE.tree.persaud_chang_1983;
    const [air, ours] = shares(365.25 / 2);
    expect(Math.abs(air - theirs.air)).toBeLessThan(2);
    expect(Math.abs(ours - theirs.soil_10cm)).toBeLessThan(2);
  });
});

type Day2015 = {
  readonly day: Day;
  readonly air: DayAir;
  readonly topMJ: number;
  readonly soilC: number;
};

/** A station's days of 2015, in order; a missing one is passed over. */
function daysOf(name: string): readonly Day2015[] {
  return csvOf("soil-and-air-2015.csv")
    .filter(({ station }) => station === name)
    .map(({ day = "", latitude, high_c, low_c, soil_5cm_c }) => ({
      day: isoDay(day),
      air: { lowC: Number(low_c), highC: Number(high_c) },
      topMJ: topOfAirMJ(Number(latitude), dayOfYear(isoDay(day)) + 1),
      soilC: Number(soil_5cm_c),
    }));
}

/** How far the mean of eleven days is off the soil that was measured on the last of them [K], day by day. */
function offBy(name: string, groundC: (each: Day2015) => number): readonly number[] {
  const days = daysOf(name);
  return days.slice(SOIL_AVERAGES_DAYS - 1).map(({ soilC }, i) => {
    const before = days.slice(i, i + SOIL_AVERAGES_DAYS).map(groundC);
    return before.reduce((a, b) => a + b, 0) / SOIL_AVERAGES_DAYS - soilC;
  });
}

const meanOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const rmsOf = (values: readonly number[]) => Math.sqrt(meanOf(values.map((each) => each * each)));
const airOf = ({ air }: Day2015) => meanC(air);
const groundOf = ({ air, topMJ }: Day2015) => meanC(air) + sunWarmsK(air, topMJ);

describe("the soil that three stations measured in the spring of 2015", () => {
  test.each([
    ["Wolf Point 29 ENE MT", -5.2, -1.6],
    ["Corvallis 10 SSW OR", -2.7, 0.2],
    ["Stillwater 2 W OK", -1.4, -0.2],
  ] as const)("is at %s %f K off the air alone, and %f K off with the sun", (name, air, sun) => {
    expect(daysOf(name).length).toBeGreaterThan(75);
    expect(Math.round(meanOf(offBy(name, airOf)) * 10) / 10).toBe(air);
    expect(Math.round(meanOf(offBy(name, groundOf)) * 10) / 10).toBe(sun);
    expect(rmsOf(offBy(name, groundOf))).toBeLessThan(0.8 * rmsOf(offBy(name, airOf)));
  });

  test("is used row by row", () => {
    const rows = csvOf("soil-and-air-2015.csv");
    expect(new Set(rows.map(({ station }) => station)).size).toBe(3);
    expect(rows.every((row) => Object.values(row).every((cell) => cell !== ""))).toBe(true);
    expect(rows).toHaveLength(241);
  });
});

describe("Zheng, Hunt and Running's running mean (from memory)", () => {
  test("is of as many days as ours", () => {
    const { idea } = FILE.tree.zheng_hunt_running_1993;
    expect(spanOf(idea.slice(0, idea.indexOf("-day")))).toEqual([
      SOIL_AVERAGES_DAYS,
      SOIL_AVERAGES_DAYS,
    ]);
  });
});

describe("Kansas' hour of measuring", () => {
  const { depth_in, time } = FILE.tree.measuring;
  const [from, to] = spanOf(time);

  /** A day of the day's wave at an hour: coldest at two in the night and warmest at two, as bare ground is about. */
  const at = (hour: number, depthM: number) =>
    waveC(
      { meanC: 0, swingK: 1, coldest: (2 / 24) * DAYS_IN_YEAR },
      (hour / 24) * DAYS_IN_YEAR,
      depthM,
      REACH_M.day,
    );
  const depthM = (depth_in * 2.54) / 100;

  test("finds the soil at its depth near the mean of the day", () => {
    expect([from, to]).toEqual([10, 11]);
    for (const hour of [from, to]) expect(Math.abs(at(hour, depthM))).toBeLessThan(0.15);
  });

  test("is nearer to it than any other hour of the gardener's day", () => {
    const middle = (hour: number) => Math.abs(at(hour + 0.5, depthM));
    const hours = Array.from({ length: 13 }, (_, i) => 6 + i);
    const best = hours.reduce((a, b) => (middle(b) < middle(a) ? b : a));
    expect(Math.abs(best - must(from))).toBeLessThanOrEqual(1);
    expect(middle(must(from))).toBeLessThan(middle(14) / 3);
  });
});

test("every figure of the file is compared or listed with its reason", () => {
  expect(unlisted(FILE.unread(), NOT_COMPARED)).toEqual({ missing: [], idle: [] });
});
