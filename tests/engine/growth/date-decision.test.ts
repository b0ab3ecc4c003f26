import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/days/day.ts";
import { decideAcrossSeasons, decideDate } from "../../../src/engine/growth/date-decision.ts";
import { aheadWarmerK } from "../../../src/engine/growth/seasons.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { growingOf } from "./growing.ts";

const DAY = isoDay("2027-05-06");
const FROST = { basis: "last frost", day: DAY } as const;
const SOIL = { basis: "soil", day: plus(DAY, 9) } as const;

describe("the day that passes every test", () => {
  test("is the latest of them, whatever their order", () => {
    expect(decideDate([FROST, SOIL], null).day).toBe(SOIL.day);
    expect(decideDate([SOIL, FROST], null).day).toBe(SOIL.day);
  });

  test("is the stop day where the tests hold it longer, and says so", () => {
    const held = decideDate([FROST, SOIL], plus(DAY, 8));
    expect([held.day, held.stopped, held.stop]).toEqual([plus(DAY, 8), true, plus(DAY, 8)]);
  });

  test("on the stop day itself has not been stopped", () => {
    const just = decideDate([FROST, SOIL], SOIL.day);
    expect([just.day, just.stopped]).toEqual([SOIL.day, false]);
  });

  test("is the same in every season, on each ground once", () => {
    const reckoned = decideDate([FROST, SOIL, FROST], null, ["soil", "given"]);
    expect([reckoned.early, reckoned.late]).toEqual([SOIL.day, SOIL.day]);
    expect(reckoned.basis).toEqual(["last frost", "soil", "given"]);
    expect(reckoned.tests).toEqual([FROST, SOIL, FROST]);
  });

  test("throws where there is no test", () => {
    expect(() => decideDate([], null)).toThrow(RangeError);
  });
});

describe("the day in a warm, the usual and a cold season", () => {
  const beet = growingOf(QUARRY, "beet");
  const soilIn = (shiftK: number) =>
    decideDate([{ basis: "soil", day: plus(DAY, -shiftK * 2) }], null);

  test("is the usual one's, with the other two on either side", () => {
    const { early, day, late, basis } = decideAcrossSeasons(beet, soilIn);
    const shift = aheadWarmerK(beet.climate, "warm", DAY);
    expect(shift).toBeGreaterThan(0);
    expect([early, day, late]).toEqual([plus(DAY, -shift * 2), DAY, plus(DAY, shift * 2)]);
    expect(basis).toEqual(["soil"]);
  });

  test("goes by the spread of the weeks before it, not of those after", () => {
    const climate = { ...beet.climate, spreadK: (day: Day) => (day < DAY ? 3 : 1.5) };
    const { early } = decideAcrossSeasons({ ...beet, climate }, soilIn);
    const wide = { ...beet.climate, spreadK: () => 3 };
    expect(early).toBe(decideAcrossSeasons({ ...beet, climate: wide }, soilIn).early);
    expect(early).toBeLessThan(decideAcrossSeasons(beet, soilIn).early);
  });

  test("is never out of order, even where warmth holds it back", () => {
    const { early, day, late } = decideAcrossSeasons(beet, (shiftK) => soilIn(-shiftK));
    expect([early, day, late]).toEqual([DAY, DAY, DAY]);
  });
});
