import { describe, expect, test } from "vitest";
import { isoOf, plus } from "../../../src/base/days/day.ts";
import type { Crop } from "../../../src/crops/facts.ts";
import { climateOf } from "../../../src/engine/climate/climate.ts";
import { anchorKey } from "../../../src/engine/growth/anchors.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import {
  coefficientOn,
  type DrinkingPeriod,
  drinkingPeriodOf,
  spreadOn,
  usualWaterOf,
  waterAt,
} from "../../../src/engine/growth/thirst.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";
import { must } from "../../sources/ours.ts";
import { type Given, growingOf } from "./growing.ts";

const BEETS = { start: "2027-05-03", up: "2027-05-20", "first ripe": "2027-07-19" };
const beets = (given: Given = {}) => growingOf(QUARRY, "beet", { acts: BEETS, ...given });
const drinking = (growing: SowingContext) => drinkingPeriodOf(growing, growing.anchors);
const told = (drinking: DrinkingPeriod | null) =>
  drinking && [drinking.from, drinking.to].map(isoOf);

describe("a mulch", () => {
  test("saves a third of what young plants' soil loses, and a tenth once they shade it", () => {
    const mulched = beets({ planting: { mulch: "straw" } });
    const share = (iso: string) =>
      coefficientOn(mulched, must(drinking(mulched)), isoDay(iso)) /
      coefficientOn(beets(), must(drinking(beets())), isoDay(iso));
    expect(share("2027-05-21")).toBeCloseTo(0.65, 6);
    expect(share("2027-07-05")).toBeCloseTo(0.9, 6);
  });
});

describe("a sowing drinks outdoors", () => {
  test("from the day it is up to the end of its harvest", () => {
    const acts = { ...BEETS, end: "2027-07-25" };
    expect(told(drinking(beets({ acts })))).toEqual(["2027-05-20", "2027-07-25"]);
  });

  test("as long as its kind keeps, where its end is not known", () => {
    const { holdsDays } = beets().crop.harvest;
    const to = isoOf(plus(isoDay("2027-07-19"), holdsDays.value));
    expect(told(drinking(beets()))).toEqual(["2027-05-20", to]);
  });

  test("from the day it is set out where it is raised under cover, to the first frost at the latest", () => {
    const acts = { start: "2027-04-01", up: "2027-04-09", "set out": "2027-05-28" };
    const tomatoes = growingOf(QUARRY, "tomato", { acts: { ...acts, end: "2027-11-01" } });
    expect(told(drinking(tomatoes))).toEqual(["2027-05-28", "2027-10-02"]);
    const indoors = growingOf(QUARRY, "tomato", {
      acts: { start: "2027-04-01", up: "2027-04-09" },
    });
    expect(drinking(indoors)).toBeNull();
  });

  test("to the frost where it bears till then, on whichever day the last is to be picked", () => {
    const acts = { "set out": "2027-05-28", end: "2027-09-26" };
    const tomatoes = growingOf(QUARRY, "tomato", { acts });
    expect(told(drinking(tomatoes))).toEqual(["2027-05-28", "2027-10-02"]);
    const key = anchorKey(tomatoes.planting.key, 1, "end");
    const seen = { day: isoDay("2027-09-20"), from: "diary", basis: [], task: null } as const;
    const anchors = new Map([...tomatoes.anchors, [key, seen]]);
    expect(told(drinkingPeriodOf(tomatoes, anchors))).toEqual(["2027-05-28", "2027-09-20"]);
  });

  test("no earlier than its plan's season, where it stands the winter", () => {
    const garlic = growingOf(QUARRY, "garlic", { acts: { start: "2026-09-14", up: "2026-10-20" } });
    const { from, to } = must(drinking(garlic));
    expect(isoOf(from)).toBe("2027-01-18");
    expect(isoOf(to) > "2027-07-01").toBe(true);
  });

  test("under glass past the frosts outdoors: the tender till frost gets in, the hardy all winter", () => {
    const glass = (growing: SowingContext): SowingContext => {
      const bed = { ...must(growing.bed), kind: "greenhouse" as const };
      return { ...growing, bed, climate: growing.climate.at(bed) };
    };
    expect(told(drinking(glass(beets())))).toEqual(told(drinking(beets())));
    const acts = { start: "2027-04-01", up: "2027-04-09", "set out": "2027-05-28" };
    const tomatoes = growingOf(QUARRY, "tomato", { acts: { ...acts, end: "2027-11-01" } });
    expect(told(drinking(glass(tomatoes)))).toEqual(["2027-05-28", "2027-10-16"]);
    const late = beets({ acts: { start: "2027-09-20", up: "2027-10-05" } });
    expect(told(drinking(glass(late)))?.[0]).toBe("2027-10-05");
  });

  test("not long before the harvest of what stands for years", () => {
    const years = QUARRY.replace("beet: 2 rows", "rhubarb: 2 crowns, in since 20 Apr 2024");
    const rhubarb = growingOf(years, "rhubarb", { acts: { start: "2024-04-20" } });
    const { from, ripe } = must(drinking(rhubarb));
    expect(ripe - from).toBe(14);
  });

  test("not before it is in, and not after the frost", () => {
    expect(drinking(growingOf(QUARRY, "beet"))).toBeNull();
    const late = { start: "2027-09-20", up: "2027-10-05" };
    expect(drinking(beets({ acts: late }))).toBeNull();
  });
});

