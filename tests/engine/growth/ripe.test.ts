import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { type Climate, climateOf } from "../../../src/engine/climate/climate.ts";
import { isReached } from "../../../src/engine/growth/milestones.ts";
import { paceOf } from "../../../src/engine/growth/pace.ts";
import { ripeIfSown, ripeInSeasons, ripeMilestone } from "../../../src/engine/growth/ripe.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { type Acts, always, daysOf, type Given, groundsOf, growingOf, seenIn } from "./growing.ts";

const SITE = planOf(QUARRY).site;
const SOWN = isoDay("2027-05-03");
const ripe = (name: string, given: Given) => ripeMilestone(growingOf(QUARRY, name, given));

/** The usual day it is first ripe; throws where there is none. */
function usual(growing: SowingContext): Day {
  const milestone = ripeMilestone(growing);
  if (!isReached(milestone)) throw new Error(milestone.none);
  return milestone.usual;
}

describe("when it is first ready, where every day is as the packet takes it", () => {
  const cool = { site: always(celsius(60)) };
  const warm = { site: always(celsius(70)) };

  test("is the packet's days after setting out", () => {
    const acts = { "set out": "2027-05-21" };
    const tomato = growingOf(QUARRY, "tomato", { acts, plan: warm, planting: { days: 70 } });
    expect(usual(tomato)).toBe(plus(isoDay("2027-05-21"), 70));
  });

  test("is the packet's days after sowing, and cold soil's days on top", () => {
    const given = { acts: { start: "2027-05-03" }, planting: { days: 60 } };
    const comesUp = { kind: "table", row: "beet", standsIn: null } as const;
    const beet = growingOf(QUARRY, "beet", { ...given, plan: cool, crop: { comesUp } });
    expect(usual(beet)).toBe(plus(SOWN, 60 + 10 - 6));
  });

  test("is half as long again where a day brings two thirds of the packet's warmth", () => {
    const acts = { start: "2027-05-03", up: "2027-05-20" };
    const twoThirds = celsius(40 + (20 * 2) / 3);
    const beet = (at: number) =>
      usual(
        growingOf(QUARRY, "beet", {
          acts,
          plan: { site: always(at) },
          planting: { days: 60 },
        }),
      );
    expect(beet(celsius(60)) - isoDay("2027-05-20")).toBe(54);
    expect(beet(twoThirds) - isoDay("2027-05-20")).toBe(81);
  });

  test("counts nothing of the warmth above the ceiling", () => {
    const acts = { start: "2027-05-03", up: "2027-05-20" };
    const beet = (at: number) =>
      usual(growingOf(QUARRY, "beet", { acts, plan: { site: always(at) } }));
    expect(beet(celsius(95))).toBe(beet(celsius(80)));
    expect(beet(celsius(75))).toBeGreaterThan(beet(celsius(80)));
  });
});

