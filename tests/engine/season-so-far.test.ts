import { describe, expect, test } from "vitest";
import { buildSchedule, horizonAt } from "../../src/app/build.ts";
import { type Day, plus, startOf } from "../../src/base/index.ts";
import { climateFrom } from "../../src/engine/climate/climate.ts";
import { seasonFor } from "../../src/engine/year.ts";
import type { KnownWeather } from "../../src/garden/model/weather.ts";
import { ALONE, gardenOf, isoDay, planOf, QUARRY, tellOf } from "../gardens.ts";

const TODAY = isoDay("2027-05-20");
/** Nobody is named, so that no day is put off to the next Saturday. */
const USUAL = tellOf(ALONE, { on: "2027-05-20" });

/** Eighty days behind and ten ahead, so much warmer [K] than the curve. */
function weather(warmerK: number): KnownWeather {
  const { climate } = seasonFor(USUAL.year, planOf(ALONE));
  const { air } = climateFrom(climate);
  const days = Array.from({ length: 90 }, (_, i) => {
    const day = plus(TODAY, i - 80);
    const { lowC, highC } = air(day);
    return { day, lowC: lowC + warmerK, highC: highC + warmerK, rainMm: null, gustMps: null };
  });
  return { source: "Open-Meteo", asOf: TODAY, days, saidColder: [] };
}

function dueDays(known: KnownWeather): ReadonlyMap<string, Day> {
  const garden = { ...gardenOf(ALONE), weather: known };
  const built = buildSchedule(garden, horizonAt(garden, startOf(TODAY, "America/Denver")), {});
  return new Map(built.scheduled.map(({ task }) => [task.id, task.window.due]));
}

const usual = new Map(USUAL.scheduled.map(({ task }) => [task.id, task.window.due]));
const moved = (known: KnownWeather) =>
  [...dueDays(known)].flatMap(([id, due]) => {
    const by = due - (usual.get(id) ?? due);
    return by === 0 ? [] : [by];
  });

const WARM_BEYOND_THE_FIRST = 2;

describe("the season so far", () => {
  // Real springs cross a line sooner, and are there for some days running about when the smooth curve is; a spring as smooth
  // as the curve is there for the first time on its day.
  test("that was as smooth as the curve moves nothing but by the days that soil has to be warm", () => {
    const all = moved(weather(0));
    expect(all.filter((by) => by < -1 || by > WARM_BEYOND_THE_FIRST)).toEqual([]);
  });

  test("that was warm brings what waits for warmth forward, and that was cold puts it off", () => {
    const [warm, cold] = [moved(weather(4)), moved(weather(-4))];
    expect(warm.length).toBeGreaterThan(10);
    expect(cold.length).toBeGreaterThan(10);
    expect(warm.filter((by) => by < 0).length).toBeGreaterThan(0.8 * warm.length);
    expect(cold.filter((by) => by > 0).length).toBeGreaterThan(0.8 * cold.length);
  });

  test("waters what the rain left dry, says how much fell, and nothing where it was enough", () => {
    const [dry, wet] = [0, 6].map((aDay) => {
      const known = weather(0);
      const days = known.days.map((each) => ({ ...each, rainMm: aDay }));
      const garden = { ...gardenOf(QUARRY), weather: { ...known, days } };
      const built = buildSchedule(garden, horizonAt(garden, startOf(TODAY, "America/Denver")), {});
      return built.events.filter(({ key, day }) => /water\/week/.test(key) && day < plus(TODAY, 4));
    });
    expect(dry?.at(-1)?.text).toContain("Hardly any rain fell or is forecast for this week.");
    expect(dry?.length).toBeGreaterThan(wet?.length ?? 99);
    expect(wet).toEqual([]);
  });

  test("is told against a usual year, which stays what it is", () => {
    const garden = { ...gardenOf(ALONE), weather: weather(4) };
    const built = buildSchedule(garden, horizonAt(garden, startOf(TODAY, "America/Denver")), {});
    expect(built.year.baseline).toEqual(USUAL.year.baseline);
    expect(
      built.events.some(({ text }) =>
        /The last weeks were much warmer than usual\. \d+ days earlier than usual/.test(text),
      ),
    ).toBe(true);
  });
});
