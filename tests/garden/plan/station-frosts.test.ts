import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import type { FrostNights, ThreeDates } from "../../../src/garden/plan/nights.ts";
import { type StationFrostDates, stationFrosts } from "../../../src/garden/plan/station-frosts.ts";
import { on } from "./canonical.ts";

const NONE: ThreeDates = [null, null, null];
const NIGHTS: FrostNights = {
  last: {
    36: [on(5, 1), on(5, 17), on(6, 2)],
    32: [on(4, 19), on(5, 5), on(5, 21)],
    28: [on(4, 7), on(4, 23), on(5, 9)],
  },
  first: {
    36: [on(9, 10), on(9, 20), on(9, 30)],
    32: [on(9, 18), on(9, 28), on(10, 8)],
    28: [on(9, 30), on(10, 10), on(10, 20)],
  },
};

const iso = (own: StationFrostDates) =>
  own && own.dates !== "none"
    ? [own.dates.early, own.dates.usual, own.dates.late].map((day) => isoOf(day).slice(5)).join(" ")
    : (own?.dates ?? null);
const said = (nights: FrostNights, colderF = 0) => {
  const { last, first, killing } = stationFrosts(nights, colderF);
  return { last: iso(last), first: iso(first), killing: iso(killing) };
};

describe("a garden's frost dates by its station", () => {
  it("are the station's own where it is as cold", () => {
    expect(said(NIGHTS)).toEqual({
      last: "04-19 05-05 05-21",
      first: "09-18 09-28 10-08",
      killing: "09-30 10-10 10-20",
    });
    expect(stationFrosts(NIGHTS, 0).last?.notes).toEqual([]);
  });

  it("are between the station's nights, in proportion, where the garden is a little colder", () => {
    expect(said(NIGHTS, 3)).toEqual({
      last: "04-28 05-14 05-30",
      first: "09-12 09-22 10-02",
      killing: "09-21 10-01 10-11",
    });
    expect(said(NIGHTS, 4).last).toBe("05-01 05-17 06-02");
    expect(said(NIGHTS, 4).killing).toBe("09-18 09-28 10-08");
  });

  it("go on along the same slope beyond 36 °F, and towards 28 °F where it is warmer", () => {
    expect(said(NIGHTS, 8)).toEqual({
      last: "05-13 05-29 06-14",
      first: "09-02 09-12 09-22",
      killing: "09-10 09-20 09-30",
    });
    expect(said(NIGHTS, -4)).toEqual({
      last: "04-07 04-23 05-09",
      first: "09-30 10-10 10-20",
      killing: "10-12 10-22 11-01",
    });
  });

  it("say that they were moved, and which way", () => {
    expect(stationFrosts(NIGHTS, 3).last?.notes).toEqual([
      "moved for a garden that much colder than the station",
    ]);
    expect(stationFrosts(NIGHTS, -1.8).first?.notes[0]).toContain("that much warmer");
  });

  it("are not moved, and say so, where the file has no nights of other degrees", () => {
    const alone: FrostNights = {
      last: { ...NIGHTS.last, 36: null },
      first: { 36: null, 32: NIGHTS.first[32], 28: null },
    };
    expect(said(alone, 3)).toEqual({
      last: said(NIGHTS).last,
      first: said(NIGHTS).first,
      killing: null,
    });
    expect(stationFrosts(alone, 3).last?.notes[0]).toMatch(/^not moved/);
  });

  it("take the careful date for one that there is none of, and say so", () => {
    const some: FrostNights = {
      last: { ...NIGHTS.last, 32: [null, null, on(3, 2)] },
      first: { ...NIGHTS.first, 32: [on(12, 3), on(12, 20), null] },
    };
    expect(said(some)).toMatchObject({ last: "03-02 03-02 03-02", first: "12-03 12-20 12-20" });
    expect(stationFrosts(some, 0).last?.notes[0]).toMatch(/half of the years or more go without/);
    expect(stationFrosts(some, 0).first?.notes[0]).toMatch(/1 year in 10 go/);
  });

  it("take the warmer night's date where there is no colder one and the garden is between", () => {
    const some: FrostNights = {
      ...NIGHTS,
      last: { 36: [on(2, 1), on(2, 20), on(3, 9)], 32: [null, null, on(3, 1)], 28: NONE },
    };
    expect(said(some, 2).last).toBe("02-01 02-20 03-05");
  });

  it("are none where no year has such nights, and nothing where the file says nothing", () => {
    const none: FrostNights = {
      last: { 36: NONE, 32: NONE, 28: NONE },
      first: { 36: null, 32: null, 28: null },
    };
    expect(said(none, 3)).toEqual({ last: "none", first: null, killing: null });
  });

  it("are in order and never earlier in spring nor later in autumn for a colder garden", () => {
    const degrees = fc.double({ min: -12, max: 12, noNaN: true });
    fc.assert(
      fc.property(degrees, degrees, (a, b) => {
        const [warm, cold] = [
          stationFrosts(NIGHTS, Math.min(a, b)),
          stationFrosts(NIGHTS, Math.max(a, b)),
        ];
        for (const { dates } of [warm.last, warm.first, cold.last, cold.first].flatMap(
          (o) => o ?? [],
        ))
          expect(dates !== "none" && dates.early <= dates.usual && dates.usual <= dates.late).toBe(
            true,
          );
        const usual = (own: StationFrostDates) =>
          own && own.dates !== "none" ? own.dates.usual : plus(on(1, 1), 0);
        return usual(cold.last) >= usual(warm.last) && usual(cold.first) <= usual(warm.first);
      }),
    );
  });
});
