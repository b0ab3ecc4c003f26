import { expect, test } from "vitest";
import { plus, quantity } from "../../../src/base/index.ts";
import { believedAhead, observedWeatherOf } from "../../../src/engine/climate/observed-weather.ts";
import type { KnownWeather } from "../../../src/garden/model/weather.ts";
import { isoDay } from "../../gardens.ts";

const day = isoDay("2027-05-10");
const weather: KnownWeather = {
  ...{ source: "Open-Meteo", asOf: plus(day, 1), saidColder: [] },
  days: [{ day, lowC: 4, highC: 15, rainMm: 3, gustMps: null }],
};

test("known weather is the garden's own: lows colder by what the plan says, highs and rain as they are", () => {
  const colderBy = { ...quantity(2, "°C"), kind: "difference" as const };
  expect([...observedWeatherOf(weather, { colderBy })]).toEqual([
    [day, { lowC: 2, highC: 15, rainMm: 3, believed: 1 }],
  ]);
  expect(observedWeatherOf(weather, { colderBy: null }).get(day)).toEqual({
    ...{ lowC: 4, highC: 15, rainMm: 3, believed: 1 },
  });
});

test("nothing is known where nobody was asked", () => {
  expect(observedWeatherOf(null, { colderBy: null }).size).toBe(0);
});

test("a forecast counts the less the farther ahead it is, and what was measured counts whole", () => {
  expect(believedAhead(-1)).toBe(1);
  const ahead = [0, 1, 5, 9].map(believedAhead);
  expect(ahead).toEqual([...ahead].sort((a, b) => b - a));
  expect(ahead[0]).toBeGreaterThan(0.9);
  expect(ahead.at(-1)).toBeCloseTo(0.25, 1);
});
