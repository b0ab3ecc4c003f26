import fc from "fast-check";
import { describe, test } from "vitest";
import { dayOf, dayOrThrow, partsOf, plus } from "../../src/base/days/day.ts";
import { frostRecordOf, type NightDates } from "../../src/garden/station/frost-record.ts";
import {
  type DailyRecord,
  firstNights,
  lastNights,
  type NightSearch,
  type SearchedYear,
} from "../../src/garden/station/record.ts";
import { samples } from "../depth.ts";

/** Nearly three years, none of them with a 29 February. */
const FROM = dayOrThrow(2001, 1, 1);
const DAYS = 3 * 365 - 31;

const FROST: NightSearch = { atMostC: 0, south: false };

/** A winter's swing with weather on top, some of it missing; the warmer it is, the more years go without frost. */
const records = fc
  .record({
    meanC: fc.integer({ min: 2, max: 20 }),
    weather: fc.array(fc.integer({ min: -60, max: 60 }), { minLength: DAYS, maxLength: DAYS }),
    holes: fc.array(fc.nat(DAYS - 1), { maxLength: 60 }),
  })
  .map(({ meanC, weather, holes }) => {
    const missing = new Set(holes);
    return weather.map((tenths, i): DailyRecord => {
      const season = -9 * Math.cos(((i - 15) / 365) * 2 * Math.PI);
      const lowC = missing.has(i) ? null : meanC + season + tenths / 10;
      return { day: plus(FROM, i), lowC, highC: null, rainMm: null };
    });
  });

const RUNS = { numRuns: samples(40, 20) };

const inOrder = ({ early, usual, late }: NightDates, side: "last" | "first") => {
  const without = side === "last" ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const [a, b, c] = [early ?? without, usual ?? without, late ?? without];
  return a <= b && b <= c;
};

/** The same dates some years on: days of a year of 365 keep their place in it. */
function yearsOn(series: readonly DailyRecord[], years: number): readonly DailyRecord[] {
  return series.map((daily) => {
    const { year, month, date } = partsOf(daily.day);
    return { ...daily, day: dayOf(year + years, month, date) ?? daily.day };
  });
}

const later = (searched: readonly SearchedYear[], years: number) =>
  searched.map(({ year, night }) => ({ year: year + years, night }));

const used = (searched: readonly SearchedYear[]) =>
  new Map(
    searched
      .filter(({ night }) => night !== "left out" && night !== "cut off")
      .map(({ year, night }) => [year, night]),
  );

describe("the frost dates of any record", () => {
  test("are early, usual and late in order, nones before spring's and after autumn's", () => {
    fc.assert(
      fc.property(records, fc.boolean(), (series, south) => {
        const { last, first } = frostRecordOf(series, south);
        return ([36, 32, 28] as const).every(
          (nightF) => inOrder(last[nightF], "last") && inOrder(first[nightF], "first"),
        );
      }),
      RUNS,
    );
  });

  test("count every year once: used, among them without, left out, or cut off", () => {
    fc.assert(
      fc.property(records, (series) => {
        const { years, without, leftOut, cutOff } = frostRecordOf(series, false).last[32];
        return without <= years && years + leftOut + cutOff === lastNights(series, FROST).length;
      }),
      RUNS,
    );
  });

  test("are the same for the same days of other years", () => {
    fc.assert(
      fc.property(records, fc.constantFrom(-100, -8, 8, 60, 96), (series, years) => {
        const moved = yearsOn(series, years);
        return (
          JSON.stringify(lastNights(moved, FROST)) ===
            JSON.stringify(later(lastNights(series, FROST), years)) &&
          JSON.stringify(firstNights(moved, FROST)) ===
            JSON.stringify(later(firstNights(series, FROST), years))
        );
      }),
      RUNS,
    );
  });

  test("are half a year on for the same record in the other half of the world", () => {
    const toSouth = dayOrThrow(2002, 1, 31) - dayOrThrow(2001, 7, 31);
    const half = (searched: readonly SearchedYear[]) =>
      searched.map(({ year, night }) => ({
        year,
        night: typeof night === "number" ? night + toSouth : night,
      }));
    fc.assert(
      fc.property(records, (series) => {
        // Up to a 29 February, which would stand in another place of the winter.
        const short = series.filter(({ day }) => day < dayOrThrow(2003, 8, 15));
        const mirrored = short.map((daily) => ({ ...daily, day: plus(daily.day, toSouth) }));
        const south = { ...FROST, south: true };
        return (
          JSON.stringify(lastNights(mirrored, south)) ===
            JSON.stringify(half(lastNights(short, FROST))) &&
          JSON.stringify(firstNights(mirrored, south)) ===
            JSON.stringify(half(firstNights(short, FROST)))
        );
      }),
      RUNS,
    );
  });

  test("are never farther from midsummer for one night that is colder", () => {
    fc.assert(
      fc.property(
        records,
        fc.nat(DAYS - 1),
        fc.integer({ min: 1, max: 30 }),
        (series, at, colderK) => {
          const colder = series.map((daily, i) =>
            i === at && daily.lowC !== null ? { ...daily, lowC: daily.lowC - colderK } : daily,
          );
          const nearer = (nights: typeof lastNights, without: number, sign: 1 | -1) => {
            const [before, after] = [used(nights(series, FROST)), used(nights(colder, FROST))];
            return [...before].every(([year, night]) => {
              const now = after.get(year);
              if (now === undefined) return false;
              const number = (one: number | string) => (typeof one === "number" ? one : without);
              return (number(now) - number(night)) * sign >= 0 || now === night;
            });
          };
          return (
            nearer(lastNights, Number.NEGATIVE_INFINITY, 1) &&
            nearer(firstNights, Number.POSITIVE_INFINITY, -1)
          );
        },
      ),
      RUNS,
    );
  });

  test("lose years by holes and gain none, while the nights themselves stay", () => {
    const where = fc.tuple(fc.nat(DAYS - 1), fc.integer({ min: 1, max: 120 }));
    fc.assert(
      fc.property(records, fc.array(where, { minLength: 1, maxLength: 4 }), (series, holes) => {
        const isHole = (i: number) => holes.some(([from, days]) => i >= from && i < from + days);
        const nights = (searched: readonly SearchedYear[]) => used(searched);
        const warmer = series.map((daily, i) =>
          isHole(i) && (daily.lowC ?? 1) > FROST.atMostC + 1 ? { ...daily, lowC: null } : daily,
        );
        return [lastNights, firstNights].every((search) => {
          const [whole, holed] = [nights(search(series, FROST)), nights(search(warmer, FROST))];
          return [...holed].every(([year, night]) => whole.get(year) === night);
        });
      }),
      RUNS,
    );
  });

  test("lose years by days that are cut out, too, and gain none", () => {
    fc.assert(
      fc.property(
        records,
        fc.nat(DAYS - 1),
        fc.integer({ min: 1, max: 400 }),
        (series, from, days) => {
          const cut = series.filter((_, i) => i < from || i >= from + days);
          return [lastNights, firstNights].every((search) => {
            const [whole, holed] = [used(search(series, FROST)), used(search(cut, FROST))];
            return [...holed.keys()].every((year) => whole.has(year));
          });
        },
      ),
      RUNS,
    );
  });
});
