import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { commonPractice } from "../../../src/crops/figures.ts";
import { GIVE_UP_DAYS } from "../../../src/engine/growth/emergence.ts";
import { isReached } from "../../../src/engine/growth/milestones.ts";
import { seedOf, sownFor, upFrom, upMilestone, upOutdoors } from "../../../src/engine/growth/up.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { always, daysOf, type Given, groundsOf, growingOf } from "./growing.ts";

const SOWN = isoDay("2027-05-03");
const up = (name: string, given: Given) => upMilestone(growingOf(QUARRY, name, given));

describe("when it shows above the soil", () => {
  test("is reckoned through soil that warms, in a warm, the usual and a cold season", () => {
    expect(daysOf(up("carrot", { acts: { start: "2027-05-03" } }))).toBe("05-16 05-19 05-23");
    expect(daysOf(up("lettuce", { acts: { start: "2027-05-03" } }))).toBe("05-07 05-10 05-13");
  });

  test("is the table's days where soil is the same by day and by night", () => {
    const plan = { site: always(celsius(50)) };
    const beet = up("beet", { acts: { start: "2027-05-03" }, plan });
    expect(isReached(beet) && beet.usual - SOWN).toBe(17);
  });

  test("is told no narrower than three days either side", () => {
    const plan = { site: always(celsius(68)) };
    const beet = up("beet", { acts: { start: "2027-05-03" }, plan });
    expect(daysOf(beet)).toBe("05-06 05-09 05-12");
  });

  test("hangs on what the sowing hung on, the soil and the seed's age", () => {
    expect(groundsOf(up("carrot", { acts: { start: "2027-05-03" } }))).toEqual([
      "last frost",
      "soil",
      "age",
    ]);
  });

  test("is none before it is sown", () => {
    expect(daysOf(up("carrot", {}))).toBe("it is not in yet");
  });

  test("is no green that was seen before the row was sown", () => {
    const before = growingOf(QUARRY, "carrot", { acts: { start: "2027-05-03", up: "2027-04-24" } });
    const start = { day: SOWN, from: "diary", basis: ["seen"], task: null } as const;
    const sown = {
      ...before,
      anchors: new Map([...before.anchors, ["2027/carrot|1|start", start]]),
    };
    expect(daysOf(upMilestone(sown as typeof before))).toBe("05-16 05-19 05-23");
    expect(daysOf(upMilestone(before))).toBe("04-24 04-24 04-24");
  });

  test("is what was seen, and no longer reckoned", () => {
    const seen = up("carrot", { acts: { start: "2027-05-03", up: "2027-05-24" } });
    expect(daysOf(seen)).toBe("05-24 05-24 05-24");
    expect(isReached(seen) && seen.seen).toBe(true);
    expect(groundsOf(seen)).toEqual(["seen"]);
  });

  test("of tubers is 14 to 22 days after planting", () => {
    expect(daysOf(up("potato", { acts: { start: "2027-05-03" } }))).toBe("05-17 05-21 05-25");
  });

  test("of cloves is in spring, after the winter", () => {
    expect(daysOf(up("garlic", { acts: { start: "2027-10-27" } }))).toBe("04-04 04-24 05-14");
  });

  test("indoors goes by the warmth there and not by the garden's soil or season", () => {
    const sown = up("tomato", { acts: { start: "2027-04-09" } });
    expect(daysOf(sown)).toBe("04-14 04-17 04-20");
    expect(groundsOf(sown)).toEqual(["last frost", "age"]);
    const elsewhere = { acts: { start: "2027-04-09" }, plan: { site: always(-5) } };
    expect(daysOf(up("tomato", elsewhere))).toBe("04-14 04-17 04-20");
  });

  test("is none in soil that stays too cold", () => {
    const plan = { site: always(celsius(35)) };
    const milestone = up("carrot", { acts: { start: "2027-05-03" }, plan });
    expect(daysOf(milestone)).toBe("the soil is too cold for it to come up");
  });

  test("is late at the ninetieth day where a cold season never brings it", () => {
    const plan = { site: always(celsius(38)) };
    const beet = up("beet", { acts: { start: "2027-05-03" }, plan });
    expect(isReached(beet) && beet.late).toBe(plus(SOWN, GIVE_UP_DAYS));
  });

  test("is never told for the day of sowing or before", () => {
    const fast = up("tomato", {
      acts: { start: "2027-06-01" },
      crop: { comesUp: { kind: "table", row: "cucumber", standsIn: null } },
    });
    expect(daysOf(fast).slice(0, 5) > "06-01").toBe(true);
  });
});

