import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { type KnownWeather, mergeWeather } from "../../../src/garden/model/weather.ts";
import { isoDay } from "../../gardens.ts";

const TODAY = isoDay("2027-05-10");

/** An answer of a day: lows [°C] from that day on, or from days before it. */
function answer(asOf: string, lows: readonly number[], from = asOf): KnownWeather {
  const days = lows.map((lowC, i) => ({
    day: plus(isoDay(from), i),
    ...{ lowC, highC: lowC + 10, rainMm: 1, gustMps: null },
  }));
  return { source: "Open-Meteo", asOf: isoDay(asOf), days, saidColder: [] };
}

const lowsOf = ({ days }: KnownWeather) => days.map(({ lowC }) => lowC);

describe("what is known of the weather", () => {
  test("is the first answer itself", () => {
    const first = answer("2027-05-10", [1, 2, 3]);
    expect(mergeWeather(null, first)).toEqual(first);
  });

  test("takes the new day for every day it has, and keeps the days behind", () => {
    const merged = mergeWeather(
      answer("2027-05-10", [1, 2, 3]),
      answer("2027-05-12", [5, 6], "2027-05-11"),
    );
    expect(merged.asOf).toBe(isoDay("2027-05-12"));
    expect(lowsOf(merged)).toEqual([1, 5, 6]);
  });

  test("of today keeps the morning that an answer without a past no longer has", () => {
    const merged = mergeWeather(answer("2027-05-10", [-1, 2]), answer("2027-05-10", [6, 2]));
    expect(lowsOf(merged)).toEqual([-1, 2]);
  });

  test("keeps rain that the service no longer says", () => {
    const silent = answer("2027-05-11", [4], "2027-05-10");
    const merged = mergeWeather(answer("2027-05-10", [1]), {
      ...silent,
      days: silent.days.map((each) => ({ ...each, rainMm: null })),
    });
    expect(merged.days[0]?.rainMm).toBe(1);
  });

  test("forgets a day after a year and a month", () => {
    const merged = mergeWeather(answer("2026-01-01", [1, 2]), answer("2027-05-10", [3]));
    expect(lowsOf(merged)).toEqual([3]);
  });
});

describe("a night that was said to be colder", () => {
  test("is known where the next answer is milder, with how cold it was said to be", () => {
    const merged = mergeWeather(
      answer("2027-05-10", [5, -2, 5, 5]),
      answer("2027-05-10", [5, 3, 5]),
    );
    expect(merged.saidColder).toEqual([{ day: plus(TODAY, 1), lowC: -2 }]);
  });

  test("stays known over answers that are milder still, and no longer than its night", () => {
    const first = mergeWeather(
      answer("2027-05-10", [5, 4, -2, 9]),
      answer("2027-05-10", [5, 4, 1, 9]),
    );
    const second = mergeWeather(first, answer("2027-05-11", [4, 3, 5]));
    expect(second.saidColder).toEqual([{ day: plus(TODAY, 2), lowC: -2 }]);
    expect(mergeWeather(second, answer("2027-05-13", [5, 5])).saidColder).toEqual([]);
  });

  test("is none where it is as cold or colder now", () => {
    const merged = mergeWeather(answer("2027-05-10", [5, -2]), answer("2027-05-10", [5, -2]));
    expect(merged.saidColder).toEqual([]);
  });

  test("is none where it was too far ahead to be warned of", () => {
    const far = mergeWeather(
      answer("2027-05-10", [5, 5, 5, 5, -3]),
      answer("2027-05-10", [5, 5, 5, 5, 5]),
    );
    expect(far.saidColder).toEqual([]);
  });
});
