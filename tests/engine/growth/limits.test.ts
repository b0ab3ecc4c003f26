import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../../src/base/days/day.ts";
import { celsius } from "../../../src/base/quantities/quantity.ts";
import type { Crop } from "../../../src/crops/facts.ts";
import { commonPractice, NO_LIMITS } from "../../../src/crops/figures.ts";
import type { DayAir } from "../../../src/engine/climate/day-air.ts";
import { decideDate } from "../../../src/engine/growth/date-decision.ts";
import {
  nextGoodStart,
  refusalOf,
  withinLimits,
  worthwhileUntil,
} from "../../../src/engine/growth/limits.ts";
import { ripeIfSown } from "../../../src/engine/growth/ripe.ts";
import { upFrom } from "../../../src/engine/growth/up.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { always, type Given, growingOf } from "./growing.ts";

const on = (day: string) => isoDay(`2027-${day}`);
const beet = (given: Given = {}) => growingOf(QUARRY, "beet", given);
const limited = (limits: Partial<Crop["limits"]>): Given => ({
  crop: { limits: { ...NO_LIMITS, ...limits } },
});

/** Beets that bitter heat spoils over 64 °F of mean air, as the lane has from late June to late August. */
const HEAT = limited({ heatC: commonPractice(celsius(64)) });
const LONG = limited({ longDays: commonPractice({ hours: 14, aboveC: celsius(55) }) });
const COLD = limited({ coldYoung: commonPractice({ belowC: 13, days: 14 }) });

function sleeping(soilMaxC: number): Given {
  const { outdoors } = beet().crop;
  return { crop: { outdoors: outdoors && { ...outdoors, soilMaxC: commonPractice(soilMaxC) } } };
}

describe("why a sowing comes to nothing", () => {
  test("is nothing where it goes well", () => {
    expect(refusalOf(beet(), on("05-03"))).toBeNull();
  });

  test("is soil so warm that seed sleeps", () => {
    expect(refusalOf(beet(sleeping(16)), on("07-15"))).toBe("asleep");
    expect(refusalOf(beet(sleeping(16)), on("05-10"))).toBeNull();
  });

  test("is soil in which it never comes up", () => {
    expect(refusalOf(beet({ plan: { site: always(celsius(36)) } }), on("05-03"))).toBe("never up");
  });

  test("is a winter that comes before it is ready", () => {
    expect(refusalOf(beet(), on("09-01"))).toBe("too late");
  });

  test("is a winter also where it is sown after the first frost", () => {
    for (const day of ["10-01", "10-03", "10-10", "10-20"])
      expect(["too late", "never up"]).toContain(refusalOf(beet(), on(day)));
  });

  test("is a winter that leaves it too little time to bear", () => {
    const bearing = (days: number): Given => ({
      crop: { harvest: { ...beet().crop.harvest, bearsDays: commonPractice([days, days]) } },
    });
    const ripe = ripeIfSown(beet(), on("07-28"));
    const left = isoDay("2027-10-30") - (ripe ?? 0);
    expect(left).toBeGreaterThan(20);
    expect(left).toBeLessThan(42);
    expect(refusalOf(beet(bearing(left)), on("07-28"))).toBeNull();
    expect(refusalOf(beet(bearing(left + 1)), on("07-28"))).toBe("too late");
  });

  test("is no winter that leaves it six weeks to bear, however long it would", () => {
    const harvest = { ...beet().crop.harvest, bearsDays: commonPractice([56, 90] as const) };
    const ripe = on("08-01");
    expect(worthwhileUntil(beet({ crop: { harvest } }), ripe)).toBe(plus(ripe, 42));
  });

  test("is heat on the day it is ready or in the first week of picking", () => {
    expect(refusalOf(beet(HEAT), on("05-20"))).toBe("heat");
    const quick = { planting: { days: 30 } };
    const ripe = ripeIfSown(beet(quick), on("05-03"));
    if (ripe === null) throw new Error("it is ready in June");
    const [first = 0, week = 0] = [ripe, plus(ripe, 7)].map((day) => beet().climate.airC(day));
    expect(first).toBeLessThan(week);
    const over = (heatC: number) =>
      refusalOf(beet({ ...quick, ...limited({ heatC: commonPractice(heatC) }) }), on("05-03"));
    expect([over(first - 0.1), over((first + week) / 2), over(week + 0.1)]).toEqual([
      "heat",
      "heat",
      null,
    ]);
  });

  test("is long days on which it is warm as well", () => {
    expect(refusalOf(beet(LONG), on("05-10"))).toBe("long days");
    expect(refusalOf(beet(LONG), on("07-15"))).toBeNull();
    const cooler = limited({ longDays: commonPractice({ hours: 14, aboveC: celsius(80) }) });
    expect(refusalOf(beet(cooler), on("05-10"))).toBeNull();
  });

  test("is not long days where the plan gives no latitude", () => {
    const site = { ...beet().plan.site, latitude: null };
    expect(refusalOf(beet({ ...LONG, plan: { site } }), on("05-10"))).toBeNull();
  });

  test("is more cold days than it stands in its first six weeks", () => {
    expect(refusalOf(beet(COLD), on("04-15"))).toBe("cold");
    expect(refusalOf(beet(COLD), on("05-20"))).toBeNull();
  });

  test("counts the cold days to the very one", () => {
    const { climate } = beet();
    const up = upFrom(beet(), on("04-15"));
    if (up === null) throw new Error("it comes up");
    const cold = Array.from({ length: 42 }, (_, i) => climate.airC(plus(up, i))).filter(
      (at) => at <= 10,
    ).length;
    const stands = (days: number) =>
      refusalOf(beet(limited({ coldYoung: commonPractice({ belowC: 10, days }) })), on("04-15"));
    expect(cold).toBeGreaterThan(3);
    expect([stands(cold), stands(cold - 1)]).toEqual([null, "cold"]);
  });
});

