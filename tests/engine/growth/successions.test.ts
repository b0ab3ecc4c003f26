import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import { celsius, cm } from "../../../src/base/quantities/quantity.ts";
import type { Crop } from "../../../src/crops/facts.ts";
import { commonPractice, NO_LIMITS } from "../../../src/crops/figures.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { MOST_SOWINGS } from "../../../src/engine/growth/anchors.ts";
import { refusalOf } from "../../../src/engine/growth/limits.ts";
import { ripeIfSown } from "../../../src/engine/growth/ripe.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import {
  rowPerSowingCm,
  type SuccessionSowing,
  successionOf,
} from "../../../src/engine/growth/successions.ts";
import type { Planting } from "../../../src/garden/model/plan.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { always, type Given, growingOf } from "./growing.ts";

const FIRST = isoDay("2027-05-03");

type Repeat = NonNullable<Planting["repeat"]>;

function again(name: string, repeat: Repeat | null, given: Given = {}): SowingContext {
  return growingOf(QUARRY, name, { ...given, planting: { ...given.planting, repeat } });
}

const told = (sowings: readonly SuccessionSowing[]) =>
  sowings.map(({ number, day, ripe }) => `${number} ${isoOf(day)} ${ripe && isoOf(ripe)}`);

const every = (everyDays: number, times: number | null = null): Repeat => ({ everyDays, times });

describe("sowing again and again", () => {
  test("is on days whose harvests lie evenly, closer together as it gets warmer", () => {
    expect(told(successionOf(again("lettuce", every(14, 3)), FIRST))).toEqual([
      "1 2027-05-03 2027-07-09",
      "2 2027-05-30 2027-07-23",
      "3 2027-06-20 2027-08-06",
    ]);
  });

  test("is every so many days where all days are alike", () => {
    const same = again("beet", every(14, 3), { plan: { site: always(celsius(60)) } });
    const days = successionOf(same, FIRST).map(({ day }) => day - FIRST);
    expect(days).toEqual([0, 14, 28]);
  });

  test("is once where it is not sown again", () => {
    expect(successionOf(again("lettuce", null), FIRST)).toHaveLength(1);
  });

  test("is once where the first is never ready", () => {
    const late = successionOf(again("beet", every(14)), isoDay("2027-09-10"));
    expect(told(late)).toEqual(["1 2027-09-10 null"]);
  });

  test("goes on as long as it is ready before winter, twelve times at the most", () => {
    const sowings = successionOf(again("beet", every(14)), FIRST);
    const last = sowings.at(-1);
    expect(sowings.length).toBeGreaterThan(5);
    expect(last?.ripe && isoOf(last.ripe) <= "2027-10-30").toBe(true);
    expect(successionOf(again("lettuce", every(5)), FIRST)).toHaveLength(MOST_SOWINGS);
  });

  test("goes on for half a year where nothing freezes", () => {
    const site = { ...always(celsius(60)), lastFrost: null, firstFrost: null };
    const days = successionOf(again("beet", every(28), { plan: { site } }), FIRST);
    expect(days.map(({ day }) => day - FIRST)).toEqual([0, 28, 56, 84, 112, 140, 168]);
  });

  test("leaves out what heat would spoil, and the others keep their numbers and days", () => {
    const crop: Partial<Crop> = { limits: { ...NO_LIMITS, heatC: commonPractice(celsius(64)) } };
    const plain = successionOf(again("beet", every(14)), FIRST);
    const kept = successionOf(again("beet", every(14), { crop }), FIRST);
    const hot = again("beet", every(14), { crop });
    const good = plain.filter(({ number, day }) => number === 1 || refusalOf(hot, day) === null);
    expect(kept).toEqual(good);
    expect(kept.length).toBeGreaterThan(2);
    expect(kept.length).toBeLessThan(plain.length);
    expect(kept.at(-1)?.number).toBe(plain.at(-1)?.number);
  });
});

describe("a number of sowings that the plan asks for", () => {
  test("is not used up by one that heat would spoil", () => {
    const crop: Partial<Crop> = { limits: { ...NO_LIMITS, heatC: commonPractice(celsius(64)) } };
    const all = successionOf(again("beet", every(14), { crop }), FIRST);
    expect(all.map(({ number }) => number)).not.toEqual(all.map((_, i) => i + 1));
    const times = all.length - 1;
    expect(successionOf(again("beet", every(14, times), { crop }), FIRST)).toEqual(
      all.slice(0, times),
    );
  });
});

