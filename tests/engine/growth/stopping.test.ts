import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import { ripeIfStarted } from "../../../src/engine/growth/ripe.ts";
import { firstStop, STOP_DAYS, stopDay } from "../../../src/engine/growth/stopping.ts";
import { seasonOf } from "../../../src/garden/model/index.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { always, growingOf } from "./growing.ts";

const FROST = isoDay("2027-05-21");
const tomato = growingOf(QUARRY, "tomato");

describe("the first stop", () => {
  test("is three weeks after the frost date", () => {
    expect(STOP_DAYS).toBe(21);
    expect(isoOf(firstStop(tomato, FROST, []))).toBe("2027-06-11");
  });

  test("is never before what the gardener asked for", () => {
    const own = [{ basis: "given", day: isoDay("2027-06-20") }] as const;
    expect(isoOf(firstStop(tomato, FROST, own))).toBe("2027-06-20");
  });

  test("is nearly midsummer in a season without frost, which is never short", () => {
    const { from } = seasonOf(tomato.plan);
    expect(firstStop(tomato, null, []) - from).toBe(130 + STOP_DAYS);
  });
});

describe("the day that ends a hold", () => {
  test("is the first stop where the season is short", () => {
    expect(isoOf(stopDay(tomato, isoDay("2027-06-11")))).toBe("2027-06-11");
  });

  test("is in a long season the last day that leaves six weeks of picking before the frost", () => {
    const late = isoDay("2027-12-15");
    const firstFrost = { early: late, usual: late, late, given: 3 } as const;
    const long = growingOf(QUARRY, "tomato", { plan: { site: { ...always(20), firstFrost } } });
    const stop = stopDay(long, isoDay("2027-05-25"));
    expect(stop).toBeGreaterThan(isoDay("2027-07-01"));
    const picked = (day: typeof stop) => Number(ripeIfStarted(long, day)) + 42;
    expect(picked(stop)).toBeLessThanOrEqual(late);
    expect(picked(plus(stop, 1))).toBeGreaterThan(late);
  });

  test("is the first stop where nothing freezes", () => {
    const site = { ...tomato.plan.site, firstFrost: null };
    const mild = growingOf(QUARRY, "tomato", { plan: { site } });
    expect(isoOf(stopDay(mild, isoDay("2027-06-11")))).toBe("2027-06-11");
  });
});
