import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import {
  dayHours,
  dayHoursOf,
  shortDays,
  sunOf,
  sunsetOn,
} from "../../../src/engine/climate/sun.ts";
import { isoDay } from "../../gardens.ts";

const HELENA = { latitude: 46.6, longitude: -112 };
const NORTH_CAPE = { latitude: 71.17, longitude: 25.78 };

describe("the sun's day", () => {
  test("has dawn, rise, its highest point, set and dusk in that order", () => {
    const sun = sunOf(isoDay("2027-05-06"), HELENA);
    if (sun.kind !== "rises" || sun.dawn === null || sun.dusk === null)
      throw new Error(`an odd day: ${sun.kind}`);
    const order = [sun.dawn, sun.rise, sun.transit, sun.set, sun.dusk];
    expect([...order].sort((a, b) => a - b)).toEqual(order);
    expect(sun.set - sun.rise).toBeLessThan(86_400_000);
  });

  test("is the one light of the garden's own date, wherever that lies in UTC", () => {
    const set = (longitude: number) => {
      const sun = sunOf(isoDay("2027-05-06"), { latitude: 46.6, longitude });
      return sun.kind === "rises" ? new Date(sun.set).toISOString().slice(0, 10) : sun.kind;
    };
    expect(set(0)).toBe("2027-05-06");
    expect(set(-112)).toBe("2027-05-07");
    const noons = [-175, -112, 0, 112, 175].map(
      (longitude) => sunOf(isoDay("2027-05-06"), { latitude: 46.6, longitude }).transit,
    );
    const clocks = noons.map((noon, i) => noon + ([-175, -112, 0, 112, 175][i] ?? 0) * 240_000);
    for (const clock of clocks)
      expect(new Date(clock).toISOString()).toMatch(/^2027-05-06T(11:5|12:0)/);
  });

  test("can be without rise and set, with twilight in winter and none in summer", () => {
    const winter = sunOf(isoDay("2027-12-21"), NORTH_CAPE);
    expect(winter.kind).toBe("never rises");
    expect(winter.dawn).not.toBeNull();
    const summer = sunOf(isoDay("2027-06-21"), NORTH_CAPE);
    expect(summer.kind).toBe("never sets");
    expect(summer.dawn).toBeNull();
  });
});

describe("the hours of a day", () => {
  test("are nought in polar night and 24 in polar day", () => {
    expect(dayHours(isoDay("2027-12-21"), 75)).toBe(0);
    expect(dayHours(isoDay("2027-06-21"), 75)).toBe(24);
    expect(dayHours(isoDay("2027-06-21"), -75)).toBe(0);
  });

  test("are a little over twelve everywhere at the equinox, for the air bends light", () => {
    for (const latitude of [-50, 0, 50]) {
      const hours = dayHours(isoDay("2027-03-20"), latitude);
      expect(hours).toBeGreaterThan(12.1);
      expect(hours).toBeLessThan(12.25);
    }
  });

  test("differ by less than two minutes from one end of the world to the other at 50°", () => {
    const off = [-180, 180].flatMap((longitude) =>
      Array.from({ length: 365 }, (_, i) => {
        const day = plus(isoDay("2027-01-01"), i);
        const sun = sunOf(day, { latitude: 50, longitude });
        const hours = sun.kind === "rises" ? (sun.set - sun.rise) / 3_600_000 : Number.NaN;
        return Math.abs(hours - dayHours(day, 50));
      }),
    );
    expect(Math.max(...off) * 60).toBeLessThan(2);
  });
});

describe("the hours of a day, remembered", () => {
  const days = (from: string, count: number) =>
    Array.from({ length: count }, (_, i) => plus(isoDay(from), i));
  const offMinutes = (latitude: number) => {
    const hours = dayHoursOf(latitude);
    const off = days("2024-01-01", 4 * 365 + 1).map((day) =>
      Math.abs(hours(day) - dayHours(day, latitude)),
    );
    return Math.max(...off) * 60;
  };

  test("are within three minutes of each day's own, leap years and all, up to 60°", () => {
    expect(offMinutes(60)).toBeLessThan(3);
    expect(offMinutes(40)).toBeLessThan(1.5);
  });

  test("do not hang on which year was asked for first", () => {
    const [first, second] = [dayHoursOf(46.6), dayHoursOf(46.6)];
    const leap = isoDay("2028-02-29");
    const asked: readonly Day[] = [isoDay("2024-02-28"), leap, isoDay("2027-02-28")];
    const forward = asked.map(first);
    const backward = [...asked].reverse().map(second).reverse();
    expect(forward).toEqual(backward);
    expect(first(leap)).toBe(first(isoDay("2027-03-01")));
  });
});

describe("days shorter than ten hours", () => {
  const winter = (latitude: number, year: number) =>
    shortDays(dayHoursOf(latitude), isoDay(latitude < 0 ? `${year}-01-01` : `${year}-07-01`));
  const told = (latitude: number, year: number) => {
    const days = winter(latitude, year);
    return days && [isoOf(days.first), isoOf(days.last)];
  };

  test("run from autumn into the next year in the north, and within the year in the south", () => {
    expect(told(46.6, 2027)).toEqual(["2027-11-03", "2028-02-08"]);
    expect(told(-40, 2027)?.map((iso) => iso.slice(0, 7))).toEqual(["2027-05", "2027-07"]);
  });

  test("are all between the two, and none outside", () => {
    const days = winter(46.6, 2027);
    if (!days) throw new Error("none");
    expect(dayHours(plus(days.first, -1), 46.6)).toBeGreaterThanOrEqual(10);
    expect(dayHours(plus(days.last, 1), 46.6)).toBeGreaterThanOrEqual(10);
    for (let day = days.first; day <= days.last; day = plus(day, 1))
      expect(dayHours(day, 46.6)).toBeLessThan(10);
  });

  test("are none near the equator", () => {
    expect(told(20, 2027)).toBeNull();
    expect(told(-20, 2027)).toBeNull();
  });

  test("last all the polar winter where the sun does not rise at all", () => {
    expect(told(90, 2027)?.map((iso) => iso.slice(0, 7))).toEqual(["2027-09", "2028-03"]);
  });
});

describe("sunset by the garden's clock", () => {
  test("is about that of its zone's meridian, summer time with it", () => {
    const at = (iso: string, latitude: number, clock: string) =>
      sunsetOn(isoDay(iso), latitude, clock);
    // Denver lies on its zone's meridian: 20:31 at midsummer, 16:38 at midwinter. Source: from memory, unchecked.
    const june = at("2027-06-21", 40, "America/Denver") ?? 0;
    const december = at("2027-12-21", 40, "America/Denver") ?? 0;
    expect(Math.abs(june - (20 * 60 + 31))).toBeLessThanOrEqual(5);
    expect(Math.abs(december - (16 * 60 + 38))).toBeLessThanOrEqual(5);
    expect(at("2027-12-21", 40, "Australia/Sydney")).not.toBeNull();
    expect(at("2027-06-21", 70, "Europe/Oslo")).toBeNull();
  });
});
