import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import {
  chanceOfFrostAfter,
  firstFrostAt,
  killingFrost,
  lastFrostAt,
  sayOdds,
} from "../../../src/engine/climate/frost.ts";
import type { FrostDates } from "../../../src/garden/model/plan.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const dates = (early: string, usual: string, late: string): FrostDates => ({
  early: isoDay(early),
  usual: isoDay(usual),
  late: isoDay(late),
  given: 3,
});

/** The lane's own: 20 April, 6 May, 21 May. */
const SPRING = dates("2027-04-20", "2027-05-06", "2027-05-21");
const AUTUMN = dates("2027-09-17", "2027-10-02", "2027-10-17");

describe("the last frost at a risk", () => {
  test.each([
    [0.9, "2027-04-20"],
    [0.5, "2027-05-06"],
    [0.1, "2027-05-21"],
  ])("at %d is the date that was given", (risk, day) => {
    expect(isoOf(lastFrostAt(SPRING, risk))).toBe(day);
  });

  test("at 1 spring in 5 lies two thirds of the way to the late date", () => {
    expect(isoOf(lastFrostAt(SPRING, 0.2))).toBe("2027-05-16");
  });

  test("at 1 spring in 20 lies past the late date", () => {
    expect(isoOf(lastFrostAt(SPRING, 0.05))).toBe("2027-05-25");
  });

  test("has its own spread on each side of the usual date", () => {
    const lopsided = dates("2027-05-01", "2027-05-06", "2027-06-05");
    expect(isoOf(lastFrostAt(lopsided, 0.9))).toBe("2027-05-01");
    expect(isoOf(lastFrostAt(lopsided, 0.1))).toBe("2027-06-05");
  });

  test("is never earlier at a smaller risk", () => {
    const risk = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(
        risk,
        risk,
        (a, b) => lastFrostAt(SPRING, Math.min(a, b)) >= lastFrostAt(SPRING, Math.max(a, b)),
      ),
    );
  });

  test("moves day for day with the dates", () => {
    fc.assert(
      fc.property(fc.integer({ min: -60, max: 60 }), fc.constantFrom(0.1, 0.2, 0.5), (n, risk) => {
        const moved = {
          ...SPRING,
          early: plus(SPRING.early, n),
          usual: plus(SPRING.usual, n),
          late: plus(SPRING.late, n),
        };
        return lastFrostAt(moved, risk) === plus(lastFrostAt(SPRING, risk), n);
      }),
    );
  });

  test("is 15 days after the usual one at 1 spring in 10 where a plan gives one date", () => {
    const plan = planOf(QUARRY.replace("20 Apr, 6 May, 21 May", "about 6 May"));
    const { lastFrost } = plan.site;
    expect(lastFrost && isoOf(lastFrostAt(lastFrost, 0.1))).toBe("2027-05-21");
  });
});

describe("the first frost of a share of autumns", () => {
  test("at 1 in 10 is the early date", () => {
    expect(isoOf(firstFrostAt(AUTUMN, 0.1))).toBe("2027-09-17");
  });

  test("at 9 in 10 is the late date", () => {
    expect(isoOf(firstFrostAt(AUTUMN, 0.9))).toBe("2027-10-17");
  });
});

describe("the chance of a frost still to come", () => {
  test.each([
    ["2027-04-20", 0.9],
    ["2027-05-06", 0.5],
    ["2027-05-21", 0.1],
  ])("after %s is %d", (day, chance) => {
    expect(chanceOfFrostAfter(SPRING, isoDay(day))).toBeCloseTo(chance, 3);
  });

  test("is certain before and none after, where the three dates are one", () => {
    const sure = dates("2027-05-06", "2027-05-06", "2027-05-06");
    expect(chanceOfFrostAfter(sure, isoDay("2027-05-05"))).toBe(1);
    expect(chanceOfFrostAfter(sure, isoDay("2027-05-06"))).toBe(0);
  });
});

describe("the killing frost", () => {
  test("is usual two weeks after the usual first frost where the site has no dates of its own", () => {
    expect(isoOf(killingFrost(AUTUMN, null))).toBe("2027-10-16");
  });

  test("is the site's own usual 28 °F night where it has one", () => {
    const own = dates("2027-10-01", "2027-10-24", "2027-11-09");
    expect(isoOf(killingFrost(AUTUMN, own))).toBe("2027-10-24");
  });
});

describe("odds in words", () => {
  test.each([
    [0.01, "hardly any spring"],
    [0.02, "1 spring in 50"],
    [0.05, "1 spring in 20"],
    [0.1, "1 spring in 10"],
    [0.25, "1 spring in 4"],
    [0.36, "1 spring in 3"],
    [0.5, "1 spring in 2"],
    [0.66, "2 springs in 3"],
    [0.75, "3 springs in 4"],
    [0.98, "nearly every spring"],
  ])("%d is %s", (chance, said) => {
    expect(sayOdds(chance, "spring")).toBe(said);
  });

  test("speak of autumns in autumn", () => {
    expect(sayOdds(0.1, "autumn")).toBe("1 autumn in 10");
  });

  test("never speak in percent", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        (chance) => !/%|\./.test(sayOdds(chance, "spring")),
      ),
    );
  });
});
