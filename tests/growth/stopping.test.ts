import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../src/days/day.ts";
import { ripeIfStarted } from "../../src/growth/ripe.ts";
import { firstStop, STOP_DAYS, stopDay } from "../../src/growth/stopping.ts";
import { isoDay, QUARRY } from "../gardens.ts";
import { growingOf } from "./growing.ts";

const FROST = isoDay("2027-05-21");
const tomato = growingOf(QUARRY, "tomato");

describe("the first stop", () => {
  test("is three weeks after the frost date", () => {
    expect(STOP_DAYS).toBe(21);
    expect(isoOf(firstStop(tomato, FROST, []))).toBe("2027-06-11");
  });

  test("is never before what the gardener asked for", () => {
    const own = [{ ground: "given", day: isoDay("2027-06-20") }] as const;
    expect(isoOf(firstStop(tomato, FROST, own))).toBe("2027-06-20");
  });

  test("counts from ninety days into a season without frost", () => {
    expect(firstStop(tomato, null, []) - firstStop(tomato, plus(FROST, 0), [])).toBeLessThan(0);
  });
});

describe("the day that ends a hold", () => {
  test("is the first stop where the season is short", () => {
    expect(isoOf(stopDay(tomato, isoDay("2027-06-11")))).toBe("2027-06-11");
  });

  test("is in a long season the last day that leaves six weeks of picking before the frost", () => {
    const { site } = tomato.plan;
    const late = isoDay("2027-12-15");
    const firstFrost = {
      early: plus(late, -15),
      usual: late,
      late: plus(late, 15),
      given: 1,
    } as const;
    const long = growingOf(QUARRY, "tomato", {
      plan: { site: { ...site, firstFrost } },
      planting: { days: 60 },
    });
    const stop = stopDay(long, isoDay("2027-05-25"));
    expect(stop).toBeGreaterThan(isoDay("2027-05-25"));
    const ripe = (day: typeof stop) => ripeIfStarted(long, day);
    expect(Number(ripe(stop)) + 42).toBeLessThanOrEqual(late);
    const after = ripe(plus(stop, 1));
    expect(after === null || after + 42 > late).toBe(true);
  });

  test("is the first stop where nothing freezes", () => {
    const site = { ...tomato.plan.site, firstFrost: null };
    const mild = growingOf(QUARRY, "tomato", { plan: { site } });
    expect(isoOf(stopDay(mild, isoDay("2027-06-11")))).toBe("2027-06-11");
  });
});