describe("when seed sown outdoors on any day is up", () => {
  const beet = growingOf(QUARRY, "beet");

  test("is the usual day of its milestone", () => {
    const milestone = up("beet", { acts: { start: "2027-05-03" } });
    expect(upFrom(beet, SOWN)).toBe(isReached(milestone) && milestone.usual);
  });

  test("does not mind what else is known of it", () => {
    const seen = growingOf(QUARRY, "beet", { acts: { start: "2027-05-03", up: "2027-06-09" } });
    expect(upFrom(seen, SOWN)).toBe(upFrom(beet, SOWN));
  });

  test("of tubers is the middle of their days", () => {
    expect(isoOf(upFrom(growingOf(QUARRY, "potato"), SOWN) ?? SOWN)).toBe("2027-05-21");
  });

  test("is early, usual and late in that order, on any day and at any spread", () => {
    const spreadK = fc.double({ min: 0, max: 5, noNaN: true });
    const names = fc.constantFrom("beet", "carrot", "lettuce");
    fc.assert(
      fc.property(names, fc.integer({ min: -60, max: 130 }), spreadK, (name, on, spread) => {
        const growing = growingOf(QUARRY, name);
        const climate = { ...growing.climate, spreadK: () => spread };
        const sown = plus(SOWN, on);
        const days = upOutdoors({ ...growing, climate }, sown);
        if (days === null) return upFrom(growing, sown) === null;
        const { early, usual, late } = days;
        const inOrder = sown < early && early <= usual && usual + 3 <= late;
        return (
          inOrder && (usual - early >= 3 || early === sown + 1) && usual <= sown + GIVE_UP_DAYS
        );
      }),
      { numRuns: 60 },
    );
  });

  test("moves with the day it is sown, four years on too", () => {
    const later = growingOf(QUARRY.replace("2027", "2031"), "beet");
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 120 }), (on) => {
        const up = upFrom(beet, plus(SOWN, on));
        return up !== null && upFrom(later, plus(SOWN, on + 1461)) === plus(up, 1461);
      }),
      { numRuns: 40 },
    );
  });
});

describe("when what is up was sown", () => {
  test("is the last day from which it can be up by then, indoors and out", () => {
    const carrot = growingOf(QUARRY, "carrot");
    const day = sownFor(carrot, isoDay("2027-05-20"));
    expect(upFrom(carrot, day)).toBeLessThanOrEqual(isoDay("2027-05-20"));
    expect(upFrom(carrot, plus(day, 1))).toBeGreaterThan(isoDay("2027-05-20"));
    const tomato = sownFor(growingOf(QUARRY, "tomato"), isoDay("2027-04-20"));
    expect(daysOf(up("tomato", { acts: { start: isoOf(tomato) } }))).toContain("04-20");
  });

  test("is three days before where nothing can come up", () => {
    const frozen = growingOf(QUARRY, "carrot", { plan: { site: always(celsius(20)) } });
    expect(sownFor(frozen, SOWN)).toBe(plus(SOWN, -3));
  });
});

describe("a seed of a planting", () => {
  test("lies in its bed at the middle of its depth, in the season asked for", () => {
    const { bed, depthCm, warmerK, row } = seedOf(growingOf(QUARRY, "beet"), "beet", 1.5);
    expect([bed?.key, row, warmerK]).toEqual(["root-bed", "beet", 1.5]);
    expect(depthCm).toBeCloseTo(1.27, 9);
  });

  test("lies halfway between the least and the most depth", () => {
    const beet = growingOf(QUARRY, "beet");
    const { outdoors } = beet.crop;
    const crop = {
      outdoors: outdoors && { ...outdoors, depthCm: commonPractice([2, 5] as const) },
    };
    expect(seedOf(growingOf(QUARRY, "beet", { crop }), "beet", 0).depthCm).toBe(3.5);
  });

  test("lies half an inch deep where the facts give no depth, as in the table", () => {
    const tomato = growingOf(QUARRY, "tomato", { crop: { outdoors: null } });
    expect(seedOf(tomato, "tomato", 0).depthCm).toBe(1.27);
  });
});
