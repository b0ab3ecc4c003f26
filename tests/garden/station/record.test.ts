import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import {
  contradictsLatitude,
  dayNumberOf,
  dayOfNumber,
  firstNights,
  isSouth,
  lastNights,
  type NightSearch,
  quantile,
} from "../../../src/garden/station/record.ts";
import { lowsFrom, mildBut } from "../../engine/climate/series.ts";
import { isoDay } from "../../gardens.ts";

const FROST: NightSearch = { atMostC: 0, south: false };
const nights = (found: ReturnType<typeof lastNights>) =>
  found.map(({ year, night }) => `${year} ${night}`);

describe("the value that a share of years is below", () => {
  test.each([
    [0.1, 1],
    [0.25, 2.5],
    [0.5, 5],
    [0.75, 7.5],
    [0.9, 9],
  ])("%d of one to nine is %d, by positions i / (n + 1)", (share, value) => {
    expect(quantile([9, 8, 7, 6, 5, 4, 3, 2, 1], share)).toBe(value);
  });

  test("is the least and the most where years are few", () => {
    expect(quantile([3, 1, 2], 0.1)).toBe(1);
    expect(quantile([3, 1, 2], 0.9)).toBe(3);
  });

  test("is none where it lands on a year without, or between one and a date", () => {
    const without = Number.NEGATIVE_INFINITY;
    expect(quantile([without, without, 1, 2, 3], 0.1)).toBeNull();
    expect(quantile([without, without, 1, 2], 0.5)).toBeNull();
    expect(quantile([without, without, 1, 2, 3], 0.5)).toBe(1);
    expect(quantile([1, 2, Number.POSITIVE_INFINITY], 0.9)).toBeNull();
    expect(quantile([without, Number.POSITIVE_INFINITY], 0.5)).toBeNull();
  });

  test("is none of no years", () => {
    expect(quantile([], 0.5)).toBeNull();
  });
});

describe("days as numbers of a year", () => {
  test.each([
    ["2027-01-01", 1],
    ["2027-03-01", 60],
    ["2026-12-31", 0],
    ["2026-12-30", -1],
    ["2027-12-31", 365],
    ["2028-01-20", 385],
    ["2028-02-29", 425],
    ["2028-03-01", 425],
  ])("%s is %d in 2027", (day, number) => {
    expect(dayNumberOf(isoDay(day), 2027)).toBe(number);
  });

  test("come back as month and date, whichever year they are in", () => {
    expect([1, 60, 0, -1, 385, 62.6].map((n) => isoOf(dayOfNumber(n)).slice(5))).toEqual([
      "01-01",
      "03-01",
      "12-31",
      "12-30",
      "01-20",
      "03-04",
    ]);
  });
});

