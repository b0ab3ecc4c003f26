import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Day, isoOf, plus, weekdayOf } from "../../../src/base/days/day.ts";
import type { ObservedDay } from "../../../src/engine/climate/climate.ts";
import {
  ALL_DAY,
  hardeningLadder,
  holdSettingOut,
  ladderOf,
  NIGHTS,
  WHOLE_DAYS,
} from "../../../src/engine/practices/ladder.ts";
import { isoDay, QUARRY } from "../../gardens.ts";
import { growingOf } from "../growth/growing.ts";

const OUT = isoDay("2027-05-21");
const always = () => true;

/** `05-11 1 h`, `05-17 all day`, `05-19 night`. */
const rungs = (setOut: Day, days: number, around: (day: Day) => boolean = always) =>
  hardeningLadder(setOut, days, around).map(({ day, out }) => {
    const lasts = out === "night" ? "night" : out === ALL_DAY ? "all day" : `${out / 60} h`;
    return `${isoOf(day).slice(5)} ${lasts}`;
  });

describe("the ladder before setting out on 21 May", () => {
  test("is an hour, then an hour more each day, two whole days, then nights to setting-out day", () => {
    expect(rungs(OUT, 10)).toEqual([
      "05-11 1 h",
      "05-12 2 h",
      "05-13 3 h",
      "05-14 4 h",
      "05-15 5 h",
      "05-16 6 h",
      "05-17 all day",
      "05-18 all day",
      "05-19 night",
      "05-20 night",
    ]);
  });

  test("passes a day over on which nobody is about, and goes on from there", () => {
    const around = (day: Day) => day !== isoDay("2027-05-14");
    expect(rungs(OUT, 10, around).slice(0, 5)).toEqual([
      "05-10 1 h",
      "05-11 2 h",
      "05-12 3 h",
      "05-13 4 h",
      "05-15 5 h",
    ]);
  });

  test("of a week has three days of hours", () => {
    expect(rungs(OUT, 7)).toEqual([
      "05-14 1 h",
      "05-15 2 h",
      "05-16 3 h",
      "05-17 all day",
      "05-18 all day",
      "05-19 night",
      "05-20 night",
    ]);
  });

  test("of three weeks never asks for more hours than a day has", () => {
    const long = hardeningLadder(OUT, 21, always);
    expect(long).toHaveLength(21);
    expect(Math.max(...long.map(({ out }) => (out === "night" ? 0 : out)))).toBe(ALL_DAY);
  });

  test("has fewer rungs, and the last ones whole, where somebody is about on too few days", () => {
    const around = (day: Day) => weekdayOf(day) === 7;
    expect(rungs(OUT, 10, around)).toEqual([
      "04-25 all day",
      "05-02 all day",
      "05-09 night",
      "05-16 night",
    ]);
  });

  test("keeps its shape whoever is about: hours rise by one, then whole days, then nights", () => {
    const free = fc.array(fc.boolean(), { minLength: 40, maxLength: 40 });
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 14 }), free, (days, about) => {
        const steps = hardeningLadder(OUT, days, (day) => about[OUT - day] ?? true);
        if (steps.length < days) return true;
        const outs = steps.map(({ out }) => out);
        const hours = days - WHOLE_DAYS - NIGHTS;
        const expected = [
          ...Array.from({ length: hours }, (_, i) => (i + 1) * 60),
          ...Array<number>(WHOLE_DAYS).fill(ALL_DAY),
          ...Array<string>(NIGHTS).fill("night"),
        ];
        const inOrder = steps.every(({ day }, i) => day > (steps[i - 1]?.day ?? 0) && day < OUT);
        return inOrder && JSON.stringify(outs) === JSON.stringify(expected);
      }),
    );
  });
});

