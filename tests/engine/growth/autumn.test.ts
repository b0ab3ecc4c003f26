import { describe, expect, test } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import {
  autumnAfter,
  nextAnniversary,
  springAfter,
  wintersYoung,
} from "../../../src/engine/growth/autumn.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { due, dueDays, withCrops } from "../../winters.ts";
import { growingOf } from "./growing.ts";

const beet = growingOf(QUARRY, "beet");

const autumnOf = (day: string) => {
  const autumn = autumnAfter(beet, isoDay(day));
  return autumn && [autumn.early, autumn.usual, autumn.killing, autumn.midwinter].map(isoOf);
};

describe("the autumn that ends what grows", () => {
  test("is its early and usual first frost, the killing one and the middle of winter", () => {
    expect(autumnOf("2027-05-03")).toEqual([
      "2027-09-17",
      "2027-10-02",
      "2027-10-16",
      "2028-01-17",
    ]);
  });

  test("is the same one still after its frost, until the middle of winter", () => {
    expect(autumnOf("2027-10-20")).toEqual(autumnOf("2027-05-03"));
    expect(autumnOf("2028-01-17")).toEqual(autumnOf("2027-05-03"));
  });

  test("is the next one's after that", () => {
    expect(autumnOf("2028-01-18")?.[1]).toBe("2028-10-01");
    expect(autumnOf("2028-03-01")?.[1]).toBe("2028-10-01");
  });

  test("is none where nothing freezes", () => {
    const plan = { ...beet.plan, site: { ...beet.plan.site, firstFrost: null } };
    expect(autumnAfter({ ...beet, plan }, isoDay("2027-05-03"))).toBeNull();
  });
});

describe("what the gardener sows in a winter that nothing lives through", () => {
  const spinach = (sown: string) =>
    growingOf(withCrops("very-short", [`spinach: 2 rows, sow ${sown}`]), "spinach");

  test("is for autumn where it is grown by then", () => {
    expect(wintersYoung(spinach("20 Jul"), isoDay("2027-07-20"))).toBe(false);
    const days = dueDays(withCrops("very-short", ["spinach: 2 rows, sow 20 Jul"]));
    expect(due(days, "spinach/harvest/1")).toMatch(/^2027-09-/);
    expect(due(days, "spinach/harvest/last")).toBe("-");
  });

  test("is believed to be for spring where it is not", () => {
    expect(wintersYoung(spinach("25 Aug"), isoDay("2027-08-25"))).toBe(true);
  });
});

describe("the same day of a later year", () => {
  const next = (day: string, from: string) => isoOf(nextAnniversary(isoDay(day), isoDay(from)));

  test("is that year's own where it is still to come", () => {
    expect(next("2027-05-06", "2027-03-01")).toBe("2027-05-06");
  });

  test("is a year on from the day itself", () => {
    expect(next("2027-05-06", "2027-05-06")).toBe("2028-05-05");
  });

  test("is the spring after an autumn", () => {
    expect(next("2027-05-06", "2027-10-27")).toBe("2028-05-05");
  });

  test("reaches back where the day lies years ahead", () => {
    expect(next("2027-05-06", "2025-10-14")).toBe("2026-05-06");
  });
});

describe("spring", () => {
  test("begins with the last frost that reaches the bed, else at the equinox", () => {
    expect(isoOf(springAfter(beet, isoDay("2026-11-01")))).toBe("2027-05-06");
    const site = { ...beet.plan.site, lastFrost: null, latitude: -34 };
    const south = { ...beet, plan: { ...beet.plan, site } };
    expect(isoOf(springAfter(south, isoDay("2027-04-20")))).toBe("2027-09-22");
  });
});