describe("last and first nights of each growing year", () => {
  const cold = { "2020-04-02": -1, "2020-04-20": 0, "2020-10-30": -3, "2021-05-04": -0.5 };
  const series = lowsFrom("2020-01-01", "2021-12-31", mildBut(cold));

  test("are the one before midsummer and the one after it", () => {
    expect(nights(lastNights(series, FROST))).toEqual(["2020 110", "2021 124"]);
    expect(nights(firstNights(series, FROST))).toEqual(["2020 303", "2021 cut off"]);
  });

  test("count a night at the very temperature, and at the tenth that stations write of it", () => {
    const at = (low: number) =>
      lastNights(lowsFrom("2020-01-01", "2020-12-31", mildBut({ "2020-04-02": low })), {
        atMostC: -20 / 9,
        south: false,
      }).map(({ night }) => night);
    expect(at(-2.2)).toEqual([92]);
    expect(at(-2.1)).toEqual(["cut off"]);
  });

  test("may be in December before and in January after, as at Houston", () => {
    const houston = { "2020-12-18": -1, "2022-01-21": -1 };
    const mild = lowsFrom("2019-12-01", "2022-12-31", mildBut(houston));
    expect(nights(lastNights(mild, FROST))).toContain("2021 -13");
    expect(nights(firstNights(mild, FROST))).toContain("2021 386");
  });

  test("are none in a whole winter without one", () => {
    const warm = lowsFrom("2020-01-01", "2022-12-31", () => 8);
    expect(nights(lastNights(warm, FROST))).toEqual(["2020 cut off", "2021 none", "2022 none"]);
    expect(nights(firstNights(warm, FROST))).toEqual(["2020 none", "2021 none", "2022 cut off"]);
  });

  test("are left out where ten nights are missing before they are met, and not where nine are", () => {
    const holes = (days: number) =>
      Object.fromEntries(Array.from({ length: days }, (_, i) => [`2020-07-${10 + i}`, null]));
    const missing = (days: number) =>
      nights(
        lastNights(
          lowsFrom("2020-01-01", "2021-12-31", mildBut({ ...cold, ...holes(days) })),
          FROST,
        ),
      );
    expect(missing(9)).toEqual(["2020 110", "2021 124"]);
    expect(missing(10)).toEqual(["2020 left out", "2021 124"]);
  });

  test("do not depend on missing nights beyond the one found", () => {
    const gap = lowsFrom("2020-03-20", "2021-01-31", mildBut(cold));
    expect(nights(lastNights(gap, FROST))).toEqual(["2020 110"]);
  });

  test("count days that have no row as missing", () => {
    const without = series.filter(
      ({ day }) => day < isoDay("2020-07-01") || day > isoDay("2020-07-10"),
    );
    expect(nights(lastNights(without, FROST))).toEqual(["2020 left out", "2021 124"]);
  });

  test("turn at 31 January in the south, and the year is the one in which spring begins", () => {
    const south = { "2020-10-05": -1, "2021-05-10": -2, "2021-09-28": 0 };
    const record = lowsFrom("2020-03-01", "2022-03-31", mildBut(south));
    const search = { atMostC: 0, south: true };
    expect(nights(lastNights(record, search))).toEqual(["2020 278", "2021 271"]);
    expect(nights(firstNights(record, search))).toEqual(["2020 495", "2021 cut off"]);
  });

  test("are cut off where the winter leaves the record, left out where nights are missing in it", () => {
    const late = (missing: number) => {
      const gaps = Array.from({ length: missing }, (_, i) => [
        isoOf(plus(isoDay("2021-09-01"), i)),
        null,
      ]);
      const record = lowsFrom("2021-01-01", "2021-12-31", mildBut(Object.fromEntries(gaps)));
      return nights(firstNights(record, FROST)).at(-1);
    };
    expect(late(0)).toBe("2021 cut off");
    expect(late(9)).toBe("2021 cut off");
    expect(late(10)).toBe("2021 left out");
  });

  test("are none of no days", () => {
    expect(lastNights([], FROST)).toEqual([]);
  });
});

describe("the half of the world of a record", () => {
  const winterIn = (month: string) =>
    lowsFrom("2020-01-01", "2020-12-31", (day) => (isoOf(day).slice(5, 7) === month ? -5 : 8));

  test("is by latitude where it is known", () => {
    expect(isSouth(winterIn("01"), -33)).toBe(true);
    expect(isSouth(winterIn("07"), 46)).toBe(false);
  });

  test("is by the warmer of January and July else", () => {
    expect(isSouth(winterIn("07"), null)).toBe(true);
    expect(isSouth(winterIn("01"), null)).toBe(false);
    expect(isSouth([], null)).toBe(false);
  });

  test("is contradicted by a latitude where January and July are far apart, and never near the equator", () => {
    const apart = (januaryC: number) =>
      lowsFrom("2020-01-01", "2020-12-31", (day) =>
        isoOf(day).slice(5, 7) === "01" ? januaryC : 8,
      );
    expect(contradictsLatitude(apart(3), -33)).toBe(true);
    expect(contradictsLatitude(apart(3), 33)).toBe(false);
    expect(contradictsLatitude(apart(13), 33)).toBe(true);
    expect(contradictsLatitude(apart(13), -33)).toBe(false);
    expect(contradictsLatitude(apart(4), -1)).toBe(false);
    expect(contradictsLatitude([], -33)).toBe(false);
  });
});