describe("when it is first ready at the lane", () => {
  test("takes longer than the packet says, for the days there are colder", () => {
    expect(daysOf(ripe("beet", { acts: { start: "2027-05-03" } }))).toBe("07-06 07-16 07-28");
  });

  test("counts a packet's days from setting out for tomatoes", () => {
    expect(daysOf(ripe("tomato", { acts: { "set out": "2027-05-21" } }))).toBe("08-21 09-04 09-22");
  });

  test("takes the plan's own days before the crop's", () => {
    const given = { acts: { "set out": "2027-05-21" }, planting: { days: 60 } };
    expect(daysOf(ripe("tomato", given))).toBe("08-10 08-17 08-25");
  });

  test("hangs on what brought it up and on warmth", () => {
    expect(groundsOf(ripe("beet", { acts: { start: "2027-05-03" } }))).toEqual([
      "last frost",
      "soil",
      "age",
      "warmth",
    ]);
    const warmth = null;
    expect(groundsOf(ripe("beet", { acts: { start: "2027-05-03" }, crop: { warmth } }))).toEqual([
      "last frost",
      "soil",
      "age",
    ]);
  });

  test("is counted in days for a crop that warmth does not drive", () => {
    const acts = { start: "2027-05-03", up: "2027-05-20" };
    expect(daysOf(ripe("beet", { acts, crop: { warmth: null } }))).toBe("07-08 07-13 07-18");
  });

  test("is none before it is in its place", () => {
    expect(daysOf(ripe("tomato", {}))).toBe("it is not in its place yet");
    expect(daysOf(ripe("tomato", { acts: { start: "2027-04-09" } }))).toBe(
      "it is not in its place yet",
    );
  });

  test("is none where winter comes first", () => {
    expect(daysOf(ripe("tomato", { acts: { "set out": "2027-09-01" } }))).toBe(
      "winter comes before it is ready",
    );
    expect(daysOf(ripe("beet", { acts: { start: "2027-09-20" } }))).toBe(
      "winter comes before it is ready",
    );
  });

  test("in a cold season that never brings it is the last day worth a harvest", () => {
    expect(daysOf(ripe("beet", { acts: { start: "2027-08-07" } })).slice(-5)).toBe("10-30");
  });

  test("is what was seen", () => {
    const acts = { "set out": "2027-05-21", "first ripe": "2027-07-28" };
    expect(daysOf(ripe("tomato", { acts }))).toBe("07-28 07-28 07-28");
  });

  test("moves with the day it was seen up", () => {
    const seen = (up: string) =>
      usual(growingOf(QUARRY, "beet", { acts: { start: "2027-05-03", up } }));
    expect(isoOf(seen("2027-05-30"))).toBe("2027-07-23");
    expect(seen("2027-06-03")).toBeGreaterThan(seen("2027-05-30"));
  });

  test("comes the later still where it was long in coming up, for the bed is colder", () => {
    const seen = { "2027/beet": { start: "2027-05-03", up: "2027-05-30" } };
    const slow = growingOf(QUARRY, "beet", { anchors: seenIn(seen) });
    const acts = { start: "2027-05-03", up: "2027-05-30" };
    const pace = paceOf(slow);
    expect(pace).toBeGreaterThan(1);
    const days = Math.round(60 * pace - 6 * (pace - 1));
    const longer = growingOf(QUARRY, "beet", { acts, planting: { days } });
    expect(Math.abs(usual(slow) - usual(longer))).toBeLessThanOrEqual(1);
    expect(usual(slow)).toBeGreaterThan(usual(growingOf(QUARRY, "beet", { acts })));
  });

  test("is none on the day after the killing frost, though on its day there still is", () => {
    const frost = isoDay("2027-10-16");
    const tomato = (days: number) =>
      ripe("tomato", {
        acts: { "set out": "2027-05-21" },
        plan: { site: always(celsius(70)) },
        planting: { days },
      });
    const left = frost - isoDay("2027-05-21");
    const last = tomato(left);
    expect(isReached(last) && last.usual).toBe(frost);
    expect(isReached(tomato(left + 1))).toBe(false);
  });

  test("of bought lettuce counts from setting out, less the weeks it was raised", () => {
    const given = { planting: { start: "plants" }, acts: { "set out": "2027-05-10" } } as const;
    expect(daysOf(ripe("lettuce", given))).toBe("06-02 06-16 06-29");
  });

  test("of garlic counts from the last frost of the spring after its planting", () => {
    expect(daysOf(ripe("garlic", { acts: { start: "2027-10-27" } }))).toBe("07-09 07-22 08-03");
  });

  test("of garlic is counted from the equinox in a place without frost", () => {
    const site = { ...SITE, lastFrost: null };
    expect(daysOf(ripe("garlic", { acts: { start: "2027-10-27" }, plan: { site } }))).toBe(
      "05-23 06-05 06-17",
    );
  });
});

describe("over any day of sowing", () => {
  const on = fc.integer({ min: -20, max: 160 });
  const names = fc.constantFrom("beet", "carrot", "lettuce");
  const sownOn = (name: string, day: Day, more: Given = {}) =>
    growingOf(QUARRY, name, { acts: { start: isoOf(day) }, ...more });

  test("early, usual and late stand in that order, at any spread", () => {
    const spreadK = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(names, on, spreadK, (name, days, spread) => {
        const growing = sownOn(name, plus(SOWN, days));
        const climate: Climate = { ...growing.climate, spreadK: () => spread };
        const milestone = ripeMilestone({ ...growing, climate });
        if (!isReached(milestone)) return true;
        return milestone.early <= milestone.usual && milestone.usual <= milestone.late;
      }),
      { numRuns: 60 },
    );
  });

  test("a warmer climate never makes cool crops ripen later, below their ceiling", () => {
    const { normals } = SITE;
    const cool = normals && { ...normals, highC: normals.highC.map((at) => Math.min(at, 22)) };
    const climate = climateOf({ ...planOf(QUARRY), site: { ...SITE, normals: cool } }, []);
    const warmed = (byK: number): Climate => ({
      ...climate,
      air: (day, more = 0) => climate.air(day, more + byK),
      airC: (day, more = 0) => climate.airC(day, more + byK),
      soilC: (day, bed, more = 0) => climate.soilC(day, bed, more + byK),
    });
    const plain = growingOf(QUARRY, "beet");
    fc.assert(
      fc.property(on, fc.constantFrom(0.5, 1, 2, 4), (days, byK) => {
        const usually = ripeIfSown({ ...plain, climate }, plus(SOWN, days));
        const warmly = ripeIfSown({ ...plain, climate: warmed(byK) }, plus(SOWN, days));
        return usually === null || (warmly !== null && warmly <= usually);
      }),
      { numRuns: 60 },
    );
  });

  test("is never sooner for seed sown later, till winter", () => {
    const beet = growingOf(QUARRY, "beet");
    fc.assert(
      fc.property(
        fc.integer({ min: -20, max: 90 }),
        fc.integer({ min: 1, max: 30 }),
        (days, more) => {
          const [first, second] = [days, days + more].map((at) => ripeIfSown(beet, plus(SOWN, at)));
          return typeof first !== "number" || typeof second !== "number" || first <= second;
        },
      ),
    );
  });

  test("four years on everything is four years later", () => {
    const later = QUARRY.replace("2027", "2031");
    fc.assert(
      fc.property(names, on, (name, days) => {
        const now = ripeMilestone(sownOn(name, plus(SOWN, days)));
        const then = ripeMilestone(
          growingOf(later, name, { acts: { start: isoOf(plus(SOWN, days + 1461)) } }),
        );
        if (!isReached(now) || !isReached(then)) return !isReached(now) && !isReached(then);
        const moved = [now.early, now.usual, now.late].map((day) => plus(day, 1461));
        return String(moved) === String([then.early, then.usual, then.late]);
      }),
      { numRuns: 40 },
    );
  });

  test("is the usual day of the milestone of a sowing nobody has seen", () => {
    fc.assert(
      fc.property(names, on, (name, days) => {
        const growing = sownOn(name, plus(SOWN, days));
        const milestone = ripeMilestone(growing);
        return (
          ripeIfSown(growing, plus(SOWN, days)) === (isReached(milestone) ? milestone.usual : null)
        );
      }),
      { numRuns: 40 },
    );
  });
});

