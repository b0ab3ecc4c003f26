import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { COLUMNS_F, EMERGENCE_ROWS } from "../../../src/crops/emergence.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { dailySwingShare } from "../../../src/engine/climate/wave.ts";
import { dailyShare, GIVE_UP_DAYS, shareIn, upOn } from "../../../src/engine/growth/emergence.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { always } from "./growing.ts";

const SOWN = isoDay("2027-05-03");
const rows = Object.keys(EMERGENCE_ROWS);

/** The day a row's seed is up in soil of that temperature [°C] day by day, the same by night and by noon. */
const upIn = (row: string, sown: Day, soilC: (day: Day) => number) =>
  upOn(sown, (day) => dailyShare(row, soilC(day)));

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

  test("falls on as it fell where nothing was tested in colder soil, and is nothing at last", () => {
    expect(dailyShare("cabbage", celsius(41))).toBeCloseTo(2 / 15 - 1 / 9, 9);
    expect(dailyShare("parsley", celsius(41))).toBeCloseTo(2 / 29 - 1 / 17, 9);
    expect(dailyShare("eggplant", celsius(41))).toBe(0);
    for (const row of ["cabbage", "eggplant", "muskmelon"])
      for (let at = 0; at < 20; at++)
        expect(dailyShare(row, at)).toBeLessThanOrEqual(dailyShare(row, at + 1) + 1e-9);
  });

  test("stays as it was in hotter soil that was not tested", () => {
    expect(dailyShare("cabbage", celsius(95))).toBe(1 / 4);
  });

  test("of turnip and its kin is quick, of okra, pepper and onion their own", () => {
    expect(1 / dailyShare("turnip", celsius(59))).toBeCloseTo(3, 9);
    expect(1 / dailyShare("okra", celsius(68))).toBeCloseTo(17, 9);
    expect(1 / dailyShare("pepper", celsius(77))).toBeCloseTo(8, 9);
    expect(1 / dailyShare("onion", celsius(50))).toBeCloseTo(13, 9);
  });

  test("is nothing colder or hotter than the table", () => {
    expect(dailyShare("lettuce", celsius(20))).toBe(0);
    expect(dailyShare("asparagus", celsius(120))).toBe(0);
  });

  test("throws for a row the table does not have", () => {
    expect(() => dailyShare("dill", 10)).toThrow("no row dill");
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

describe("a day's share over its swing", () => {
  test("is that of its mean where there is no swing", () => {
    expect(dailyShare("beet", 13, 0)).toBe(dailyShare("beet", 13));
  });

  test("is that of its mean too where the share rises evenly all the way", () => {
    expect(dailyShare("beet", celsius(54.5), 2)).toBeCloseTo(dailyShare("beet", celsius(54.5)), 9);
  });

  test("brings something at noon where the mean brings nothing", () => {
    expect(dailyShare("bean_snap", celsius(50))).toBe(0);
    expect(dailyShare("bean_snap", celsius(50), 5)).toBeGreaterThan(0);
  });

  test("loses the noons that are too hot", () => {
    expect(dailyShare("lettuce", celsius(86), 5)).toBeLessThan(dailyShare("lettuce", celsius(86)));
  });

  test("lies between the least and the most of its hours, for any crop and soil", () => {
    const soilC = fc.double({ min: 0, max: 40, noNaN: true });
    const swing = fc.double({ min: 0, max: 12, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...rows), soilC, swing, (row, at, swingK) => {
        const share = dailyShare(row, at, swingK);
        const most = Math.max(...COLUMNS_F.map((column) => dailyShare(row, celsius(column))));
        return share >= 0 && share <= most + 1e-9;
      }),
    );
  });
});

describe("the day that seed is up", () => {
  test("is the table's days after sowing in soil that stays the same", () => {
    expect(upIn("beet", SOWN, () => celsius(50))).toBe(plus(SOWN, 17));
  });

  test("rounds a part of a day up", () => {
    expect(upIn("beet", SOWN, () => celsius(54.5))).toBe(plus(SOWN, 13));
  });

  test("adds up days of different soil", () => {
    const warmed = plus(SOWN, 7);
    const up = upIn("lettuce", SOWN, (day) => celsius(day < plus(SOWN, 3) ? 50 : 59));
    expect(up).toBe(plus(SOWN, 6));
    expect(upIn("lettuce", SOWN, (day) => celsius(day < warmed ? 50 : 59))).toBe(warmed);
  });

  test("waits through days on which nothing comes up", () => {
    const warm = plus(SOWN, 10);
    expect(upIn("tomato", SOWN, (day) => celsius(day < warm ? 40 : 68))).toBe(plus(warm, 8));
  });

  test("is none in soil that is always too cold", () => {
    expect(upIn("tomato", SOWN, () => celsius(40))).toBeNull();
  });

  test("is none where it would take longer than ninety days", () => {
    expect(GIVE_UP_DAYS).toBe(90);
    expect(upIn("parsnip", SOWN, () => celsius(32))).toBeNull();
  });

  test("is never later in soil a degree warmer, up to where a crop comes up fastest", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 24, noNaN: true }), (at) => {
        const [cool, warm] = [upIn("beet", SOWN, () => at), upIn("beet", SOWN, () => at + 1)];
        return cool === null || (warm !== null && warm <= cool);
      }),
    );
  });

  test("moves with the sowing in soil that stays the same", () => {
    expect(isoOf(upIn("radish", isoDay("2027-06-01"), () => 20) ?? SOWN)).toBe("2027-06-05");
  });
});

describe("each day's share in the garden", () => {
  const SEED = { row: "beet", bed: null, depthCm: 1.27, warmerK: 0 };
  const same = climateOf({ ...planOf(QUARRY), site: always(celsius(50)) }, []);
  const swings = climateOf({ ...planOf(QUARRY), site: always(celsius(40), celsius(60)) }, []);

  test("is that of the soil where day and night are alike", () => {
    expect(shareIn(same, SEED)(SOWN)).toBeCloseTo(1 / 17, 9);
  });

  test("takes half of what low and high lie apart, as far as it reaches the seed", () => {
    const felt = (((60 - 40) * 5) / 9 / 2) * dailySwingShare(1.27);
    expect(shareIn(swings, SEED)(SOWN)).toBeCloseTo(
      dailyShare("beet", swings.soilC(SOWN, null), felt),
      9,
    );
  });

  test("feels less of the day the deeper it lies", () => {
    const bean = { ...SEED, row: "bean_snap" };
    const shares = [1, 5, 10].map((depthCm) => shareIn(swings, { ...bean, depthCm })(SOWN));
    expect([...shares].sort((a, b) => b - a)).toEqual(shares);
    expect(new Set(shares).size).toBe(3);
  });

  test("is more in a warm season, and under film", () => {
    const bed = planOf(QUARRY).beds.find((each) => each.warmed) ?? null;
    expect(shareIn(same, { ...SEED, warmerK: 5 })(SOWN)).toBeCloseTo(1 / 10, 9);
    expect(shareIn(same, { ...SEED, bed })(SOWN)).toBeCloseTo(
      dailyShare("beet", celsius(50) + 3),
      9,
    );
  });
});
