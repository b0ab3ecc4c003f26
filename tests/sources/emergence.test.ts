import { describe, expect, test } from "vitest";
import { type Day, plus } from "../../src/base/days/day.ts";
import { celsius } from "../../src/base/quantities/quantity.ts";
import { COLUMNS_F, EMERGENCE_DAYS } from "../../src/crops/emergence.ts";
import { dailyShare, GIVE_UP_DAYS, upOn } from "../../src/engine/growth/emergence.ts";
import { isoDay } from "../gardens.ts";
import { missesOf } from "./misses.ts";
import { csvOf, spanOf, yamlOf } from "./read.ts";

const SOWN = isoDay("2027-05-01");
const ROWS = csvOf("emergence-days.csv");

type Cell = { readonly crop: string; readonly soilF: number; readonly days: string };

const CELLS: readonly Cell[] = ROWS.flatMap((row) =>
  COLUMNS_F.map((soilF) => ({ crop: row.crop ?? "", soilF, days: row[`t${soilF}`] ?? "" })),
);
const NUMBERS = CELLS.filter(({ days }) => /^\d+$/.test(days));
const NONE = CELLS.filter(({ days }) => days === "NG");
const UNTESTED = CELLS.filter(({ days }) => days === "-");

const upAt = ({ crop, soilF }: Cell): Day | null =>
  upOn(SOWN, () => dailyShare(crop, celsius(soilF)));

describe("the published days to emergence", () => {
  test("are 18 crops at 9 soil temperatures, every cell a number, NG or -", () => {
    expect(ROWS).toHaveLength(18);
    expect(CELLS).toHaveLength(162);
    expect(NUMBERS.length + NONE.length + UNTESTED.length).toBe(162);
  });

  test("stand in our table cell by cell", () => {
    const ours = Object.entries(EMERGENCE_DAYS).flatMap(([crop, days]) =>
      days.map((day, i) => ({ crop, soilF: COLUMNS_F[i], days: day })),
    );
    const theirs = CELLS.map(({ crop, soilF, days }) => {
      const told = days === "NG" ? "none" : days === "-" ? "untested" : Number(days);
      return { crop, soilF, days: told };
    });
    expect(ours).toEqual(theirs);
  });

  test("come back exactly in soil that stays the same", () => {
    const wrong = NUMBERS.filter((cell) => upAt(cell) !== plus(SOWN, Number(cell.days)));
    const named = wrong.map(({ crop, soilF, days }) => `${crop} at ${soilF} °F, ${days} days`);
    expect(named).toEqual(missesOf("emergence-days.csv"));
    expect(wrong.every(({ days }) => Number(days) > GIVE_UP_DAYS)).toBe(true);
  });

  test("come back exactly as a daily share, those too long to wait for too", () => {
    for (const { crop, soilF, days } of NUMBERS)
      expect(1 / dailyShare(crop, celsius(soilF))).toBeCloseTo(Number(days), 6);
  });

  test("give no date where nothing came up", () => {
    expect(NONE.filter((cell) => upAt(cell) !== null)).toEqual([]);
  });

  test("take no less time in colder soil that was not tested than in the coldest that was", () => {
    const colder = UNTESTED.filter(({ crop, soilF }) =>
      NUMBERS.some((cell) => cell.crop === crop && cell.soilF > soilF),
    );
    expect(colder.length).toBeGreaterThan(15);
    for (const { crop, soilF } of colder)
      expect(dailyShare(crop, celsius(soilF))).toBeLessThanOrEqual(
        dailyShare(crop, celsius(soilF + 9)),
      );
  });

  test("lie between their neighbours at every degree between two columns", () => {
    const wrong: Cell[] = [];
    for (const { crop, soilF, days } of NUMBERS) {
      const next = CELLS.find((cell) => cell.crop === crop && cell.soilF === soilF + 9);
      if (!next || !/^\d+$/.test(next.days)) continue;
      const ends = [Number(days), Number(next.days)];
      for (let more = 1; more < 9; more++) {
        const between = 1 / dailyShare(crop, celsius(soilF + more));
        const inside = between > Math.min(...ends) - 1e-9 && between < Math.max(...ends) + 1e-9;
        if (!inside) wrong.push({ crop, soilF: soilF + more, days: String(between) });
      }
    }
    expect(wrong).toEqual([]);
  });
});

describe("a bean in soil of 50 °F", () => {
  const mean = celsius(50);

  test("never comes up where that is the same day and night, by the table", () => {
    expect(CELLS.find(({ crop, soilF }) => crop === "bean_snap" && soilF === 50)?.days).toBe("NG");
    expect(upOn(SOWN, () => dailyShare("bean_snap", mean))).toBeNull();
  });

  test.each([
    [3, 84],
    [5, 50],
    [8, 36],
  ])("comes up where its depth swings by %d °C to either side, after %d days", (swingK, days) => {
    expect(upOn(SOWN, () => dailyShare("bean_snap", mean, swingK))).toBe(plus(SOWN, days));
  });

  test("takes longer than in soil that is 59 °F all day, though its noons are warmer", () => {
    const up = upOn(SOWN, () => dailyShare("bean_snap", mean, 8)) ?? SOWN;
    expect(mean + 8).toBeGreaterThan(celsius(59));
    expect(up - SOWN).toBeGreaterThan(16);
  });
});

describe("the days to germinate of another table", () => {
  type Ranges = {
    csu_gardennotes_720_table2: { columns: string[]; rows: Record<string, (string | number)[]> };
  };
  const { columns, rows } = yamlOf<Ranges>("germination-ranges.yaml").csu_gardennotes_720_table2;

  test.each([
    ["beet", "beet"],
    ["carrot", "beet"],
    ["lettuce_leaf", "lettuce"],
  ])("of %s overlap what the %s row gives from 50 to 77 °F", (name, row) => {
    const [least, most] = spanOf(rows[name]?.[columns.indexOf("days_to_germinate")] ?? "");
    const days = [50, 59, 68, 77].map((soilF) => 1 / dailyShare(row, celsius(soilF)));
    expect(Math.min(...days)).toBeLessThanOrEqual(most);
    expect(Math.max(...days)).toBeGreaterThanOrEqual(least);
  });
});