describe("what it gives off for each millimetre of grass", () => {
  const part = (growing: ReturnType<typeof beets>, iso: string) =>
    coefficientOn(growing, must(drinking(growing)), isoDay(iso));

  test("is least while young, most when full grown, and less at the end", () => {
    const days = ["2027-05-20", "2027-06-05", "2027-06-25", "2027-07-19"];
    const parts = days.map((iso) => part(beets(), iso));
    expect(parts[0]).toBe(0.7);
    expect(parts[1]).toBeGreaterThan(0.7);
    expect(parts[1]).toBeLessThan(1.05);
    expect(parts[2]).toBe(1.05);
    expect(parts[3]).toBeCloseTo(0.95, 9);
  });

  test("is nought outside its days", () => {
    expect(part(beets(), "2027-05-19")).toBe(0);
    expect(part(beets(), "2028-05-20")).toBe(0);
  });

  test("is higher for tomatoes, and does not fall off while they bear", () => {
    const acts = { start: "2027-04-01", "set out": "2027-05-28", "first ripe": "2027-08-10" };
    const tomatoes = growingOf(QUARRY, "tomato", { acts: { ...acts, end: "2027-10-01" } });
    expect(part(tomatoes, "2027-05-28")).toBe(0.6);
    expect(part(tomatoes, "2027-09-20")).toBe(1.15);
  });

  test("never jumps by more than a tenth from one day to the next", () => {
    const growing = beets();
    const drinks = must(drinking(growing));
    for (let day = drinks.from; day < drinks.to; day = plus(day, 1)) {
      const step =
        coefficientOn(growing, drinks, plus(day, 1)) - coefficientOn(growing, drinks, day);
      expect(Math.abs(step), isoOf(day)).toBeLessThan(0.1);
    }
  });

  test("is the small vegetables' for a family the table does not single out", () => {
    const crop: Partial<Crop> = { family: "onion family" };
    expect(part(beets({ crop }), "2027-06-25")).toBe(1.05);
    expect(part(beets({ crop: { family: "gourd family" } }), "2027-06-25")).toBe(1);
  });
});

describe("water of a usual year", () => {
  const plan = planOf(QUARRY);
  const july = isoDay("2027-07-15");
  const rainMm = [12, 10, 15, 25, 45, 50, 31, 30, 28, 18, 13, 12];
  const usual = (rain: readonly number[] | null) => {
    const site = { ...plan.site, normals: { ...must(plan.site.normals), rainMm: rain } };
    return must(usualWaterOf(site, climateOf({ ...plan, site }, [])));
  };

  test("has grass giving off five to six millimetres in July, and rain spread over its month", () => {
    const { grassMm, rainMm: rain } = usual(rainMm)(july);
    expect(grassMm).toBeGreaterThan(5);
    expect(grassMm).toBeLessThan(6);
    expect(rain).toBeCloseTo(1, 9);
    expect(usual(rainMm)(isoDay("2028-02-29")).rainMm).toBeCloseTo(10 / 29, 9);
    expect(usual(rainMm)(isoDay("2027-12-31")).rainMm).toBeCloseTo(12 / 31, 9);
  });

  test("has no rain where the plan gives none", () => {
    expect(usual(null)(july).rainMm).toBe(0);
  });

  test("is not known without latitude or without monthly means", () => {
    const climate = climateOf(plan, []);
    expect(usualWaterOf({ ...plan.site, latitude: null }, climate)).toBeNull();
    expect(usualWaterOf({ ...plan.site, normals: null }, climate)).toBeNull();
  });
});

describe("leaves and rain where a bed stands", () => {
  test("shade three times the ground of a bag once grown, and no more than a bed's own", () => {
    const potatoes = growingOf(QUARRY, "potato", {
      acts: { start: "2027-05-03", up: "2027-05-26", "first ripe": "2027-08-28" },
    });
    const drinks = must(drinking(potatoes));
    expect(spreadOn(potatoes, drinks, isoDay("2027-05-26"))).toBe(1);
    expect(spreadOn(potatoes, drinks, isoDay("2027-08-01"))).toBe(3);
    expect(spreadOn(beets(), must(drinking(beets())), isoDay("2027-07-01"))).toBe(1);
  });

  test("get no rain under glass, and use a fifth less there", () => {
    const daily = { grassMm: 5, rainMm: 2 };
    expect(waterAt(must(beets().bed), daily)).toEqual(daily);
    const glass = { ...must(beets().bed), kind: "greenhouse" as const };
    expect(waterAt(glass, daily)).toEqual({ grassMm: 4, rainMm: 0 });
  });
});
