import { describe, expect, test } from "vitest";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import { asksForYears, YEARS_FILE, yearsWanted } from "../../../src/garden/plan/place-years.ts";
import { readPlan } from "../../../src/garden/plan/read.ts";

const HERE = "latitude: 46.6\n  longitude: -111.5";
const planWith = (place: string, frosts = "") => `garden: Lane
year: 2027
measures: metric
place:
  clock: America/Denver
  ${place}
  weather: from Open-Meteo
${frosts}crops:
  - beet
`;
const FROSTS = "  last frost: 6 May\n  first frost: 2 Oct\n";
const yearsAt = (latitude: number, longitude: number) => `source: Open-Meteo
fetched: 2027-01-20
years: 1996 to 2025
latitude: ${latitude}
longitude: ${longitude}
in: °C
low: [-9, -8, -4, 0, 4, 8, 12, 11, 6, 0, -5, -9]
high: [1, 3, 8, 14, 19, 24, 29, 28, 22, 14, 6, 1]
last night at 36 °F: [2 May, 18 May, 2 Jun]
last frost: [20 Apr, 6 May, 21 May]
first frost: [17 Sep, 2 Oct, 17 Oct]
`;
const read = (text: string, years?: string) =>
  readPlan(
    text,
    { garden: "lane", file: "2027.yaml", ...(years && { beside: { [YEARS_FILE]: years } }) },
    PRACTICES,
  );

describe("weather: from Open-Meteo", () => {
  test("takes frost dates, means and their source from the years beside the plan", () => {
    const { plan } = read(planWith(HERE), yearsAt(46.6, -111.5));
    expect(plan?.site.normals?.lowC[0]).toBe(-9);
    const filled = plan?.filled.find(({ what }) => what === "last frost");
    expect(filled?.why).toContain("open-meteo.yaml, 1996 to 2025");
  });

  test("leaves the gardener's own dates and correction above what the years say", () => {
    const own = read(planWith(HERE, FROSTS), yearsAt(46.6, -111.5)).plan;
    expect(own?.site.lastFrost?.given).toBe(1);
    const usual = (text: string) => read(text, yearsAt(46.6, -111.5)).plan?.site.lastFrost?.usual;
    const colder = usual(planWith(`${HERE}\n  colder than the forecast by: 2 °C`)) ?? 0;
    expect(colder).toBeGreaterThan(usual(planWith(HERE)) ?? 0);
  });

  test("is a problem with what to do while they are not there, and a doubt beside frost dates", () => {
    const { plan, problems } = read(planWith(HERE));
    expect([plan, problems.map(({ code, at }) => [code, at.line])]).toEqual([
      null,
      [["years-missing", 8]],
    ]);
    expect(problems[0]?.shouldBe).toContain("site --at 46.6,-111.5");
    const beside = read(planWith(HERE, FROSTS));
    expect(beside.plan).not.toBeNull();
    expect(beside.problems.map(({ code }) => code)).toContain("years-awaited");
  });

  test("does not take those of another place, and needs to know which", () => {
    const far = read(planWith(HERE), yearsAt(46.8, -111.5));
    expect(far.problems[0]?.code).toBe("years-missing");
    const nowhere = read(planWith("latitude: 46.6"));
    expect(nowhere.problems[0]?.code).toBe("forecast-nowhere");
  });
});

describe("the years that a plan wants", () => {
  const at = { file: "2027.yaml" };

  test("are those of its place, until they lie beside it", () => {
    const place = { latitude: 46.6, longitude: -111.5, clock: "America/Denver" };
    expect(yearsWanted(planWith(HERE), at)).toEqual(place);
    const beside = { [YEARS_FILE]: yearsAt(46.62, -111.46) };
    expect(yearsWanted(planWith(HERE), { ...at, beside })).toBeNull();
    const moved = planWith("latitude: 46.8\n  longitude: -111.5");
    expect(yearsWanted(moved, { ...at, beside })).toMatchObject({ latitude: 46.8 });
  });

  test("are none where the plan asks for none, lies nowhere, or is no plan", () => {
    const none = planWith(HERE).replace("from Open-Meteo", "weather.yaml");
    for (const text of [
      none,
      planWith("latitude: 46.6"),
      planWith(`${HERE.replace("46", "146")}`),
      "{",
      "",
    ])
      expect(yearsWanted(text, at)).toBeNull();
  });

  test("at the date line are near from both sides", () => {
    const beside = { [YEARS_FILE]: yearsAt(-17, -180) };
    const fiji = planWith("latitude: -17\n  longitude: 179.99").replace(
      "America/Denver",
      "Pacific/Fiji",
    );
    expect(yearsWanted(fiji, { ...at, beside })).toBeNull();
  });

  test.each([
    ["from Open-Meteo", true],
    ["open-meteo", true],
    ["open-meteo.yaml", false],
    ["weather.yaml", false],
  ])("%s asks for them: %s", (text, asks) => {
    expect(asksForYears({ text })).toBe(asks);
  });
});
