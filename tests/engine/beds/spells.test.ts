import { describe, expect, test } from "vitest";
import { plus } from "../../../src/base/index.ts";
import { spellsIn } from "../../../src/engine/beds/spells.ts";
import type { KnownWeather, WeatherDay } from "../../../src/garden/model/weather.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";

const SUMMER = "2027-07-10";
const BEHIND = 20;

/** Weather as of a day: fair and dry but for these, by days from today. */
function known(asOf: string, said: Readonly<Record<number, Partial<WeatherDay>>>): KnownWeather {
  const today = isoDay(asOf);
  const days = Array.from({ length: BEHIND + 10 }, (_, i) => {
    const fair = { lowC: 12, highC: 25, rainMm: i % 4 === 0 ? 4 : 0, gustMps: null };
    return { day: plus(today, i - BEHIND), ...fair, ...said[i - BEHIND] };
  });
  return { source: "Open-Meteo", asOf: today, days, saidColder: [] };
}

const on = (said: Parameters<typeof known>[1], asOf = SUMMER) =>
  spellsIn(tellOf(QUARRY, { on: asOf }).year, known(asOf, said)).map(({ day, ...rest }) => ({
    ...rest,
    in: day - isoDay(asOf),
  }));
const only = (kind: string, ...of: Parameters<typeof on>) =>
  on(...of).filter((each) => each.kind === kind);

test("fair weather with a shower now and then, and no weather at all, ask for nothing", () => {
  expect(on({})).toEqual([]);
  expect(spellsIn(tellOf(QUARRY, { on: SUMMER }).year, null)).toEqual([]);
});

describe("a soaking", () => {
  test("is told on its first day, with what slugs take and what splits", () => {
    const [soaking, ...more] = only(
      "soaking",
      { 1: { rainMm: 24 }, 2: { rainMm: 30 } },
      "2027-06-08",
    );
    expect(more).toEqual([]);
    expect(soaking).toMatchObject({ in: 1, rainMm: 24, splitting: [] });
    expect(soaking?.kind === "soaking" && soaking.slugFood).toContain("lettuce");
    const [ripe] = only("soaking", { 0: { rainMm: 24 } }, "2027-09-05");
    expect(ripe).toMatchObject({ splitting: ["tomatoes"] });
  });

  test("is none of a day's shower, none where nothing stands, and none that fell yesterday", () => {
    expect(only("soaking", { 0: { rainMm: 19 } })).toEqual([]);
    expect(only("soaking", { 0: { rainMm: 30 } }, "2027-02-10")).toEqual([]);
    expect(only("soaking", { [-1]: { rainMm: 30 }, 0: { rainMm: 30 } })).toEqual([]);
  });
});

describe("a dry spell", () => {
  const dry = (from: number, to: number) =>
    Object.fromEntries(Array.from({ length: to - from + 1 }, (_, i) => [from + i, { rainMm: 0 }]));

  test("is told once ten days were dry and four more are forecast so, on that day alone", () => {
    const [spell, ...more] = only("dry spell", { ...dry(-10, 6), [-11]: { rainMm: 9 } });
    expect(more).toEqual([]);
    expect(spell).toMatchObject({ in: 0, since: plus(isoDay(SUMMER), -10) });
    expect(only("dry spell", { ...dry(-11, 6), [-12]: { rainMm: 9 } })).toEqual([]);
    expect(only("dry spell", dry(-10, 3))).toEqual([]);
  });

  test("is no news where it is cold, or nothing is known of the rain", () => {
    const cold = Object.fromEntries(
      Object.keys(dry(-10, 6)).map((day) => [day, { rainMm: 0, lowC: 2, highC: 12 }]),
    );
    expect(only("dry spell", { ...cold, [-11]: { rainMm: 9 } })).toEqual([]);
    const unknown = Object.fromEntries(
      Object.keys(dry(-20, 9)).map((day) => [day, { rainMm: null }]),
    );
    expect(only("dry spell", unknown)).toEqual([]);
  });

  test("names the rows that are not up yet", () => {
    const [spell] = only("dry spell", { ...dry(-10, 6), [-11]: { rainMm: 9 } }, "2027-05-12");
    expect(spell?.kind === "dry spell" && spell.seeds).toContain("carrots");
  });
});

describe("blight weather", () => {
  const humid = { humidHours: 7 };

  test("is two mild days running with six damp hours each, told on the second", () => {
    const [spell, ...more] = only("blight weather", { 0: humid, 1: humid, 2: humid });
    expect(more).toEqual([]);
    expect(spell).toMatchObject({ in: 1, plants: ["potatoes", "tomatoes"] });
  });

  test("is none of one such day, of colder nights, or of drier air, whatever it rains", () => {
    expect(only("blight weather", { 0: humid, 1: { humidHours: 5, rainMm: 9 } })).toEqual([]);
    const cold = { ...humid, lowC: 9.9 };
    expect(only("blight weather", { 0: cold, 1: cold })).toEqual([]);
  });

  test("goes by the rain where nothing is known of the air", () => {
    const wet = { rainMm: 3 };
    expect(only("blight weather", { 0: wet, 1: wet })).toHaveLength(1);
  });

  test("is not told again within ten days, nor before leaves have met", () => {
    const spell = { [-6]: humid, [-5]: humid, 0: humid, 1: humid };
    expect(only("blight weather", spell)).toEqual([]);
    expect(only("blight weather", { 0: humid, 1: humid }, "2027-05-12")).toEqual([]);
  });
});
