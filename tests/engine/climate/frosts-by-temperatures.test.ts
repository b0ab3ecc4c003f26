import { describe, expect, test } from "vitest";
import { dayFromIso, dayOfYear } from "../../../src/base/index.ts";
import {
  frostsByTemperatures,
  GUESSED_SPREAD_DAYS,
} from "../../../src/engine/climate/frosts-by-temperatures.ts";
import { FROST_SPREAD_DAYS } from "../../../src/garden/plan/frosts.ts";
import { CLIMATES, type StationClimate } from "../../sources/climates.ts";

/** By a station's two temperatures to the whole degree, as a gardener knows them. */
function guessAt({ latitude, clock, highC, lowC }: StationClimate) {
  const [hottestC, coldestC] = [Math.round(Math.max(...highC)), Math.round(Math.min(...lowC))];
  return frostsByTemperatures({ latitude, clock, hottestC, coldestC, south: latitude < 0 });
}

const dayOf = (said: string) => {
  const day = dayFromIso(new Date(`${said} 2027 UTC`).toISOString().slice(0, 10));
  return day === null ? Number.NaN : dayOfYear(day);
};

const daysOff = (a: number, b: number) => Math.abs(((a - b + 547.5) % 365) - 182.5);

const KNOWN = CLIMATES.filter(({ frosts }) => frosts !== null);

/** How far each guess lies from the published usual date [days], nearest first. */
const OFF = KNOWN.flatMap((station) => {
  const guess = guessAt(station);
  if (guess === null || station.frosts === null || station.frosts[0] === "none") return [];
  const [last, first] = station.frosts;
  return [daysOff(guess.last, dayOf(last)), daysOff(guess.first, dayOf(first))];
}).sort((a, b) => a - b);

describe("frost dates guessed by two temperatures", () => {
  test("lie within nine days of the published ones at half of the stations, and within 23 at nine in ten", () => {
    expect(OFF).toHaveLength(38);
    expect(OFF[OFF.length >> 1]).toBeLessThanOrEqual(9.5);
    expect(OFF[Math.floor(OFF.length * 0.9)]).toBeLessThanOrEqual(23);
  });

  test("are as wide as what is unsure of them and what years vary, together", () => {
    const sure = OFF[Math.floor(OFF.length * 0.9)] ?? 0;
    expect(GUESSED_SPREAD_DAYS).toBe(Math.round(Math.hypot(FROST_SPREAD_DAYS, sure)));
  });

  test("are none at every station without frost, and wrongly so at three mild ones", () => {
    const [none, some] = [true, false].map((without) =>
      KNOWN.filter(({ frosts }) => (frosts?.[0] === "none") === without),
    );
    expect(none?.length).toBeGreaterThan(4);
    expect(none?.filter((station) => guessAt(station) !== null)).toEqual([]);
    expect(some?.filter((station) => guessAt(station) === null)).toHaveLength(3);
  });

  test("leave a month of summer at the least", () => {
    const guess = frostsByTemperatures({
      ...{ latitude: 70, clock: "America/Anchorage", south: false, hottestC: 6, coldestC: -30 },
    });
    expect((guess?.first ?? 0) - (guess?.last ?? 0)).toBeGreaterThanOrEqual(29);
  });
});