test("the last rung is always the day before setting out, where somebody is about then", () => {
  fc.assert(
    fc.property(fc.integer({ min: 4, max: 20 }), fc.integer({ min: 0, max: 300 }), (days, on) => {
      const setOut = plus(isoDay("2027-01-01"), on);
      return hardeningLadder(setOut, days, always).at(-1)?.day === plus(setOut, -1);
    }),
  );
});

const MILD: ObservedDay = { lowC: 12, highC: 24, gustMps: 4 };
const COLD: ObservedDay = { lowC: 1, highC: 9, gustMps: 4 };
const GALE: ObservedDay = { lowC: 12, highC: 24, gustMps: 18 };

/** What a season's weather is as of a day, mild but for these days, and what was told of rungs by then, by number. */
type SoFar = {
  readonly asOf: string;
  readonly weather?: Readonly<Record<string, ObservedDay>>;
  readonly told?: Readonly<Record<number, string>>;
  readonly around?: (day: Day) => boolean;
};

function tomatoes({ asOf, weather = {}, told = {}, around = always }: SoFar) {
  const today = isoDay(asOf);
  const days = Array.from({ length: 40 }, (_, i) => plus(today, i - 30));
  const observed = new Map(days.map((day) => [day, weather[isoOf(day)] ?? MILD]));
  const toldOn = (task: string) => {
    const day = told[Number(/out-(\d+)$/.exec(task)?.[1])];
    return day === undefined ? null : isoDay(day);
  };
  return growingOf(QUARRY, "tomato", {
    ...{ acts: { start: "2027-04-09" }, observed, around, soFar: { asOf: today, toldOn } },
  });
}

const TEN = { setOut: OUT, days: 10, floorC: 10, by: isoDay("2027-05-31") };
const daysOf = (soFar: SoFar, parts = TEN) =>
  ladderOf(tomatoes(soFar), parts).rungs.map(({ day }) => isoOf(day).slice(5));
const TOLD_FOUR = { 1: "2027-05-11", 2: "2027-05-12", 3: "2027-05-13", 4: "2027-05-14" };