describe("over any climate, crop and gap, harvests", () => {
  const warmer = fc.double({ min: -2, max: 6, noNaN: true });
  const names = fc.constantFrom("beet", "carrot", "lettuce");
  const gap = fc.integer({ min: 5, max: 30 });
  const first = fc.integer({ min: 0, max: 40 }).map((on) => plus(FIRST, on));

  function warmed(name: string, everyDays: number, byK: number): SowingContext {
    const plan = planOf(QUARRY);
    const { normals } = plan.site;
    const more = (each: readonly number[]) => each.map((at) => at + byK);
    const site = {
      ...plan.site,
      normals: normals && { ...normals, lowC: more(normals.lowC), highC: more(normals.highC) },
    };
    const growing = again(name, every(everyDays), { plan: { site } });
    return { ...growing, climate: climateOf({ ...plan, site }, []) };
  }

  test("begin on the wanted day, or the first after it that any sowing can have", () => {
    fc.assert(
      fc.property(names, gap, warmer, first, (name, everyDays, byK, day) => {
        const growing = warmed(name, everyDays, byK);
        const sowings = successionOf(growing, day);
        const ripe = sowings[0]?.ripe ?? null;
        if (ripe === null) return sowings.length === 1;
        return sowings.slice(1).every((sowing, i) => {
          const wanted = plus(ripe, (sowing.number - 1) * everyDays);
          const before = ripeIfSown(growing, plus(sowing.day, -1));
          const follows = plus(sowings[i]?.day ?? day, 1) === sowing.day;
          return (
            sowing.ripe !== null &&
            sowing.ripe >= wanted &&
            (follows || (before !== null && before < wanted))
          );
        });
      }),
      { numRuns: 60 },
    );
  });

  test("lie the wanted days apart within a day, as long as a later sowing costs no more", () => {
    fc.assert(
      fc.property(names, gap, warmer, first, (name, everyDays, byK, day) => {
        const growing = warmed(name, everyDays, byK);
        const sowings = successionOf(growing, day);
        const step = (at: Day) =>
          (ripeIfSown(growing, at) ?? 0) - (ripeIfSown(growing, plus(at, -1)) ?? 0);
        const early = sowings.filter((sowing) => step(sowing.day) <= 2);
        return early.every(({ number, ripe }) => {
          const wanted = plus(
            early[0]?.ripe ?? day,
            (number - (early[0]?.number ?? 1)) * everyDays,
          );
          return ripe !== null && Math.abs(ripe - wanted) <= 1;
        });
      }),
      { numRuns: 60 },
    );
  });

  test("come from sowings in order, numbered in order, none refused but the first", () => {
    fc.assert(
      fc.property(names, gap, warmer, first, (name, everyDays, byK, day) => {
        const growing = warmed(name, everyDays, byK);
        const sowings = successionOf(growing, day);
        const rising = sowings.every(
          (each, i) =>
            i === 0 ||
            (each.day > (sowings[i - 1]?.day ?? each.day) &&
              each.number > (sowings[i - 1]?.number ?? each.number)),
        );
        return rising && sowings.slice(1).every((each) => refusalOf(growing, each.day) === null);
      }),
      { numRuns: 40 },
    );
  });
});

describe("the piece of the row for each sowing", () => {
  const bedCm = 8 * 30.48;

  test("is the row in as many parts as stand in it at once", () => {
    const lettuce = again("lettuce", every(14, 3));
    expect(rowPerSowingCm(lettuce, successionOf(lettuce, FIRST))).toBeCloseTo((2 * bedCm) / 3, 6);
  });

  test("is the whole row where it is sown once, or the next only after the last is out", () => {
    const once = again("lettuce", null);
    expect(rowPerSowingCm(once, successionOf(once, FIRST))).toBeCloseTo(2 * bedCm, 6);
    const far = again("lettuce", every(100, 2));
    const apart = [0, 150].map((on, i) => ({
      number: i + 1,
      day: plus(FIRST, on),
      ripe: plus(FIRST, on + 60),
    }));
    expect(rowPerSowingCm(far, apart)).toBeCloseTo(2 * bedCm, 6);
  });

  /** Two sowings, the second so many days after the first one is ready. */
  const two = (name: string, gap: number) => {
    const sowings = [0, 60 + gap].map((on, i) => ({
      number: i + 1,
      day: plus(FIRST, on),
      ripe: plus(FIRST, on + 60),
    }));
    const amount = { kind: "length", length: cm(1000) } as const;
    return rowPerSowingCm(again(name, every(14), { planting: { amount } }), sowings);
  };

  test("is free again on the day that half of what it holds is over", () => {
    const holds = again("beet", null).crop.harvest.holdsDays.value;
    expect(two("beet", holds / 2)).toBe(1000);
    expect(two("beet", holds / 2 - 1)).toBe(500);
  });

  test("is free again after the last sure cut of what is cut and comes again", () => {
    const { cuts } = again("lettuce", null).crop.harvest;
    if (!cuts) throw new Error("lettuce is cut again");
    const [least, most] = cuts.everyDays.value;
    const gap = Math.round((least + most) / 2) * (cuts.times.value[0] - 1);
    expect(gap).toBeGreaterThan(0);
    expect(two("lettuce", gap)).toBe(1000);
    expect(two("lettuce", gap - 1)).toBe(500);
  });

  test("is of the length that the plan gives", () => {
    const amount = { kind: "length", length: cm(900) } as const;
    const lettuce = again("lettuce", every(14, 3), { planting: { amount } });
    expect(rowPerSowingCm(lettuce, successionOf(lettuce, FIRST))).toBeCloseTo(300, 9);
  });

  test("is nothing where the plan counts plants, or its bed has no length", () => {
    const amount = { kind: "plants", count: 30 } as const;
    const counted = again("lettuce", every(14, 3), { planting: { amount } });
    expect(rowPerSowingCm(counted, successionOf(counted, FIRST))).toBeNull();
    const lettuce = again("lettuce", every(14, 3));
    expect(rowPerSowingCm({ ...lettuce, bed: null }, successionOf(lettuce, FIRST))).toBeNull();
  });

  test("adds up to no more than the row on any day", () => {
    const names = fc.constantFrom("beet", "carrot", "lettuce");
    const days = fc.integer({ min: 5, max: 40 });
    fc.assert(
      fc.property(names, days, fc.integer({ min: 1, max: 12 }), (name, everyDays, times) => {
        const amount = { kind: "length", length: cm(1000) } as const;
        const growing = again(name, every(everyDays, times), { planting: { amount } });
        const sowings = successionOf(growing, FIRST);
        const piece = rowPerSowingCm(growing, sowings) ?? Number.NaN;
        const standing = (day: Day) =>
          sowings.filter((each) => each.day <= day && (each.ripe ?? each.day) >= day).length;
        const most = Math.max(...Array.from({ length: 250 }, (_, i) => standing(plus(FIRST, i))));
        return most * piece <= 1000 + 1e-6;
      }),
      { numRuns: 40 },
    );
  });
});
