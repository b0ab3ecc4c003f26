import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import { BEET } from "../../../src/crops/beets.ts";
import type { Outdoors } from "../../../src/crops/facts.ts";
import { commonPractice, NO_LIMITS } from "../../../src/crops/figures.ts";
import { lastFrostAt } from "../../../src/engine/climate/frost.ts";
import { anchorKey } from "../../../src/engine/growth/anchors.ts";
import type { DateDecision } from "../../../src/engine/growth/date-decision.ts";
import { nextGoodStart } from "../../../src/engine/growth/limits.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import {
  autumnPlantingDay,
  plantingOutDay,
  settingOutDay,
} from "../../../src/engine/growth/starting.ts";
import { STOP_DAYS } from "../../../src/engine/growth/stopping.ts";
import { upFrom } from "../../../src/engine/growth/up.ts";
import type { Site } from "../../../src/garden/model/plan.ts";
import { isoDay, normalsOf, planOf, QUARRY } from "../../gardens.ts";
import { withCrops } from "../../winters.ts";
import { always, anchor, type Given, growingOf } from "./growing.ts";

const SITE = planOf(QUARRY).site;

const told = (reckoned: DateDecision | null) => reckoned && isoOf(reckoned.day);
const tests = (reckoned: DateDecision | null) =>
  reckoned?.tests.map(({ basis: ground, day }) => `${ground} ${isoOf(day).slice(5)}`);

const out = (given: Given = {}) => settingOutDay(growingOf(QUARRY, "tomato", given));

function outdoors({ crop }: SowingContext): Outdoors {
  if (!crop.outdoors) throw new Error(`${crop.one} is not sown outdoors`);
  return crop.outdoors;
}

function sown(name: string, given: Given = {}): DateDecision {
  const growing = growingOf(QUARRY, name, given);
  return plantingOutDay(growing, outdoors(growing));
}

describe("when tomatoes go out", () => {
  test("is the 32 °F date at 1 spring in 10, where the soil is warm by then", () => {
    expect(told(out())).toBe("2027-05-21");
    expect(tests(out())).toEqual(["last frost 05-21", "soil 05-06"]);
  });

  test("is earlier for who runs more risk, but waits for the soil", () => {
    expect(told(out({ plan: { risk: { raised: 0.5, seed: 0.5 } } }))).toBe("2027-05-06");
    const gambler = out({ plan: { risk: { raised: 0.9, seed: 0.5 } } });
    expect(told(gambler)).toBe("2027-05-06");
  });

  test("waits for soil that is cold without film", () => {
    const bare = growingOf(QUARRY, "tomato");
    expect(told(settingOutDay({ ...bare, bed: null }))).toBe("2027-05-22");
  });

  test("waits for what the gardener asked", () => {
    const asked = out({ planting: { notBefore: isoDay("2027-06-08") } });
    expect(told(asked)).toBe("2027-06-08");
    expect(asked?.stopped).toBe(false);
  });

  test("is not before the stop day where the gardener asks for later than that", () => {
    expect(told(out({ planting: { notBefore: isoDay("2027-07-01") } }))).toBe("2027-07-01");
  });

  test("is the day the gardener fixed, whatever the frost", () => {
    const fixed = out({ planting: { fixed: { start: null, out: isoDay("2027-04-01") } } });
    expect(told(fixed)).toBe("2027-04-01");
    expect(fixed?.basis).toEqual(["given"]);
  });

  test("is held for cold soil three weeks past the frost and no longer", () => {
    const cold = out({ plan: { site: always(4) } });
    expect(told(cold)).toBe(isoOf(plus(isoDay("2027-05-21"), STOP_DAYS)));
    expect(cold?.stopped).toBe(true);
  });

  test("goes by nights and soil in a place without frost", () => {
    const warm = { ...always(20), lastFrost: null, firstFrost: null };
    expect(tests(out({ plan: { site: warm } }))).toEqual(["cold 01-01", "soil 01-01"]);
  });

  test("waits for its place to be free", () => {
    const anchors = new Map([
      [anchorKey("2027/lettuce", 1, "end"), anchor(isoDay("2027-05-25"))],
      [anchorKey("2027/lettuce", 2, "end"), anchor(isoDay("2027-06-01"))],
    ]);
    const behind = out({ anchors, planting: { after: "2027/lettuce" } });
    expect(told(behind)).toBe("2027-06-02");
    expect(behind?.basis).toEqual(["place free", "last frost", "soil"]);
  });

  test("is nothing for a crop that is never set out", () => {
    expect(settingOutDay(growingOf(QUARRY, "beet"))).toBeNull();
  });
});

