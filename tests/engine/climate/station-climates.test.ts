import { describe, expect, test } from "vitest";
import { climateAt, seaSide } from "../../../src/engine/climate/station-climates.ts";
import { CLIMATES, type StationClimate } from "../../sources/climates.ts";

const MIDDLES = [15.5, 45, 74.5, 105, 135.5, 166, 196.5, 227.5, 258, 288.5, 319, 349.5];
const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const turns = MIDDLES.map((middle) => (2 * Math.PI * middle) / 365);

/** Twice the mean of values against a wave: its height. */
const along = (values: readonly number[], wave: (turn: number) => number) =>
  2 * mean(values.map((value, i) => value * wave(turns[i] ?? 0)));

/** Mean lows, their rise, mean highs, their rise, on the phase of the station's own means. */
function fourOf({ lowC, highC }: StationClimate): readonly number[] {
  const means = lowC.map((low, i) => (low + (highC[i] ?? 0)) / 2);
  const phase = Math.atan2(along(means, Math.sin), along(means, Math.cos));
  const rise = (values: readonly number[]) => along(values, (turn) => Math.cos(turn - phase));
  return [mean(lowC), rise(lowC), mean(highC), rise(highC)];
}

/** Four numbers a station less what the regression gives for its latitude and side. */
const LEFT = CLIMATES.map((station) => {
  const expected = climateAt(station.latitude, station.clock).means;
  return { station, left: fourOf(station).map((value, i) => value - (expected[i] ?? 0)) };
});

describe("what climates are like by latitude and sea", () => {
  test("is the least squares of all 38 stations: nothing is left that goes with either", () => {
    expect(LEFT).toHaveLength(38);
    for (let i = 0; i < 4; i++) {
      const left = LEFT.map((each) => each.left[i] ?? 0);
      expect(Math.abs(mean(left))).toBeLessThan(0.15);
      const byLatitude = LEFT.map(
        ({ station }, at) => (left[at] ?? 0) * (Math.abs(station.latitude) - 45),
      );
      expect(Math.abs(mean(byLatitude))).toBeLessThan(1);
      const sea = LEFT.filter(({ station }) => seaSide(station.clock) === 1);
      expect(Math.abs(mean(sea.map((each) => each.left[i] ?? 0)))).toBeLessThan(0.1);
    }
  });

  test("varies as what is left of the stations does", () => {
    const { covariances } = climateAt(45, "UTC");
    for (let i = 0; i < 4; i++)
      for (let j = 0; j < 4; j++) {
        const sum = LEFT.reduce((all, { left }) => all + (left[i] ?? 0) * (left[j] ?? 0), 0);
        expect(sum / (LEFT.length - 3)).toBeCloseTo(covariances[i]?.[j] ?? Number.NaN, 0);
      }
  });

  test("is less sure without a latitude, and the same either side of the equator", () => {
    expect(climateAt(-40, "UTC")).toEqual(climateAt(40, "UTC"));
    const [known, unknown] = [climateAt(45, "UTC"), climateAt(null, "UTC")];
    expect(unknown.means).toEqual(known.means);
    expect(unknown.covariances[0]?.[0]).toBeGreaterThan(known.covariances[0]?.[0] ?? 0);
  });
});

test("the sea is known by the clock, half of it in the rest of Europe", () => {
  expect(["Europe/London", "America/Los_Angeles", "Pacific/Auckland"].map(seaSide)).toEqual([
    1, 1, 1,
  ]);
  expect(["Europe/Berlin", "America/Denver", "UTC"].map(seaSide)).toEqual([0.5, 0, 0]);
});
