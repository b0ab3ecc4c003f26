import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { planOf } from "../gardens.ts";
import { knownBefore, observedIn, STATIONS } from "../hindcast/station.ts";
import { callsADay, weatherCosts } from "./costs.ts";
import { askedIn } from "./dates.ts";
import { warnedIn } from "./nights.ts";
import { knownOn } from "./weather.ts";

/* One of the eight station years; `npm run -s ahead` lives through all of them. */
const [SEATTLE] = STATIONS;
const TRUTH = observedIn(SEATTLE, 2014);

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

test("a made forecast is the true days until yesterday, ten more that are off, and the same every time", () => {
  const [asOf] = [...TRUTH.keys()].slice(100);
  if (asOf === undefined) throw new Error("no such day");
  const known = knownOn(TRUTH, asOf, "a");
  expect(knownOn(TRUTH, asOf, "a")).toEqual(known);
  const off = known.days.map(({ day, lowC }) => lowC - (TRUTH.get(day)?.lowC ?? Number.NaN));
  expect(off.slice(0, -10).every((each) => each === 0)).toBe(true);
  expect(off.slice(-10).every((each) => each !== 0)).toBe(true);
});

describe("knowing the season so far", () => {
  test("halves the error of a day a fortnight ahead, and leaves hardly any two days ahead", () => {
    const asked = askedIn(SEATTLE, 2014, [14, 2]);
    const of = (lead: number) => asked.filter((each) => each.lead === lead);
    expect(of(2).length).toBeGreaterThan(30);
    const errors = (lead: number) =>
      [
        mean(of(lead).map(({ byCurve }) => byCurve)),
        mean(of(lead).map(({ byWeather }) => byWeather)),
      ] as const;
    const [curve, fortnight] = errors(14);
    expect(fortnight).toBeLessThan(0.65 * curve);
    const [, twoDays] = errors(2);
    expect(twoDays).toBeLessThan(0.25 * curve);
  });
});

describe("nights ahead", () => {
  const twelve = readFileSync(new URL("../golden/twelve.yaml", import.meta.url), "utf8");

  test("that ask for work are warned of, most of them two days ahead", () => {
    const { lastFrost, firstFrost, normals } = knownBefore(SEATTLE, 2014);
    const text = twelve
      .replace("2027", "2014")
      .replace("America/Denver", SEATTLE.clock)
      .replace("46.6", String(SEATTLE.latitude))
      .replace(/last frost: .*/, `last frost: ${lastFrost}`)
      .replace(/first frost: .*/, `first frost: ${firstFrost}`);
    const plan = planOf(text);
    const warned = warnedIn(
      { ...plan, site: { ...plan.site, normals } },
      TRUTH,
      `${SEATTLE.name} 2014`,
    );
    expect(warned.nights).toBeGreaterThan(3);
    expect(warned.sameDay / warned.nights).toBeGreaterThan(0.9);
    expect(warned.twoAhead / warned.nights).toBeGreaterThan(0.7);
    expect(warned.inVain).toBeLessThan(warned.standing);
    expect(warned.standingLosing / warned.losing).toBeGreaterThan(0.7);
  });
});

test("an answer is a hundred kilobytes at the most, and what a garden keeps of a year's fewer still", () => {
  const { answerBytes, keptBytes } = weatherCosts();
  expect(answerBytes).toBeLessThan(100_000);
  expect(keptBytes).toBeLessThan(60_000);
  // Open-Meteo's free terms, 10,000 calls a day, from memory.
  expect(callsADay(2500)).toBeLessThanOrEqual(10_000);
});