describe("where no usual year warms the soil enough", () => {
  const COOL = `garden: By the Sea
year: 2027
place:
  clock: Europe/Dublin
  latitude: 53.3
  last frost: about 25 Apr
  first frost: about 28 Oct
  hottest afternoons: 19 °C
  coldest nights: 2 °C
crops:
  - okra: 2 plants, from seed outdoors
`;

  test("seed is sown three weeks after the frost date and not when the year is over", () => {
    const growing = growingOf(COOL, "okra");
    expect(told(plantingOutDay(growing, outdoors(growing)))).toBe("2027-05-16");
  });
});

describe("when hardy plants go out", () => {
  test("counts from the usual last frost and not from the risk for raised plants", () => {
    const lettuce = settingOutDay(growingOf(QUARRY, "lettuce"));
    expect(told(lettuce)).toBe("2027-04-08");
  });

  test("is two weeks before the killing frost for what has to root by winter, sooner by the last frost", () => {
    const beds = QUARRY.replace(
      "lettuce: 2 rows, every 14 days, 3 times",
      "spring cabbage: 8 plants",
    );
    const short = beds
      .replace("20 Apr, 6 May, 21 May", "1 Jun, 10 Jun, 20 Jun")
      .replace("about 2 Oct", "about 26 Aug");
    const cabbage = (text: string) => settingOutDay(growingOf(text, "spring-cabbage"));
    expect(tests(cabbage(beds))).toEqual(["last frost 09-30"]);
    expect(tests(cabbage(short))).toEqual(["first frost 08-26"]);
  });
});

describe("hardy plants where spring comes all at once", () => {
  const crops = withCrops("very-short", ["kale: 4 plants, from seed indoors"]);
  const known = crops.replace(
    "  first frost:",
    "  hottest afternoons: 72 °F\n  coldest nights: -17 °F\n  first frost:",
  );
  const kale = settingOutDay(growingOf(known, "kale"));

  test("wait till the ground has thawed, weeks after their frost day", () => {
    expect(told(kale)).toBe("2027-05-04");
    expect(tests(kale)).toEqual(["last frost 04-20", "soil 05-04"]);
  });

  test("have no such test where it has thawed by then", () => {
    expect(tests(settingOutDay(growingOf(QUARRY, "lettuce")))).toEqual(["last frost 04-08"]);
  });
});

describe("over any climate and risk, tomatoes", () => {
  const month = fc.double({ min: -25, max: 30, noNaN: true });
  const site: fc.Arbitrary<Site> = fc
    .record({
      lowC: fc.array(month, { minLength: 12, maxLength: 12 }),
      swing: fc.double({ min: 0, max: 15, noNaN: true }),
      usual: fc.integer({ min: -40, max: 60 }),
      before: fc.integer({ min: 1, max: 30 }),
      after: fc.integer({ min: 1, max: 30 }),
    })
    .map(({ lowC, swing, usual, before, after }) => {
      const day = plus(isoDay("2027-05-06"), usual);
      return {
        ...SITE,
        normals: normalsOf(
          lowC,
          lowC.map((low) => low + swing),
        ),
        lastFrost: { early: plus(day, -before), usual: day, late: plus(day, after), given: 3 },
      };
    });
  const risk = fc.double({ min: 0.01, max: 0.6, noNaN: true });
  const reckon = (place: Site, raised: number) =>
    out({ plan: { site: place, risk: { raised, seed: 0.5 } } });

  test("never go out before the 32 °F date at their risk", () => {
    fc.assert(
      fc.property(site, risk, (place, raised) => {
        const frost = place.lastFrost && lastFrostAt(place.lastFrost, raised);
        const day = reckon(place, raised)?.day;
        return frost !== null && day !== undefined && day >= frost;
      }),
    );
  });

  test("are never held past the stop day", () => {
    fc.assert(
      fc.property(site, risk, (place, raised) => {
        const frost = place.lastFrost && lastFrostAt(place.lastFrost, raised);
        const day = reckon(place, raised)?.day;
        const end = place.firstFrost && plus(place.firstFrost.usual, -42);
        if (frost === null || day === undefined || end === null) return false;
        return day <= Math.max(frost + STOP_DAYS, end);
      }),
    );
  });

  test("go out on the stop day only where the soil is still cold then, and say so", () => {
    fc.assert(
      fc.property(site, risk, (place, raised) => {
        const reckoned = reckon(place, raised);
        const soil = reckoned?.tests.find(({ basis: ground }) => ground === "soil")?.day;
        if (!reckoned || reckoned.stop === null || soil === undefined) return false;
        return reckoned.stopped === soil > reckoned.stop;
      }),
    );
  });
});

