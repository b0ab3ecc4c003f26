import { describe, expect, test } from "vitest";
import { dueAt, type GardenPlace, stationCalled } from "./garden-at.ts";
import { missesOf } from "./misses.ts";
import { missed, yamlOf } from "./read.ts";

type Row = {
  readonly crop: string;
  readonly region: "north" | "central" | "south";
  readonly plant_from: string;
  readonly plant_to: string;
  readonly plant_from_2?: string;
  readonly plant_to_2?: string;
};

const FILE = "florida-planting-dates.yaml";
const { rows: ROWS } = yamlOf<{ readonly rows: readonly Row[] }>(FILE);
const celsius = (fahrenheit: readonly number[]) =>
  fahrenheit.map((each) => Math.round((each - 32) / 0.18) / 10);

/** The regions at Gainesville and Orlando (NOAA normals, from memory, unchecked; whole degrees) and Miami. */
const PLACES: Readonly<Record<Row["region"], GardenPlace>> = {
  north: {
    latitude: 29.7,
    low: celsius([42, 45, 50, 55, 63, 70, 72, 72, 69, 60, 51, 44]),
    high: celsius([66, 69, 75, 80, 87, 90, 91, 91, 87, 81, 74, 68]),
    last: "about 1 Mar",
    first: "about 30 Nov",
  },
  central: {
    latitude: 28.4,
    low: celsius([49, 52, 56, 60, 66, 72, 74, 74, 73, 66, 59, 52]),
    high: celsius([71, 74, 78, 83, 88, 91, 92, 92, 90, 85, 78, 73]),
    last: "none",
    first: "none",
  },
  south: stationCalled("Miami"),
};

/** The rows' crops as a plan of ours has them, without a day. */
const CROPS: Readonly<Record<string, string>> = {
  arugula: "arugula: 1 row",
  "bean, bush": "bush beans: 1 row",
  "bean, pole": "pole beans: 1 row",
  beet: "beet: 1 row",
  broccoli: "broccoli: 4 plants",
  cabbage: "cabbage: 4 plants",
  cantaloupe: "melon: 2 plants",
  carrot: "carrot: 1 row",
  celery: "celery: 4 plants",
  "chinese cabbage": "chinese cabbage: 1 row",
  collards: "collards: 4 plants",
  cucumber: "cucumber: 2 plants",
  eggplant: "eggplant: 2 plants",
  "endive/escarole": "endive: 1 row",
  kohlrabi: "kohlrabi: 1 row",
  lettuce: "lettuce: 1 row",
  mustard: "mustard: 1 row",
  "onion, bulbing": "onion: 20 plants, bought",
  "onion, bunching": "scallion: 1 row",
  "pea, english": "pea: 1 row",
  potato: "potato: 4 tubers",
  radish: "radish: 1 row",
  "sweet potato": "sweet potato: 6 slips",
};

const TOLERANCE_DAYS = 15;
const YEAR = 365;

/** The day of the year of `09-01` or `2027-09-01`. */
const dayIn = (text: string): number =>
  Math.round((Date.parse(`2027-${text.slice(-5)}`) - Date.parse("2027-01-01")) / 86_400_000);

/** Whether a day lies between two, round New Year where they do, or no farther than the tolerance before or after. */
function isInside(day: string, from: string, to: string): boolean {
  const after = (dayIn(day) - dayIn(from) + TOLERANCE_DAYS + YEAR) % YEAR;
  const long = (dayIn(to) - dayIn(from) + YEAR) % YEAR;
  return after <= long + 2 * TOLERANCE_DAYS;
}

describe("Florida's planting dates, a winter that cool crops like", () => {
  test("are used row by row", () => {
    expect([...new Set(ROWS.map(({ crop }) => crop))].sort()).toEqual(Object.keys(CROPS).sort());
    expect(ROWS).toHaveLength(43);
  });

  test("hold the day a crop is given here when the plan gives none, within 15 days, but for the misses told", () => {
    const held = ROWS.map(({ crop, region, ...row }) => {
      const days = dueAt(PLACES[region], [CROPS[crop] ?? ""]);
      const id = Object.keys(days).find((each) =>
        /\/(?:sow-outdoors|set-out|plant)\/1$/.test(each),
      );
      const day = days[id ?? ""] ?? "";
      const holds =
        day !== "" &&
        (isInside(day, row.plant_from, row.plant_to) ||
          (row.plant_from_2 !== undefined &&
            isInside(day, row.plant_from_2, row.plant_to_2 ?? "")));
      return { name: `${crop}, ${region}`, holds, day };
    });
    expect(missed(held.map(({ name, holds }) => ({ name, holds })))).toEqual(missesOf(FILE));
  });
});