describe("a ladder in a season that is known", () => {
  const asOf = "2027-05-15";

  test("is as planned in mild weather", () => {
    expect(daysOf({ asOf, told: TOLD_FOUR })).toEqual(
      hardeningLadder(OUT, 10, always).map(({ day }) => isoOf(day).slice(5)),
    );
  });

  test("holds a rung on a cold day that is known ahead: its hours come the day after, and no rung is gone back", () => {
    const { rungs, doneBy } = ladderOf(
      tomatoes({ asOf, told: TOLD_FOUR, weather: { "2027-05-16": COLD } }),
      TEN,
    );
    const days = rungs.map(({ day, out }) => [isoOf(day).slice(5), out]);
    expect(days.slice(3, 7)).toEqual([
      ["05-14", 240],
      ["05-15", 300],
      ["05-17", 360],
      ["05-18", ALL_DAY],
    ]);
    expect(rungs[5]?.held).toEqual([{ day: isoDay("2027-05-16"), why: "cold" }]);
    expect(doneBy).toBe(plus(OUT, 1));
  });

  test("holds a rung in a gale", () => {
    const { rungs } = ladderOf(
      tomatoes({ asOf, told: TOLD_FOUR, weather: { "2027-05-15": GALE } }),
      TEN,
    );
    expect(rungs[4]).toMatchObject({ day: isoDay("2027-05-16"), held: [{ why: "windy" }] });
  });

  test("holds a night that falls below what they bear", () => {
    const told = {
      ...TOLD_FOUR,
      5: "2027-05-15",
      6: "2027-05-16",
      7: "2027-05-17",
      8: "2027-05-18",
    };
    const cold = { "2027-05-20": { ...MILD, lowC: 2 } };
    expect(daysOf({ asOf: "2027-05-19", told, weather: cold }).slice(8)).toEqual([
      "05-20",
      "05-21",
    ]);
  });

  test("goes on as planned once the forecast has turned, and from where it stands", () => {
    const cold = daysOf({ asOf, told: TOLD_FOUR, weather: { "2027-05-16": COLD } });
    expect(cold[5]).toBe("05-17");
    const told = { ...TOLD_FOUR, 5: "2027-05-15", 6: "2027-05-17", 7: "2027-05-18" };
    expect(daysOf({ asOf: "2027-05-16", told })[5]).toBe("05-16");
    const wasCold = { asOf: "2027-05-17", told, weather: { "2027-05-16": MILD } };
    expect(daysOf(wasCold).slice(4, 7)).toEqual(["05-15", "05-17", "05-18"]);
  });

  test("does not wait for a day farther ahead than tomorrow", () => {
    expect(daysOf({ asOf, told: TOLD_FOUR, weather: { "2027-05-17": COLD } })[6]).toBe("05-17");
  });

  test("under way goes on day by day though setting out was put off", () => {
    const later = { ...TEN, setOut: plus(OUT, 7) };
    expect(daysOf({ asOf, told: TOLD_FOUR }, later).slice(3, 6)).toEqual([
      "05-14",
      "05-15",
      "05-16",
    ]);
  });

  test("that was not begun is not begun in days that are over, when setting out is brought forward", () => {
    const told = { 1: "2027-05-20", 2: "2027-05-21" };
    const { rungs, doneBy } = ladderOf(tomatoes({ asOf, told }), TEN);
    expect(rungs[0]?.day).toBe(isoDay(asOf));
    expect(doneBy).toBe(isoDay("2027-05-25"));
  });

  test("passes over days on which nobody is at home, held or not", () => {
    const around = (day: Day) => day !== isoDay("2027-05-17");
    const held = { asOf, told: TOLD_FOUR, around, weather: { "2027-05-16": COLD } };
    expect(daysOf(held).slice(4, 7)).toEqual(["05-15", "05-18", "05-19"]);
  });

  test("is not held where it would end after the last day that does no harm", () => {
    const cold = { asOf, told: TOLD_FOUR, weather: { "2027-05-16": COLD } };
    expect(daysOf(cold, { ...TEN, by: OUT })[5]).toBe("05-16");
  });

  test("never goes back to fewer hours, and has one rung a day, whatever was told and however the weather turns", () => {
    const kinds = fc.array(fc.constantFrom(MILD, MILD, COLD, GALE), {
      minLength: 30,
      maxLength: 30,
    });
    fc.assert(
      fc.property(kinds, fc.integer({ min: 5, max: 14 }), (weather, days) => {
        const told: Record<number, string> = {};
        const lived: number[] = [];
        for (let on = plus(OUT, -16); on < plus(OUT, 14); on = plus(on, 1)) {
          const around = weather.map((each, i) => [isoOf(plus(OUT, i - 16)), each] as const);
          const context = tomatoes({ asOf: isoOf(on), told, weather: Object.fromEntries(around) });
          const { rungs } = ladderOf(context, { ...TEN, days, by: plus(OUT, 14) });
          for (const { number, day } of rungs) told[number] = isoOf(day);
          const today = rungs.filter(({ day }) => day === on);
          expect(today.length).toBeLessThanOrEqual(1);
          lived.push(...today.map(({ number }) => number));
        }
        expect(lived).toEqual(lived.map((_, i) => i + 1));
      }),
      { numRuns: 30 },
    );
  });
});

test("plants are not set out into a cold night or a gale that is known ahead", () => {
  const at = (weather: Readonly<Record<string, ObservedDay>>, asOf = "2027-05-21") =>
    holdSettingOut(tomatoes({ asOf, weather }), OUT);
  expect(at({})).toBeNull();
  expect(at({ "2027-05-22": { ...MILD, lowC: 3 } })).toBe("cold");
  expect(at({ "2027-05-21": GALE })).toBe("windy");
  expect(at({ "2027-05-21": GALE }, "2027-05-15")).toBeNull();
});
