import { describe, expect, test } from "vitest";
import { dueAt, type GardenPlace, monthOf, monthsApart, stationCalled } from "./garden-at.ts";
import { missesOf } from "./misses.ts";
import { ours } from "./ours.ts";
import { missed, yamlOf } from "./read.ts";

type Row = {
  readonly crop: string;
  readonly where: string;
  readonly sow?: readonly number[];
  readonly harvest?: readonly number[];
  readonly harvest_detail?: string;
  readonly confirmed?: boolean;
};
type Table = {
  readonly sowing_and_harvest: readonly Row[];
  readonly hardiness: readonly {
    readonly crop: string;
    readonly usda_zone_limit?: string;
    readonly confirmed?: boolean;
  }[];
};

const FILE = "overwintering.yaml";
const TABLE = yamlOf<Table>(FILE);
const ROWS = TABLE.sowing_and_harvest.filter(({ confirmed }) => confirmed);

/** The places of the rows as stations of their climate. */
const PLACES: Readonly<Record<string, GardenPlace>> = {
  "western Washington (maritime)": stationCalled("Quillayute"),
  "western Washington": stationCalled("Quillayute"),
  "western Oregon": stationCalled("Eugene"),
  Oregon: stationCalled("Eugene"),
  "South Carolina": stationCalled("Atlanta"),
};

/** Each row's planting, sown in the row's time where it names one. */
const PLANTINGS: Readonly<Record<string, string>> = {
  "broad_bean in western Washington (maritime)": "broad bean: 2 rows, sow 10 Nov",
  "garlic in western Oregon": "garlic: 20 cloves",
  "garlic in Oregon": "garlic: 20 cloves",
  "onion_sets in South Carolina": "onion: 40 sets, plant 10 Oct",
  "shallot in South Carolina": "shallot: 20 sets, plant 10 Oct",
  "garlic in South Carolina": "garlic: 20 cloves",
  "chard in western Washington": "chard: 1 row, sow 25 Aug",
};

/** Months of a word for a time of year. */
const IN_WORDS: Readonly<Record<string, readonly number[]>> = {
  "late spring": [5, 6],
  "earlier next year than a spring planting": [3, 4, 5],
};

const nearest = (month: number, months: readonly number[]) =>
  Math.min(...months.map((each) => monthsApart(month, each)));

describe("overwintering as two publications have it", () => {
  test("is used row by row", () => {
    expect(ROWS.map(({ crop, where }) => `${crop} in ${where}`)).toEqual(Object.keys(PLANTINGS));
  });

  test("is sown and harvested within a month of the rows, but for the misses told", () => {
    const held = ROWS.flatMap((row) => {
      const name = `${row.crop} in ${row.where}`;
      const days = dueAt(PLACES[row.where] ?? stationCalled("Eugene"), [PLANTINGS[name] ?? ""]);
      const ids = Object.keys(days);
      const day = (pattern: RegExp) => monthOf(days[ids.find((id) => pattern.test(id)) ?? ""]);
      const start = day(/\/(?:sow-outdoors\/1|plant\/1|overwinter\/plant)$/);
      const picked = /^chard/.test(ids[0] ?? "") ? /harvest\/last$/ : /harvest\/1$/;
      const months = row.harvest?.length ? row.harvest : IN_WORDS[row.harvest_detail ?? ""];
      return [
        ...(row.sow ? [{ name: `${name}, sown`, holds: nearest(start, row.sow) <= 1 }] : []),
        ...(months
          ? [{ name: `${name}, harvested`, holds: nearest(day(picked), months) <= 1 }]
          : []),
      ];
    });
    expect(held.length).toBeGreaterThan(ROWS.length);
    expect(missed(held)).toEqual(missesOf(FILE).filter((name) => name.includes(" in ")));
  });

  test("has a limit of hardiness confirmed for broad beans alone", () => {
    const confirmed = TABLE.hardiness.filter((row) => row.confirmed);
    expect(confirmed.map(({ crop }) => crop)).toEqual(["broad_bean"]);
    const zone6bC = (-5 - 32) / 1.8;
    const held = [
      {
        name: "broad_bean limit",
        holds: Math.abs((ours("broad-bean").winter?.survivesC.value ?? 0) - zone6bC) <= 5 / 1.8,
      },
    ];
    expect(missed(held)).toEqual(missesOf(FILE).filter((name) => name.endsWith("limit")));
  });
});