describe("when seed goes in", () => {
  test("waits for soil warm enough for it", () => {
    expect(told(sown("carrot"))).toBe("2027-04-24");
    expect(tests(sown("carrot"))).toEqual(["soil 04-24", "last frost 04-15"]);
  });

  test("waits three weeks before the last frost where the soil is warm long since", () => {
    expect(told(sown("carrot", { plan: { site: always(12) } }))).toBe("2027-04-15");
  });

  test("is the day the gardener fixed", () => {
    const fixed = { start: isoDay("2027-04-20"), out: null };
    expect(told(sown("carrot", { planting: { fixed } }))).toBe("2027-04-20");
  });

  test("is not before what the gardener asked", () => {
    const notBefore = isoDay("2027-05-20");
    expect(told(sown("carrot", { planting: { notBefore } }))).toBe("2027-05-20");
  });

  test("is not before the first day of the month the gardener named", () => {
    const within = { from: isoDay("2027-06-01"), to: isoDay("2027-06-30") };
    expect(told(sown("carrot", { planting: { within } }))).toBe("2027-06-01");
  });

  test("is held for cold soil three weeks past the last frost and no longer", () => {
    const cold = sown("carrot", { plan: { site: always(3) } });
    expect(told(cold)).toBe("2027-05-27");
    expect(cold.stopped).toBe(true);
  });

  test("of potatoes is two weeks before the last frost in warm soil", () => {
    expect(told(sown("potato", { plan: { site: always(12) } }))).toBe("2027-04-22");
  });
});

describe("tender seed", () => {
  const crop = { ...BEET, frost: { ...BEET.frost, value: "tender" } } as const;

  test("goes in before the last frost, so that it is up when frost is past", () => {
    const growing = growingOf(QUARRY, "beet", { crop, plan: { site: always(10) } });
    const reckoned = plantingOutDay(growing, crop.outdoors ?? outdoors(growing));
    const up = upFrom(growing, reckoned.day);
    expect(told(reckoned)).toBe("2027-04-19");
    expect(up && isoOf(up)).toBe("2027-05-06");
    const gambler = out({ plan: { risk: { raised: 0.9, seed: 0.5 } } });
    expect(told(gambler)).toBe("2027-05-06");
  });

  test("is never up before the frost date at the risk for seed, at any soil", () => {
    const soilC = fc.double({ min: 8, max: 30, noNaN: true });
    fc.assert(
      fc.property(soilC, fc.double({ min: 0.05, max: 0.6, noNaN: true }), (meanC, seed) => {
        const plan = { site: always(meanC), risk: { raised: 0.1, seed } };
        const growing = growingOf(QUARRY, "beet", { crop, plan });
        const up = upFrom(growing, plantingOutDay(growing, outdoors(growing)).day);
        return up !== null && SITE.lastFrost !== null && up >= lastFrostAt(SITE.lastFrost, seed);
      }),
      { numRuns: 40 },
    );
  });
});

