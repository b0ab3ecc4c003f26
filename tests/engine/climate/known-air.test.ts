import { expect, test } from "vitest";
import { quantity } from "../../../src/base/index.ts";
import { knownAirOf } from "../../../src/engine/climate/known-air.ts";
import type { KnownWeather } from "../../../src/garden/model/weather.ts";
import { isoDay } from "../../gardens.ts";

const day = isoDay("2027-05-10");
const weather: KnownWeather = {
  ...{ source: "Open-Meteo", asOf: day, saidColder: [] },
  days: [{ day, lowC: 4, highC: 15, rainMm: null, gustMps: null }],
};

test("known air is the garden's own: lows colder by what the plan says, highs as they are", () => {
  const colderBy = { ...quantity(2, "°C"), kind: "difference" as const };
  expect([...knownAirOf(weather, { colderBy })]).toEqual([[day, { lowC: 2, highC: 15 }]]);
  expect(knownAirOf(weather, { colderBy: null }).get(day)).toEqual({ lowC: 4, highC: 15 });
});

test("nothing is known where nobody was asked", () => {
  expect(knownAirOf(null, { colderBy: null }).size).toBe(0);
});
