import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { asksForWork, coldNightsIn, wouldLose } from "../../../src/engine/beds/cold-nights.ts";
import { frostTonight } from "../../../src/engine/beds/frost-tonight.ts";
import type { KnownWeather } from "../../../src/garden/model/weather.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";

const TODAY = isoDay("2027-06-20");
const { year } = tellOf(QUARRY, { on: "2027-06-20" });

const known = (
  lows: readonly number[],
  saidColder: KnownWeather["saidColder"] = [],
): KnownWeather => ({
  ...{ source: "Open-Meteo", asOf: TODAY, saidColder },
  days: lows.map((lowC, i) => ({
    day: plus(TODAY, i),
    ...{ lowC, highC: lowC + 12, rainMm: null, gustMps: null },
  })),
});

const daysOf = (weather: KnownWeather | null) => coldNightsIn(year, weather).map(({ day }) => day);

describe("cold nights ahead", () => {
  test("are none where nothing is known, and none where nights are mild", () => {
    expect(daysOf(null)).toEqual([]);
    expect(daysOf(known([9, 9, 9, 9]))).toEqual([]);
  });

  test("stand on the day before the morning they freeze, three of them at most", () => {
    expect(daysOf(known([9, -2, -2, -2, -2, -2]))).toEqual([0, 1, 2].map((i) => plus(TODAY, i)));
    expect(daysOf(known([-2, 9, 9, 9]))).toEqual([]);
  });

  test("are taken as colder than their figure, the more so the farther ahead", () => {
    const nights = coldNightsIn(year, known([9, 0, 0, 0]));
    expect(nights.map(({ offByK }) => offByK)).toEqual([0, 0.5, 1]);
    expect(nights.map(({ report }) => report.forecastC)).toEqual([0, -0.5, -1]);
  });

  test("that have turned milder are there once more, with how cold they were said to be", () => {
    const said = [{ day: plus(TODAY, 1), lowC: -2 }];
    expect(coldNightsIn(year, known([9, 9, 9, 9], said))[0]).toMatchObject({
      ...{ day: TODAY, forecastC: 9, saidC: -2 },
    });
    expect(daysOf(known([9, 9, 9, 9], [{ day: plus(TODAY, 1), lowC: 8 }]))).toEqual([]);
  });

  const warmestThat = (is: typeof wouldLose, of = year) => {
    for (let lowC = 8; lowC > -20; lowC -= 0.25) if (is(frostTonight(of, TODAY, lowC))) return lowC;
    throw new Error("nothing is hurt by any cold");
  };

  test("that would kill are not taken back before they are milder by more than a forecast is off", () => {
    const limit = warmestThat(wouldLose);
    const said = [{ day: plus(TODAY, 1), lowC: limit - 2 }];
    const saidAt = (lowC: number) => coldNightsIn(year, known([9, lowC, 9, 9], said))[0]?.saidC;
    expect(saidAt(limit + 0.75)).toBeNull();
    expect(saidAt(limit + 1.5)).toBe(limit - 2);
  });

  test("that would only hurt what is hardy must be colder than its limit", () => {
    const beds = "beds:\n  Root bed:\n    is: 12 x 4 ft\n    crops:\n      - beet: 2 rows\n";
    const text = QUARRY.slice(0, QUARRY.indexOf("beds:")) + beds;
    const hardy = tellOf(text, { on: "2027-06-20" }).year;
    const limit = warmestThat(asksForWork, hardy);
    expect(wouldLose(frostTonight(hardy, TODAY, limit))).toBe(false);
    const at = (lowC: number) => coldNightsIn(hardy, known([9, lowC, 9, 9])).length;
    expect([at(limit), at(limit - 0.5)]).toEqual([0, 1]);
  });

  test("that are still cold are not taken back, whatever was said before", () => {
    const said = [{ day: plus(TODAY, 1), lowC: -6 }];
    expect(coldNightsIn(year, known([9, -1, 9, 9], said))[0]?.saidC).toBeNull();
  });
});
