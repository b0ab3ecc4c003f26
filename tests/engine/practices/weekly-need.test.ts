import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus, weekdayOf } from "../../../src/base/days/day.ts";
import { cm } from "../../../src/base/quantities/quantity.ts";
import type { SowingContext } from "../../../src/engine/growth/sowing-context.ts";
import type { WholeGarden } from "../../../src/engine/practices/practice.ts";
import {
  dryWeeksOf,
  LEAST_BY_HAND_MM,
  LEAST_MM,
} from "../../../src/engine/practices/weekly-need.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { must } from "../../sources/ours.ts";
import { type Given, growingOf } from "../growth/growing.ts";

const DRIP = QUARRY.replace(/(Root bed:\n {4}is: .*\n)/, "$1    drip: 20 gal an hour\n");
const ACTS = {
  start: "2027-05-03",
  up: "2027-05-20",
  "first ripe": "2027-07-19",
  end: "2027-08-01",
};

function gardenOf(contexts: readonly SowingContext[]): WholeGarden {
  const { plan, climate, anchors, around } = must(contexts[0]);
  return { plan, climate, contexts: contexts, anchors, observations: [], around };
}

const beets = (given: Given = {}, text = DRIP) => growingOf(text, "beet", { acts: ACTS, ...given });
const weeksOf = (...contexts: readonly SowingContext[]) => dryWeeksOf(gardenOf(contexts));
const mondays = (...contexts: readonly SowingContext[]) =>
  weeksOf(...contexts).map(({ monday }) => isoOf(monday).slice(5));

describe("the weeks in which a garden wants water", () => {
  test("run from the first Monday that beets are up to their last harvest", () => {
    expect(mondays(beets())).toEqual([
      "05-24",
      "05-31",
      "06-07",
      "06-14",
      "06-21",
      "06-28",
      "07-05",
      "07-12",
      "07-19",
      "07-26",
    ]);
  });

  test("are numbered as ISO 8601 numbers them, on into the next year, whatever is planted", () => {
    expect(weeksOf(beets()).map(({ number }) => number)[0]).toBe(21);
    const early = beets({ acts: { ...ACTS, up: "2027-05-06" } });
    const numbers = (growing: SowingContext) =>
      new Map(weeksOf(growing).map(({ number, monday }) => [monday, number]));
    for (const [monday, number] of numbers(beets()))
      expect(numbers(early).get(monday)).toBe(number);
    const { site } = beets().plan;
    const { lowC, highC, ...rest } = must(site.normals);
    const turned = (means: readonly number[]) => [...means.slice(6), ...means.slice(0, 6)];
    const normals = { ...rest, lowC: turned(lowC), highC: turned(highC) };
    const south = beets({
      acts: { start: "2027-11-01", up: "2027-11-15", "first ripe": "2028-02-20" },
      plan: { site: { ...site, latitude: -46.6, lastFrost: null, firstFrost: null, normals } },
    });
    const all = weeksOf(south).map(({ number }) => number);
    expect(all).toContain(53);
    expect(new Set(all).size).toBe(all.length);
  });

  test("begin on Mondays, each once", () => {
    const all = weeksOf(beets(), growingOf(DRIP, "tomato", { acts: { "set out": "2027-06-08" } }));
    expect(all.every(({ monday }) => weekdayOf(monday) === 1)).toBe(true);
    expect(new Set(all.map(({ monday }) => monday)).size).toBe(all.length);
  });

  test("are none before anything is up, or of plantings that go without", () => {
    expect(mondays(growingOf(DRIP, "beet"))).toEqual([]);
    expect(mondays(beets({ planting: { without: ["water"] } }))).toEqual([]);
  });
});

/** Beets under so much usual rain a month [mm]. */
function rainy(mm: number, text = DRIP): SowingContext {
  const { site } = beets().plan;
  const normals = { ...must(site.normals), rainMm: Array(12).fill(mm) };
  return beets({ plan: { site: { ...site, normals } } }, text);
}