describe("the next day that a sowing goes well", () => {
  test("is after the day, and no day between goes well", () => {
    const good = nextGoodStart(beet(HEAT), on("05-20"));
    if (good === null) throw new Error("there is an autumn");
    expect(refusalOf(beet(HEAT), good)).toBeNull();
    for (let day = plus(on("05-20"), 1); day < good; day = plus(day, 1))
      expect(refusalOf(beet(HEAT), day)).not.toBeNull();
  });

  test("is none where half a year has none", () => {
    expect(nextGoodStart(beet(limited({ heatC: commonPractice(-20) })), on("05-03"))).toBeNull();
  });
});

describe("a reckoned day within a crop's limits", () => {
  const reckoned = decideDate([{ basis: "given", day: on("05-20") }], plus(on("05-20"), 4));

  test("stays where the sowing goes well, or the crop has no limits", () => {
    expect(withinLimits(beet(COLD), reckoned, () => on("05-03"))).toBe(reckoned);
    const late = decideDate([{ basis: "given", day: on("09-01") }], null);
    expect(withinLimits(beet(), late, () => on("05-03"))).toBe(late);
  });

  test("waits for the other side of summer where the gardener's wish had put it into heat", () => {
    const moved = withinLimits(beet(HEAT), reckoned, () => on("05-03"));
    expect(moved.day).toBe(nextGoodStart(beet(HEAT), on("05-20")));
    expect([moved.early, moved.late, moved.stop, moved.stopped]).toEqual([
      moved.day,
      moved.day,
      null,
      false,
    ]);
    expect(moved.basis).toEqual(["given", "heat"]);
    expect(moved.tests.at(-1)).toEqual({ basis: "heat", day: moved.day });
  });

  test("stays in spring where the season itself gives that day", () => {
    expect(withinLimits(beet(HEAT), reckoned, () => on("05-20"))).toBe(reckoned);
    expect(withinLimits(beet(LONG), reckoned, () => on("05-20"))).toBe(reckoned);
  });

  test("leaves spring for autumn with a crop that is grown for autumn", () => {
    const autumn = beet({ crop: { ...LONG.crop, forAutumn: true } });
    const moved = withinLimits(autumn, reckoned, () => on("05-20"));
    expect(moved.day).toBe(nextGoodStart(autumn, on("05-20")));
    expect(moved.day).toBeGreaterThan(on("06-20"));
    expect(moved.basis).toEqual(["given", "day length"]);
  });

  test("waits for warmth where cold makes it bolt, whoever put it there", () => {
    const early = decideDate([{ basis: "soil", day: on("04-15") }], null);
    const moved = withinLimits(beet(COLD), early, () => on("04-15"));
    expect(moved.day).toBeGreaterThan(on("04-15"));
    expect(refusalOf(beet(COLD), plus(moved.day, -1))).toBe("cold");
    expect(moved.basis).toEqual(["soil", "cold"]);
  });

  test("stays where it comes too late or never up, which waiting does not mend", () => {
    const late = decideDate([{ basis: "given", day: on("09-01") }], null);
    expect(withinLimits(beet(HEAT), late, () => on("05-03"))).toBe(late);
  });

  test("names the ground of each refusal once", () => {
    const long = withinLimits(beet(LONG), reckoned, () => on("05-03"));
    expect(long.basis).toEqual(["given", "day length"]);
    const soilMaxC = beet().climate.dampSoilC(on("08-01"), beet().bed);
    const asleep = decideDate([{ basis: "given", day: on("07-25") }], null);
    const moved = withinLimits(beet(sleeping(soilMaxC)), asleep, () => on("05-03"));
    expect(moved.basis).toEqual(["given", "heat"]);
    expect(moved.day).toBe(on("08-01"));
  });
});

describe("plants set out", () => {
  const tomato = (given: Given = {}) =>
    growingOf(QUARRY, "tomato", { ...given, planting: { start: "plants" } });

  test("are young from that day on, and bolt after cold as seedlings do", () => {
    expect(refusalOf(tomato(COLD), on("04-20"))).toBe("cold");
    expect(refusalOf(tomato(COLD), on("06-11"))).toBeNull();
  });

  test("are young for six weeks, and cold on the day after harms no more", () => {
    const out = on("06-11");
    const coldAfter = (days: number) => {
      const warm = Array.from({ length: 120 }, (_, i) => [plus(out, i), { lowC: 15, highC: 25 }]);
      const cold = [plus(out, days), { lowC: 1, highC: 3 }];
      const observed = new Map([...warm, cold] as [Day, DayAir][]);
      const given = limited({ coldYoung: commonPractice({ belowC: 13, days: 0 }) });
      return refusalOf(tomato({ ...given, observed }), out);
    };
    expect([0, 41, 42].map(coldAfter)).toEqual(["cold", "cold", null]);
  });

  test("do not sleep in warm soil, as seed would", () => {
    const given = sleeping(1);
    const beets = growingOf(QUARRY, "beet", { ...given, planting: { start: "plants" } });
    expect(refusalOf(beet(given), on("06-11"))).toBe("asleep");
    expect(refusalOf(beets, on("06-11"))).not.toBe("asleep");
  });
});

test("a first harvest is worth its place as long as it bears at the least", () => {
  const harvest = { ...beet().crop.harvest, bearsDays: commonPractice([20, 40] as const) };
  expect(worthwhileUntil(beet(), on("08-01"))).toBe(on("08-01"));
  expect(worthwhileUntil(beet({ crop: { harvest } }), on("08-01"))).toBe(on("08-21"));
});
