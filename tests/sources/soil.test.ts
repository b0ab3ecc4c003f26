import { describe, expect, test } from "vitest";
import { DAYS_IN_YEAR, type Day } from "../../src/base/days/day.ts";
import { climateOf } from "../../src/engine/climate/climate.ts";
import { SOIL_AVERAGES_DAYS } from "../../src/engine/climate/soil.ts";
import { dampingDepthM, REACH_M, waveC } from "../../src/engine/climate/wave.ts";
import { planOf, QUARRY } from "../gardens.ts";
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
    expect([air, ours].map(Math.round)).toEqual([77, 88]);
    expect(Math.abs(ours - air - (theirs.soil_10cm - theirs.air))).toBeLessThan(5);
  });

  test("leaves the half year a share as small as theirs, to two points", () => {
    const { semiannual_pct: theirs } = FILE.tree.persaud_chang_1983;
    const [air, ours] = shares(365.25 / 2);
    expect(Math.abs(air - theirs.air)).toBeLessThan(2);
    expect(Math.abs(ours - theirs.soil_10cm)).toBeLessThan(2);
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
