import { describe, expect, test } from "vitest";
import { buildSchedule, horizonAt, type Schedule } from "../../src/app/build.ts";
import { type Day, isoOf, plus, startOf } from "../../src/base/index.ts";
import { climateFrom } from "../../src/engine/climate/climate.ts";
import type { PublishedState } from "../../src/engine/schedule/scheduled-task.ts";
import { seasonFor } from "../../src/engine/year.ts";
import type { WeatherDay } from "../../src/garden/model/weather.ts";
import { gardenOf, isoDay, planOf, QUARRY, tellOf } from "../gardens.ts";
import { once } from "../once.ts";

const TEXT = QUARRY.replace(/people:\n(?: {2}.*\n)+/, "").replace(
  "      - tomato: 6 plants, from seed indoors\n",
  `      - tomato: red, 6 plants, from seed indoors
      - tomato: gold, 4 plants, from seed indoors
      - basil: 6 plants, from seed indoors
`,
);

/** A day's weather: mild, unless it is said to be something else. */
type Said = Readonly<Record<string, Partial<WeatherDay>>>;

const curve = once(() => {
  const told = tellOf(TEXT, { on: "2027-04-01" });
  return climateFrom(seasonFor(told.year, planOf(TEXT)).climate);
});

const mildOn = (day: Day): WeatherDay => {
  const { lowC, highC } = curve().air(day);
  return { day, lowC: lowC + 6, highC: highC + 6, rainMm: null, gustMps: 3 };
};

/** What was told on each day from the first of May to the end of June; `said` as of a day is what was forecast then. */
function live(said: (asOf: Day) => Said, text = TEXT): readonly (readonly [Day, Schedule])[] {
  const all: (readonly [Day, Schedule])[] = [];
  let published: PublishedState = {};
  for (let asOf = isoDay("2027-05-01"); asOf < isoDay("2027-06-25"); asOf = plus(asOf, 1)) {
    const days = Array.from({ length: 90 }, (_, i) => {
      const day = plus(asOf, i - 80);
      return { ...mildOn(day), ...said(asOf)[isoOf(day)] };
    });
    const weather = { source: "Open-Meteo", asOf, days, saidColder: [] } as const;
    const garden = { ...gardenOf(text), weather };
    const built = buildSchedule(
      garden,
      horizonAt(garden, startOf(asOf, "America/Denver")),
      published,
    );
    all.push([asOf, built]);
    published = built.publishedState;
  }
  return all;
}

/** The rungs of a planting that stood for a day on that very day, by number and day. */
const livedBy = (all: ReturnType<typeof live>, planting: string) =>
  all.flatMap(([day, { scheduled }]) =>
    scheduled.flatMap((each) => {
      const number = /harden-off\/out-(\d+)$/.exec(each.task.id)?.[1];
      const mine = each.task.subject.key === `2027/${planting}` && each.day === day;
      return mine && number !== undefined ? [{ number: Number(number), day, each }] : [];
    }),
  );

const setOutOf = (all: ReturnType<typeof live>, planting: string) =>
  all.at(-1)?.[1].scheduled.find(({ task }) => task.id === `2027/${planting}/set-out/1`);

const inOrder = (lived: ReturnType<typeof livedBy>) =>
  expect(lived.map(({ number }) => number)).toEqual(lived.map((_, i) => i + 1));

const mild = once(() => live(() => ({})));
const middle = () => livedBy(mild(), "tomato-red")[4]?.day ?? isoDay("2027-05-20");

describe("plants that harden off in a season that is known", () => {
  test("go out a rung a day in mild weather, and are set out after the last", () => {
    const lived = livedBy(mild(), "tomato-red");
    expect(lived.length).toBeGreaterThan(6);
    inOrder(lived);
    expect(setOutOf(mild(), "tomato-red")?.day).toBeGreaterThan(lived.at(-1)?.day ?? 0);
  });

  test("stay in through a cold snap, all that share the ladder, and go on after it from where they stood", () => {
    const [from, to] = [middle(), plus(middle(), 1)];
    const cold = { lowC: 1, highC: 9 };
    const all = live(() => ({ [isoOf(from)]: cold, [isoOf(to)]: cold }));
    const days = ["tomato-red", "tomato-gold", "basil"].map((name) => livedBy(all, name));
    for (const lived of days) {
      inOrder(lived);
      expect(lived.map(({ day }) => day)).not.toContain(from);
      expect(lived.map(({ day }) => day)).not.toContain(to);
    }
    const [red, gold] = days.map((lived) => lived.slice(0, 7).map(({ day }) => isoOf(day)));
    expect(red).toEqual(gold);
    const held = days[0]?.find(({ day }) => day > to)?.each.task.say;
    expect(JSON.stringify(held)).toContain("the forecast is too cold, and they stay in.");
    const out = setOutOf(all, "tomato-red");
    expect(out?.day).toBeGreaterThan(days[0]?.at(-1)?.day ?? 0);
    expect(out?.day).toBeGreaterThanOrEqual(setOutOf(mild(), "tomato-red")?.day ?? 0);
  });

  test("stay in on a day of gales", () => {
    const day = middle();
    const all = live(() => ({ [isoOf(day)]: { gustMps: 19 } }));
    const lived = livedBy(all, "tomato-red");
    inOrder(lived);
    expect(lived.some((each) => each.day === day)).toBe(false);
  });

  test("go out after all where the forecast turns", () => {
    const day = middle();
    const cold = { [isoOf(day)]: { lowC: 1, highC: 9 } };
    const all = live((asOf) => (asOf < day ? cold : {}));
    const lived = livedBy(all, "tomato-red");
    inOrder(lived);
    expect(lived.some((each) => each.day === day)).toBe(true);
    // Once put off a day, setting out stays there: it is fine till then.
    const late =
      (setOutOf(all, "tomato-red")?.day ?? 0) - (setOutOf(mild(), "tomato-red")?.day ?? 0);
    expect([0, 1]).toContain(late);
  });

  test("wait for the last day that does no harm and no longer, and are planted under hoops then", () => {
    const all = live((asOf) => {
      const days = Array.from({ length: 60 }, (_, i) => isoOf(plus(asOf, i - 30)));
      const spring = days.filter((day) => day >= "2027-05-18");
      return Object.fromEntries(spring.map((day) => [day, { lowC: 1, highC: 14 }]));
    });
    for (const [day, { scheduled }] of all) {
      const out = scheduled.find(({ task }) => task.id === "2027/tomato-red/set-out/1");
      if (out?.day !== day) continue;
      expect(day).toBeLessThanOrEqual(out.window.latest);
      expect(JSON.stringify(out.task.say)).toContain("under hoops");
      return;
    }
    expect.fail("they were never set out");
  });

  test("pass over the days on which nobody is at home", () => {
    const day = middle();
    const away = `away:\n  - everybody, ${isoOf(day)} to ${isoOf(plus(day, 1))}\n`;
    const all = live(() => ({}), `${TEXT}people:\n  Oda: { home: every day }\n${away}`);
    const lived = livedBy(all, "tomato-red");
    inOrder(lived);
    for (const each of [day, plus(day, 1)])
      expect(lived.map((rung) => rung.day)).not.toContain(each);
  });
});
