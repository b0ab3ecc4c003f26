import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { COLUMNS_F, EMERGENCE_DAYS } from "../../src/crops/emergence.ts";
import { isoOf, plus } from "../../src/days/day.ts";
import { dailyShare, GIVE_UP_DAYS, upOn } from "../../src/growth/emergence.ts";
import { celsius } from "../../src/quantities/quantity.ts";
import { isoDay } from "../gardens.ts";

const SOWN = isoDay("2027-05-03");
const rows = Object.keys(EMERGENCE_DAYS);

describe("a day's share of coming up", () => {
  test("is one over the table's days at a column", () => {
    expect(dailyShare("beet", celsius(50))).toBeCloseTo(1 / 17, 12);
  });

  test("is in proportion between two columns", () => {
    expect(dailyShare("beet", celsius(54.5))).toBeCloseTo((1 / 17 + 1 / 10) / 2, 9);
  });

  test("is nothing where nothing comes up", () => {
    expect(dailyShare("tomato", celsius(41))).toBe(0);
  });

  test("is nothing where nothing was tested", () => {
    expect(dailyShare("parsley", celsius(41))).toBe(0);
  });

  test("is nothing colder or hotter than the table", () => {
    expect(dailyShare("lettuce", celsius(20))).toBe(0);
    expect(dailyShare("asparagus", celsius(120))).toBe(0);
  });

  test("throws for a row the table does not have", () => {
    expect(() => dailyShare("carrot", 10)).toThrow("no row carrot");
  });

  test("lies between its two neighbours', for any crop and soil", () => {
    const soilC = fc.double({ min: 0, max: 40, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...rows), soilC, (row, at) => {
        const below = COLUMNS_F.filter((column) => celsius(column) <= at).at(-1) ?? 32;
        const above = COLUMNS_F.find((column) => celsius(column) >= at) ?? 104;
        const ends = [dailyShare(row, celsius(below)), dailyShare(row, celsius(above))];
        const share = dailyShare(row, at);
        return share >= Math.min(...ends) - 1e-9 && share <= Math.max(...ends) + 1e-9;
      }),
    );
  });
});

describe("the day that seed is up", () => {
  test("is the table's days after sowing in soil that stays the same", () => {
    expect(upOn("beet", SOWN, () => celsius(50))).toBe(plus(SOWN, 17));
  });

  test("rounds a part of a day up", () => {
    expect(upOn("beet", SOWN, () => celsius(54.5))).toBe(plus(SOWN, 13));
  });

  test("adds up days of different soil", () => {
    const warmed = plus(SOWN, 7);
    const up = upOn("lettuce", SOWN, (day) => celsius(day < plus(SOWN, 3) ? 50 : 59));
    expect(up).toBe(plus(SOWN, 6));
    expect(upOn("lettuce", SOWN, (day) => celsius(day < warmed ? 50 : 59))).toBe(warmed);
  });

  test("waits through days on which nothing comes up", () => {
    const warm = plus(SOWN, 10);
    expect(upOn("tomato", SOWN, (day) => celsius(day < warm ? 40 : 68))).toBe(plus(warm, 8));
  });

  test("is none in soil that is always too cold", () => {
    expect(upOn("tomato", SOWN, () => celsius(40))).toBeNull();
  });

  test("is none where it would take longer than ninety days", () => {
    expect(GIVE_UP_DAYS).toBe(90);
    expect(upOn("parsnip", SOWN, () => celsius(32))).toBeNull();
  });

  test("is never later in soil a degree warmer, up to where a crop comes up fastest", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 24, noNaN: true }), (at) => {
        const [cool, warm] = [upOn("beet", SOWN, () => at), upOn("beet", SOWN, () => at + 1)];
        return cool === null || (warm !== null && warm <= cool);
      }),
    );
  });

  test("moves with the sowing in soil that stays the same", () => {
    expect(isoOf(upOn("radish", isoDay("2027-06-01"), () => 20) ?? SOWN)).toBe("2027-06-05");
  });
});
