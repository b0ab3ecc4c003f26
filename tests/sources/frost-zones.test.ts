import { describe, expect, test } from "vitest";
import type { Day } from "../../src/base/days/day.ts";
import { cropOf } from "../../src/crops/crops.ts";
import { closes, on, opens, type Place, placeWith } from "./opening.ts";
import { must } from "./ours.ts";
import { csvOf, yamlOf } from "./read.ts";

/** Days in order do not go back; the empty ones are passed over. */
const isRising = (days: readonly (Day | null)[]) => {
  const known = days.filter((day) => day !== null);
  return known.every((day, i) => i === 0 || day >= (known[i - 1] ?? day));
};

const MONTHS = "JanFebMarAprMayJunJulAugSepOctNovDec";
/** The first day of `Feb 15-Mar 1`. */
function firstOf(text: string): Day {
  const [month = "", date = ""] = (text.split("-")[0] ?? "").split(" ");
  const number = MONTHS.indexOf(month) / 3 + 1;
  return on(`${number}-${date}`);
}

/** Places from the mildest to the coldest, as the frost zones run. */
const PLACES: readonly Place[] = [
  "02-10",
  "03-05",
  "03-25",
  "04-10",
  "04-25",
  "05-08",
  "05-20",
].map((last) => ({ ...placeWith(on(last)), last: on(last) }));

type Zones = {
  readonly spring_earliest: Readonly<Record<string, readonly (string | null)[]>>;
  readonly fall_latest: Readonly<Record<string, readonly (string | null)[]>>;
};
const ZONES = yamlOf<Zones>("usda-1918-zones.yaml");

const NAMES: Readonly<Record<string, string>> = {
  bean_snap: "bean",
  collard: "collards",
  corn_sweet: "corn",
  brussels_sprouts: "brussels-sprouts",
  squash_bush: "summer-squash",
  potato_irish: "potato",
  potato_sweet: "sweet-potato",
  lettuce_leaf: "lettuce",
  lettuce_head: "head-lettuce",
  muskmelon: "melon",
  onion_plants: "onion",
  pea_garden: "pea",
  squash_summer: "summer-squash",
  sweetpotato: "sweet-potato",
};
/** Rows that are none of our crops, or that our facts do not begin so. */
const NOT_OURS = ["bean_lima", "bean_pole_lima", "onion_sets", "onion_seed", "salsify", "garlic"];
const mine = (rows: readonly string[]) =>
  rows.filter((row) => !NOT_OURS.includes(row)).map((row) => ({ row, key: NAMES[row] ?? row }));

describe("the zones of 1918", () => {
  test("are places of ours from the mildest to the coldest", () => {
    expect(isRising(PLACES.map(({ last }) => last))).toBe(true);
    expect(isRising([...PLACES].reverse().map(({ first }) => first))).toBe(true);
  });

  test.each(mine(Object.keys(ZONES.spring_earliest)))(
    "open later the colder for $row, and so do we",
    ({ row, key }) => {
      expect(must(cropOf(key)).key).toBe(key);
      const theirs = must(ZONES.spring_earliest[row]).map((text) => text && firstOf(text));
      expect(isRising(theirs.map((day) => day || null))).toBe(true);
      expect(isRising(PLACES.map((place) => opens(place, key)))).toBe(true);
    },
  );

  const FALL = mine(Object.keys(ZONES.fall_latest)).filter(({ key }) =>
    must(cropOf(key)).starts.includes("seed outdoors"),
  );

  test.each(FALL)("close earlier the colder for $row, and so do we", ({ row, key }) => {
    const theirs = must(ZONES.fall_latest[row]).map((text) => text && firstOf(text));
    expect(isRising([...theirs].reverse().map((day) => day || null))).toBe(true);
    const ours = PLACES.slice(2).map((place) => closes(place, key)[0]);
    expect(isRising(ours.toReversed())).toBe(true);
  });

  test("name a dozen crops of ours in spring and in autumn", () => {
    expect(mine(Object.keys(ZONES.spring_earliest)).length).toBeGreaterThanOrEqual(12);
    expect(FALL.length).toBeGreaterThanOrEqual(12);
  });
});

type Cell = { readonly place: Place; readonly earliest: Day };
const SPRING = csvOf("usda-hgb202-spring-from-memory.csv");
const FALL_TABLE = csvOf("usda-hgb202-fall-from-memory.csv");

/** A crop's columns of the bulletin that have a date, mildest first. */
function columnsOf(row: string): readonly Cell[] {
  return SPRING.filter(({ crop, earliest }) => crop === row && earliest !== "").map(
    ({ avg_last_freeze = "", earliest = "" }) => {
      const last = on(avg_last_freeze);
      return { place: placeWith(last), earliest: on(earliest) };
    },
  );
}

const median = (all: readonly number[]) =>
  [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)] ?? 0;
const ROWS = mine([...new Set(SPRING.map(({ crop = "" }) => crop))]);

/** Days by which a crop lies before or after the last freeze that say nothing of its side. */
const NEAR_DAYS = 10;

describe("the bulletin of 1972, from memory, for its shape alone", () => {
  test("has some thirty crops of ours", () => {
    expect(ROWS.length).toBeGreaterThan(30);
    expect(ROWS.filter(({ key }) => !cropOf(key))).toEqual([]);
  });

  test.each(ROWS)("opens later from column to column for $row, as we do", ({ row, key }) => {
    const cells = columnsOf(row);
    expect(cells.length).toBeGreaterThan(8);
    expect(isRising(cells.map(({ place }) => opens(place, key)))).toBe(true);
  });

  test("has each crop on our side of the last freeze, but for celery, which cold makes bolt", () => {
    const crossed = ROWS.filter(({ row, key }) => {
      const cells = columnsOf(row);
      const theirs = median(cells.map(({ place, earliest }) => earliest - place.last));
      const ours = median(cells.map(({ place }) => opens(place, key) - place.last));
      return Math.abs(theirs) > NEAR_DAYS && theirs * ours < 0;
    });
    expect(crossed.map(({ row }) => row)).toEqual(["celery"]);
  });

  test("closes later from column to column in autumn, as we do", () => {
    const crops = [...new Set(FALL_TABLE.map(({ crop = "" }) => crop))];
    const sown = mine(crops).filter(({ key }) =>
      must(cropOf(key)).starts.includes("seed outdoors"),
    );
    const wrong = sown.filter(({ row, key }) => {
      const columns = FALL_TABLE.filter(({ crop, latest }) => crop === row && latest !== "")
        .map(({ avg_first_freeze = "" }) => on(avg_first_freeze))
        .filter((first) => first <= on("11-20") && first >= on("09-20"));
      const place = placeWith(on("04-15"));
      const ours = columns.map((first) => closes({ ...place, first }, key)[0]);
      return columns.length < 4 || !isRising(ours);
    });
    expect(crops.length).toBe(11);
    expect(sown.length).toBeGreaterThan(7);
    expect(wrong).toEqual([]);
  });
});