describe("when garlic goes in", () => {
  const autumn = (given: Given = {}) => autumnPlantingDay(growingOf(QUARRY, "garlic", given));
  const within = (from: string, to: string) => ({ from: isoDay(from), to: isoDay(to) });

  test("is a week and a half after the usual killing frost", () => {
    expect(told(autumn({ planting: { within: null } }))).toBe("2027-10-27");
  });

  test("is the middle of a winter of a few weeks, so that it is not past the last frost", () => {
    const dates = (day: string) => {
      const usual = isoDay(day);
      return { early: usual, usual, late: usual, given: 3 } as const;
    };
    const site = { ...SITE, lastFrost: dates("2027-01-28"), firstFrost: dates("2028-01-08") };
    expect(told(autumn({ planting: { within: null }, plan: { site } }))).toBe("2028-01-17");
  });

  test("is inside the month the gardener named", () => {
    expect(told(autumn())).toBe("2027-10-27");
    expect(told(autumn({ planting: { within: within("2027-09-01", "2027-09-30") } }))).toBe(
      "2027-09-30",
    );
    expect(told(autumn({ planting: { within: within("2027-11-01", "2027-11-30") } }))).toBe(
      "2027-11-01",
    );
  });

  test("waits for its place to be free, also in the month the gardener named", () => {
    const anchors = new Map([[anchorKey("2027/lettuce", 3, "end"), anchor(isoDay("2027-10-29"))]]);
    expect(told(autumn({ anchors, planting: { after: "2027/lettuce" } }))).toBe("2027-10-30");
  });

  test("is the day the gardener fixed", () => {
    const fixed = { start: isoDay("2027-10-09"), out: null };
    expect(told(autumn({ planting: { fixed } }))).toBe("2027-10-09");
  });

  test("is the first cool day in a place without frost, inside the month the gardener named", () => {
    const site = { ...SITE, firstFrost: null };
    expect(told(autumn({ planting: { within: null }, plan: { site } }))).toBe("2027-09-29");
    expect(told(autumn({ plan: { site } }))).toBe("2027-10-01");
  });
});

test("all starts move day for day with the frost where frost alone decides", () => {
  const warm = always(15);
  const moved = (n: number, frost: { readonly [K in "early" | "usual" | "late"]: Day }): Site => ({
    ...warm,
    lastFrost: {
      early: plus(frost.early, n),
      usual: plus(frost.usual, n),
      late: plus(frost.late, n),
      given: 3,
    },
  });
  const { lastFrost } = warm;
  if (!lastFrost) throw new Error("the lane has frost");
  for (const n of [-14, -1, 0, 9]) {
    const site = moved(n, lastFrost);
    expect(out({ plan: { site } })?.day).toBe(plus(isoDay("2027-05-21"), n));
    expect(sown("beet", { plan: { site } }).day).toBe(plus(isoDay("2027-04-15"), n));
  }
});

describe("starts in a warm and in a cold season", () => {
  test("lie before and after the usual one where soil decides", () => {
    const { early, day, late } = sown("carrot");
    expect([early, day, late].map(isoOf)).toEqual(["2027-04-20", "2027-04-24", "2027-04-29"]);
  });

  test("are the same day where frost decides or the gardener does", () => {
    const frost = sown("carrot", { plan: { site: always(15) } });
    expect([frost.early, frost.late]).toEqual([frost.day, frost.day]);
    const given = sown("carrot", {
      planting: { fixed: { start: isoDay("2027-05-09"), out: null } },
    });
    expect([given.early, given.late]).toEqual([given.day, given.day]);
  });

  test("are in order for raised plants too, and the late one stops where holds stop", () => {
    const film = out();
    expect(film?.early).toBe(film?.day);
    expect(film && film.late >= film.day && film.late <= plus(film.day, STOP_DAYS)).toBe(true);
  });
});

describe("seed with limits", () => {
  const limits = { ...NO_LIMITS, heatC: commonPractice(celsius(64)) };

  test("goes in on spring's own day, heat or not", () => {
    expect(told(sown("beet", { crop: { limits } }))).toBe(told(sown("beet")));
  });

  test("asked for later waits for the other side of summer", () => {
    const asked = { planting: { notBefore: isoDay("2027-05-25") } };
    expect(told(sown("beet", asked))).toBe("2027-05-25");
    const moved = sown("beet", { ...asked, crop: { limits } });
    expect(moved.day).toBe(
      nextGoodStart(growingOf(QUARRY, "beet", { crop: { limits } }), isoDay("2027-05-25")),
    );
    expect(moved.basis).toContain("heat");
  });

  test("is not moved from the day that the gardener fixed", () => {
    const fixed = { start: isoDay("2027-05-25"), out: null };
    expect(told(sown("beet", { crop: { limits }, planting: { fixed } }))).toBe("2027-05-25");
  });
});
