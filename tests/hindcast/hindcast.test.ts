import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { dayOrThrow, plus } from "../../src/base/days/day.ts";
import { climateOf } from "../../src/engine/climate/climate.ts";
import { once } from "../once.ts";
import { CROPS } from "./crops.ts";
import {
  type Case,
  casesOf,
  hindcast,
  hindcastPublished,
  PUBLISHED,
  planBefore,
  STAGES,
} from "./hindcast.ts";
import { isInside, type Measured, measured } from "./measured.ts";
import { knownBefore, STATIONS, YEARS } from "./station.ts";

/*
 * It tests the weather and not the plant model: growth is the same on both sides, on the normals of the other years and
 * on the year itself. Eight station years are few, and crops of one year share its weather: `npm run -s hindcast` shows
 * them one by one.
 */
const cases = once(() => hindcast());
const of = (...stages: readonly string[]) =>
  measured(cases().filter(({ stage }) => stages.includes(stage)));

describe("eight years that the plan knew nothing of", () => {
  test("are all held against it, every crop at every stage it has", () => {
    const years = STATIONS.length * YEARS.length;
    expect(CROPS.length).toBeGreaterThanOrEqual(12);
    const count = (of: string) => cases().filter(({ stage }) => stage === of).length / years;
    expect(count("first harvest")).toBe(CROPS.length);
    expect(count("sowing") + 2).toBe(CROPS.length);
    expect(count("up") + 3).toBe(CROPS.length);
    expect(count("setting out")).toBe(6);
  });

  test("fall between early and late about as often as said, four times in five", () => {
    const all = measured(cases());
    for (const inside of [
      all.inside,
      all.insideUnsettled,
      ...STAGES.map((stage) => of(stage).inside),
    ]) {
      expect(inside).toBeGreaterThan(0.65);
      expect(inside).toBeLessThan(0.95);
    }
  });

  test("are told to about a fortnight, what waits for soil too, and to three weeks for harvest", () => {
    for (const stage of ["sowing", "up", "setting out"])
      expect(of(stage).width, stage).toBeLessThanOrEqual(16);
    expect(of("setting out").widthUnsettled).toBeLessThanOrEqual(16);
    expect(of("first harvest").widthUnsettled).toBeLessThanOrEqual(24);
  });

  test("come nearer to the usual day than to a fixed number of days, by five days and more at each stage", () => {
    for (const stage of STAGES) {
      const { error, chartError } = of(stage);
      expect(chartError - error, stage).toBeGreaterThan(5);
    }
  });

  test("come neither sooner nor later than the smooth curve has it, over all and where it waits for soil", () => {
    expect(Math.abs(of(...STAGES).later)).toBeLessThan(1);
    expect(Math.abs(of("setting out").later)).toBeLessThan(2);
    expect(Math.abs(of("sowing").later)).toBeLessThan(2);
  });

  test("are inside two times in three where the weather decides when to set out", () => {
    expect(of("setting out").insideUnsettled).toBeGreaterThan(0.65);
  });

  test("are not settled by frost dates alone, but for most settings out", () => {
    const { settled, cases: all } = measured(cases());
    expect(settled).toBeGreaterThan(0);
    expect(settled / all).toBeLessThan(0.15);
  });
});

describe("told by frost dates alone, and with both temperatures", () => {
  test("the same years are inside two times in three, and three times in four", () => {
    for (const stage of STAGES) expect(insideOf(sound(stage), stage), stage).toBeGreaterThan(0.6);
    expect(measured(alone()).inside).toBeGreaterThan(0.65);
    expect(measured(both()).inside).toBeGreaterThan(0.75);
  });

  test("so are the published stations, the south's and the sea's too", () => {
    expect(PUBLISHED.length).toBeGreaterThan(20);
    for (const stage of STAGES) {
      expect(insideOf(published.alone(), stage), stage).toBeGreaterThan(0.65);
      expect(insideOf(published.both(), stage), stage).toBeGreaterThan(0.75);
    }
  });

  test("both numbers bring the usual day nearer, and nearer together what is told", () => {
    for (const [wide, narrow] of [
      [alone(), both()],
      [published.alone(), published.both()],
    ] as const) {
      expect(measured(narrow).error).toBeLessThan(measured(wide).error);
      expect(measured(narrow).width).toBeLessThan(measured(wide).width);
    }
  });
});

const [alone, both] = [once(() => hindcast("frost dates")), once(() => hindcast("two numbers"))];
/** Told by frost dates alone. New York's frosts end sooner than its springs are warm, as Boston's do, so its sowings are told early. */
const sound = (stage: string) =>
  stage === "sowing" ? alone().filter(({ station }) => station !== "New York") : alone();
const published = {
  alone: once(() => hindcastPublished("frost dates")),
  both: once(() => hindcastPublished("two numbers")),
};
const insideOf = (some: readonly Case[], stage: string) =>
  measured(some.filter((each) => each.stage === stage)).inside;

test("the README tells these very figures", () => {
  const readme = readFileSync("README.md", "utf8");
  const percent = (share: number) => `${Math.round(share * 100)} %`;
  const tenth = (days: number) => String(Math.round(days * 10) / 10);
  const rowOf = (name: string, { cases, inside, width, error, chartError }: Measured) =>
    `| ${name} | ${cases} | ${percent(inside)} | ${tenth(width)} | ${error.toFixed(1)} | ${chartError.toFixed(1)} |`;
  expect(readme).toContain(rowOf("all", measured(cases())));
  for (const stage of STAGES)
    expect(readme).toContain(
      rowOf(stage === "setting out" ? "setting out, all" : stage, of(stage)),
    );
  for (const [name, some] of [
    ["8 years, frost dates alone", alone()],
    ["8 years, with both temperatures", both()],
    ["8 years, with monthly means", cases()],
    ["stations, frost dates alone", published.alone()],
    ["stations, with both temperatures", published.both()],
  ] as const)
    expect(readme).toContain(toldRow(name, some));
  expect(readme).toContain(`the ${cases().filter((each) => !isInside(each)).length} cases outside`);
});

/** Days that soil of known weather has to be warm beyond the first. */
const DAYS_AFTER = 2;

/** How many came inside and how wide they are told, over all and by stage. */
function toldRow(name: string, some: readonly Case[]): string {
  const cell = (part: readonly Case[]) => {
    const { inside, width } = measured(part);
    return `${Math.round(inside * 100)} %, ${Math.round(width)}`;
  };
  const stages = STAGES.map((stage) => cell(some.filter((each) => each.stage === stage)));
  return `| ${[name, String(some.length), cell(some), ...stages].join(" | ")} |`;
}

test.each(STATIONS)(
  "a year that runs as the normals do comes on every usual day in $name, or once soil has been warm for some days running",
  (station) => {
    const year = 2013;
    const { air } = climateOf(planBefore(station, year, knownBefore(station, year)), []);
    const days = Array.from({ length: 365 }, (_, i) => plus(dayOrThrow(year, 1, 1), i));
    const observed = new Map(days.map((day) => [day, air(day)]));
    const inYear = casesOf(station, year, { observed });
    expect(inYear.length).toBeGreaterThan(CROPS.length);
    for (const { usual, came, crop, stage } of inYear) {
      const waits = stage === "sowing" || stage === "setting out";
      const later = (came ?? 0) - usual;
      expect(waits ? later >= 0 && later <= DAYS_AFTER : later === 0, `${crop} ${stage}`).toBe(
        true,
      );
    }
  },
);
