import { describe, expect, test } from "vitest";
import { buildYear, horizonAt } from "../../../src/app/build.ts";
import { plus, startOf } from "../../../src/base/index.ts";
import { climateFrom } from "../../../src/engine/climate/climate.ts";
import { seasonFor } from "../../../src/engine/year.ts";
import type { WeatherDay } from "../../../src/garden/model/weather.ts";
import type { PictureForm } from "../../../src/views/pictures/sketch.ts";
import { weatherPicture } from "../../../src/views/pictures/weather.ts";
import { gardenOf, isoDay, planOf, QUARRY, tellOf } from "../../gardens.ts";
import { labelsOf, read } from "./drawn.ts";
import { byId, textIn, under } from "./xml.ts";

const TODAY = isoDay("2027-05-20");
const PLAN = planOf(QUARRY);
const { air } = climateFrom(seasonFor(tellOf(QUARRY, { on: "2027-05-20" }).year, PLAN).climate);

/** The picture of a season so many kelvins warmer, with rain [mm] on every fifth day, forty days behind and nine ahead. */
function drawn(warmerK: number, form: PictureForm = "phone", rainMm: number | null = 10) {
  const days = Array.from({ length: 50 }, (_, i): WeatherDay => {
    const day = plus(TODAY, i - 40);
    const { lowC, highC } = air(day);
    const wet = rainMm === null ? null : i % 5 === 0 ? rainMm : 0;
    return { day, lowC: lowC + warmerK, highC: highC + warmerK, rainMm: wet, gustMps: null };
  });
  const weather = { source: "Open-Meteo", asOf: TODAY, days, saidColder: [] } as const;
  const garden = { ...gardenOf(QUARRY), weather };
  const year = buildYear(garden, horizonAt(garden, startOf(TODAY, "America/Denver")), {});
  return read(weatherPicture({ year, plan: PLAN, today: TODAY, form }));
}

const strokesIn = (d: string) =>
  [...d.matchAll(/M([\d.]+) ([\d.]+)V([\d.]+)/g)].map(([, x, low, high]) => ({
    x: Number(x),
    low: Number(low),
    high: Number(high),
  }));

describe("the season so far", () => {
  test("has a stroke for each known day, from its low up to its high, the days ahead apart", () => {
    const svg = drawn(0);
    const behind = strokesIn(byId(svg, "weather-behind").attributes.d ?? "");
    const ahead = strokesIn(byId(svg, "weather-ahead").attributes.d ?? "");
    expect([behind.length, ahead.length]).toEqual([40, 10]);
    for (const { low, high } of [...behind, ...ahead]) expect(low).toBeGreaterThan(high);
    expect(Math.max(...behind.map(({ x }) => x))).toBeLessThan(ahead[0]?.x ?? 0);
  });

  test("says how it was beside a usual one, and how much rain fell", () => {
    expect(textIn(byId(drawn(3), "weather-desc"))).toContain(
      "The days since 22 Apr were 5 °F warmer than usual. 2 in of rain fell.",
    );
    expect(textIn(byId(drawn(-3), "weather-desc"))).toContain("5 °F colder than usual");
    expect(textIn(byId(drawn(0.2), "weather-desc"))).toContain("were as warm as usual");
    expect(textIn(byId(drawn(0, "phone", null), "weather-desc"))).not.toContain("rain fell");
  });

  test("names the wettest day over its bars, and draws none where none fell", () => {
    const said = labelsOf(drawn(0)).map(({ text }) => text);
    expect(said.join("|")).toContain("rain, at most 0.4 in on 10 Apr");
    expect(() => byId(drawn(0, "phone", 0), "weather-rain")).toThrow();
  });

  test("fits a page as well as a phone: nothing is drawn outside", () => {
    for (const form of ["phone", "page"] as const) {
      const svg = drawn(1, form);
      const [, , width = 0, height = 0] = (svg.attributes.viewBox ?? "").split(" ").map(Number);
      for (const { x, low, high } of strokesIn(byId(svg, "weather-behind").attributes.d ?? "")) {
        expect(x).toBeGreaterThan(0);
        expect(x).toBeLessThan(width);
        expect(Math.min(low, high)).toBeGreaterThan(0);
        expect(Math.max(low, high)).toBeLessThan(height);
      }
      expect(under(svg, "text").length).toBeGreaterThan(5);
    }
  });

  test("of which nothing is known says so", () => {
    const { year } = tellOf(QUARRY, { on: "2027-05-20" });
    const svg = read(weatherPicture({ year, plan: PLAN, today: TODAY, form: "phone" }));
    expect(textIn(byId(svg, "weather-desc"))).toContain(
      "Nothing is known of this season's weather",
    );
    expect(() => byId(svg, "weather-behind")).toThrow();
  });
});