describe("after a year whose harvest the diary has", () => {
  /** This year's beet, started and up on the same days as last year's. */
  const beet = (last: Acts, now: Acts) =>
    growingOf(QUARRY, "beet", { anchors: seenIn({ "2026/beet": last, "2027/beet": now }) });

  test("last year's day comes back in the same weather, seen up or not", () => {
    const up = "05-18";
    fc.assert(
      fc.property(fc.integer({ min: 45, max: 100 }), fc.boolean(), (took, seen) => {
        const ripe = plus(isoDay(`2026-${up}`), took);
        const last = { start: "2026-05-03", up: `2026-${up}`, "first ripe": isoOf(ripe) };
        const now = { start: "2027-05-03", ...(seen ? { up: `2027-${up}` } : {}) };
        const same = beet(seen ? last : { start: last.start, "first ripe": isoOf(ripe) }, now);
        return isoOf(usual(same)) === isoOf(plus(ripe, 365));
      }),
      { numRuns: 40 },
    );
  });

  test("its own warmth takes the place of the packet's", () => {
    const last = { start: "2026-05-03", up: "2026-05-24", "first ripe": "2026-07-10" };
    const plain = usual(growingOf(QUARRY, "beet", { acts: { start: "2027-05-03" } }));
    expect(usual(beet(last, { start: "2027-05-03" }))).toBeLessThan(plain);
  });

  test("of tomatoes comes back from the day they were set out", () => {
    const anchors = seenIn({
      "2026/tomato": { start: "2026-04-09", "set out": "2026-05-21", "first ripe": "2026-08-20" },
      "2027/tomato": { start: "2027-04-09", "set out": "2027-05-21" },
    });
    expect(isoOf(usual(growingOf(QUARRY, "tomato", { anchors })))).toBe("2027-08-20");
  });
});

describe("the three seasons by themselves", () => {
  test("are the milestone's days where each of them brings it", () => {
    const carrot = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-20" } });
    const milestone = ripeMilestone(carrot);
    if (!isReached(milestone)) throw new Error(milestone.none);
    const { early, usual, late } = milestone;
    expect(ripeInSeasons(carrot)).toEqual({ warm: early, usual, cold: late });
  });

  test("are none where winter comes first, the cold one before the warm one", () => {
    const counts = ["06-20", "07-20", "08-01", "08-10", "08-20", "09-20"].map((day) => {
      const sown = growingOf(QUARRY, "carrot", { acts: { start: `2027-${day}` } });
      const seasons = ripeInSeasons(sown);
      if ("none" in seasons) return 0;
      const { warm, usual, cold } = seasons;
      if (usual === null) expect(cold).toBeNull();
      if (warm === null) expect(usual).toBeNull();
      return [warm, usual, cold].filter((each) => each !== null).length;
    });
    expect(counts).toEqual([...counts].sort((a, b) => b - a));
    expect([counts[0], counts.at(-1)]).toEqual([3, 0]);
  });

  test("have none before its clock begins", () => {
    expect(ripeInSeasons(growingOf(QUARRY, "carrot"))).toHaveProperty("none");
  });
});