describe("what beds want", () => {
  const need = (growing: SowingContext, monday: string) =>
    weeksOf(growing).find((week) => isoOf(week.monday) === monday)?.needs[0]?.mm ?? 0;

  test("is an inch and more in July", () => {
    expect(need(beets(), "2027-07-05")).toBeGreaterThan(25);
    expect(need(beets(), "2027-07-05")).toBeLessThan(50);
  });

  test("is counted in a week in the middle of which something stands there", () => {
    const ends = (end: string) => mondays(beets({ acts: { ...ACTS, end } })).at(-1);
    expect(ends("2027-07-08")).toBe("07-05");
    expect(ends("2027-07-07")).toBe("06-28");
  });

  test("is the thirstiest plant's, not the sum of all", () => {
    const carrots = growingOf(DRIP, "carrot", { acts: { ...ACTS, up: "2027-05-27" } });
    const both = weeksOf(beets(), carrots).find(({ number }) => number === 22)?.needs ?? [];
    expect(both).toHaveLength(1);
    expect(both[0]?.mm).toBe(need(beets(), "2027-05-31"));
  });

  test("is less by the usual rain, and a week that rain waters is left out", () => {
    expect(need(beets(), "2027-07-05") - need(rainy(31), "2027-07-05")).toBeCloseTo(7, 6);
    expect(mondays(rainy(200))).toEqual([]);
  });

  test("is told by the week from a quarter inch with drip lines, from more without", () => {
    const least = (text: string) => {
      const growing = rainy(31, text);
      return Math.min(...weeksOf(growing).map(({ needs }) => needs[0]?.mm ?? 0));
    };
    expect(least(DRIP)).toBeGreaterThanOrEqual(LEAST_MM);
    expect(least(DRIP)).toBeLessThan(LEAST_BY_HAND_MM);
    expect(least(QUARRY)).toBeGreaterThanOrEqual(LEAST_BY_HAND_MM);
  });

  test("is told from a quarter inch on, and from nothing less", () => {
    const all = Array.from({ length: 80 }, (_, i) => rainy(100 + i)).flatMap((growing) =>
      weeksOf(growing).flatMap(({ needs }) => needs.map(({ mm }) => mm ?? 0)),
    );
    expect(Math.min(...all)).toBeGreaterThanOrEqual(LEAST_MM);
    expect(Math.min(...all)).toBeLessThan(LEAST_MM + 0.3);
  });

  test("is met by rain from the Saturday before the week to its Sunday", () => {
    const monday = isoDay("2027-07-05");
    const wetOn = (days: number) => {
      const rain = { kind: "measured", what: "rain", bed: null, value: cm(5) } as const;
      const observations = [{ ...rain, day: plus(monday, days) }];
      const weeks = dryWeeksOf({ ...gardenOf([beets()]), observations });
      return !weeks.some((week) => week.monday === monday);
    };
    expect([-3, -2, 0, 6, 7].map(wetOn)).toEqual([false, true, true, true, false]);
  });

  test("is all of it in a week in which the diary says no rain fell", () => {
    const monday = isoDay("2027-07-05");
    const rain = { kind: "measured", what: "rain", bed: null, value: cm(0) } as const;
    const mmAfter = (day: number, days: number) =>
      dryWeeksOf({
        ...gardenOf([rainy(31)]),
        observations: [{ ...rain, day: plus(monday, day), days }],
      }).find((week) => week.monday === monday)?.needs[0]?.mm ?? 0;
    const [inside, before] = [mmAfter(6, 14), mmAfter(-1, 14)];
    expect(inside - before).toBeCloseTo(7, 6);
    expect(mmAfter(2, 14)).toBe(before);
  });

  test("counts the rain that fell or is forecast in place of the usual, once most of the week is known", () => {
    const monday = isoDay("2027-07-05");
    /** The week's need and rain with so much rain [mm] on each of its first days. */
    const weekWith = (aDay: number, days: number) => {
      const { climate } = beets();
      const observed = new Map(
        Array.from({ length: days }, (_, i) => {
          const day = plus(monday, i);
          return [day, { ...climate.air(day), rainMm: aDay }] as const;
        }),
      );
      return weeksOf(beets({ observed })).find((week) => week.monday === monday);
    };
    const [usual, dry, wet] = [weekWith(9, 3), weekWith(0, 7), weekWith(3, 7)];
    expect(usual?.rainMm).toBeNull();
    expect(dry?.rainMm).toBe(0);
    expect(wet?.rainMm).toBe(21);
    const needOf = (week: typeof dry) => must(week?.needs[0]).mm ?? 0;
    expect(needOf(dry) - needOf(wet)).toBeCloseTo(21);
    expect(weekWith(9, 7)).toBeUndefined();
  });

  describe("of a week whose days are known", () => {
    const monday = isoDay("2027-06-21");
    const weekWith = (rain: readonly number[], warmerK = 0, given: Given = {}) => {
      const { air } = beets().climate;
      const observed = new Map(
        Array.from({ length: 9 }, (_, i) => {
          const day = plus(monday, i - 2);
          const { lowC, highC } = air(day);
          return [day, { lowC: lowC + warmerK, highC: highC + warmerK, rainMm: rain[i] ?? 0 }];
        }),
      );
      return weeksOf(beets({ observed, ...given })).find((week) => week.monday === monday);
    };

    test("is more in heat and less in cold, by the mean of its days and not by one of them", () => {
      const mm = (warmerK: number) => must(must(weekWith([], warmerK)).needs[0]).mm ?? 0;
      expect(mm(6)).toBeGreaterThan(mm(0) * 1.05);
      expect(mm(-3)).toBeLessThan(mm(0) * 0.98);
    });

    test("is due on the day on which what fell is used up", () => {
      expect(weekWith([])?.due).toBe(monday);
      const wet = weekWith([0, 4, 8]);
      expect(wet?.due).toBeGreaterThan(monday);
      expect(wet?.due).toBeLessThan(plus(monday, 7));
      expect(weekWith([0, 0, 0, 0, 0, 0, 12])?.due).toBe(monday);
    });

    test("falls away where the rain is enough, though nothing is known of the usual air", () => {
      const site = { ...beets().plan.site, latitude: null };
      expect(weekWith([0, 0, 20], 0, { plan: { site } })).toBeDefined();
      expect(weekWith([0, 0, 26], 0, { plan: { site } })).toBeUndefined();
    });
  });

  test("is not known without latitude, and told in warm weeks alone", () => {
    const site = { ...beets().plan.site, latitude: null };
    const weeks = weeksOf(beets({ plan: { site }, acts: { ...ACTS, up: "2027-04-12" } }));
    expect(weeks.flatMap(({ needs }) => needs).every(({ mm }) => mm === null)).toBe(true);
    const { climate } = beets();
    const middle = (monday: Day) => climate.airC(plus(monday, 3));
    expect(weeks.length).toBeGreaterThan(5);
    expect(weeks.every(({ monday }) => middle(monday) >= 12)).toBe(true);
    const before = plus(must(weeks[0]).monday, -7);
    expect(middle(before)).toBeLessThan(12);
  });

  test("is nothing in frozen weeks, whatever stands there", () => {
    const garlic = growingOf(DRIP, "garlic", { acts: { start: "2026-10-14" } });
    const [first] = weeksOf(garlic);
    expect(isoOf(must(first).monday) >= "2027-04-01").toBe(true);
  });
});
