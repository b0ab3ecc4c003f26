import { expect, test } from "vitest";
import { quantity } from "../../../src/base/index.ts";
import { observedWeatherOf } from "../../../src/engine/climate/observed-weather.ts";
import type { KnownWeather } from "../../../src/garden/model/weather.ts";
import { isoDay } from "../../gardens.ts";

const day = isoDay("2027-05-10");
const weather: KnownWeather = {
  ...{ source: "Open-Meteo", asOf: day, saidColder: [] },
  days: [{ day, lowC: 4, highC: 15, rainMm: 3, gustMps: null }],
};

test("known weather is the garden's own: lows colder by what the plan says, highs and rain as they are", () => {
  const colderBy = { ...quantity(2, "°C"), kind: "difference" as const };
  expect([...observedWeatherOf(weather, { colderBy })]).toEqual([
    [day, { lowC: 2, highC: 15, rainMm: 3 }],
  ]);
  expect(observedWeatherOf(weather, { colderBy: null }).get(day)).toEqual({
    ...{ lowC: 4, highC: 15, rainMm: 3 },
  });
});

test("nothing is known where nobody was asked", () => {
  expect(observedWeatherOf(null, { colderBy: null }).size).toBe(0);
});
