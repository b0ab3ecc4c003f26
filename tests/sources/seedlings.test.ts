import { describe, expect, test } from "vitest";
import { celsius, fahrenheit } from "../../src/base/quantities/quantity.ts";
import { CROPS } from "../../src/crops/crops.ts";
import { COLUMNS_F, EMERGENCE_DAYS, type EmergenceDays } from "../../src/crops/emergence.ts";
import type { Crop } from "../../src/crops/facts.ts";
import { emergenceShare, SEEDLINGS_PERCENT, seedlingsRow } from "../../src/crops/seedlings.ts";
import { must } from "./ours.ts";
import { csvOf } from "./read.ts";

const ROWS = csvOf("percent-normal-seedlings.csv");

type Cell = {
  readonly crop: string;
  readonly soilF: number;
  readonly percent: string;
  /** What the days table has there; undefined where it has no such crop. */
  readonly days: EmergenceDays | undefined;
};

const CELLS: readonly Cell[] = ROWS.flatMap(({ crop = "", ...cells }) =>
  COLUMNS_F.map((soilF, i) => ({
    crop,
    soilF,
    percent: cells[`t${soilF}`] ?? "",
    days: EMERGENCE_DAYS[crop]?.[i],
  })),
);
const BLANK = CELLS.filter(({ percent }) => percent === "");

/** Good is 80 in a hundred and more, poor is under 50. */
const GOOD = 0.8;
const POOR = 0.5;

describe("the published percentages of normal seedlings", () => {
  test("are 18 crops at 9 soil temperatures, seven cells of them blank", () => {
    expect(ROWS).toHaveLength(18);
    expect(CELLS).toHaveLength(162);
    expect(BLANK.map(({ crop, soilF }) => `${crop} ${soilF}`)).toEqual([
      "cabbage 68",
      "cabbage 86",
      "cabbage 95",
      "cabbage 104",
      "cauliflower 68",
      "parsley 59",
      "radish 95",
    ]);
  });

  test("stand in our table cell by cell, a blank as untested", () => {
    const ours = Object.entries(SEEDLINGS_PERCENT).flatMap(([crop, percents]) =>
      percents.map((percent, i) => ({ crop, soilF: COLUMNS_F[i], percent })),
    );
    const theirs = CELLS.map(({ crop, soilF, percent }) => ({
      crop,
      soilF,
      percent: percent === "" ? null : Number(percent),
    }));
    expect(ours).toEqual(theirs);
  });

  test("come back exactly at their temperatures", () => {
    for (const { crop, soilF, percent } of CELLS)
      if (percent !== "")
        expect(emergenceShare(crop, celsius(soilF)), `${crop} ${soilF}`).toBe(
          Number(percent) / 100,
        );
  });

  test("are not known beyond the last that was tested, and are spanned inside", () => {
    for (const { crop, soilF } of BLANK) {
      const outside = crop === "cabbage" && soilF > 77;
      expect(emergenceShare(crop, celsius(soilF)) === null, `${crop} ${soilF}`).toBe(outside);
    }
  });
});

describe("the days table beside it", () => {
  const none = CELLS.filter(({ days }) => days === "none");

  test("says little or none comes up where no more than 2 in a hundred do, but for celery at 77 °F", () => {
    expect(none.length).toBeGreaterThan(15);
    const more = none.filter(({ percent }) => Number(percent) > 2);
    expect(more.map(({ crop, soilF, percent }) => [crop, soilF, percent])).toEqual([
      ["celery", 77, "65"],
    ]);
  });

  test("gives days at asparagus' 104 °F, where no seedling was normal, and nowhere else", () => {
    const odd = CELLS.filter(({ days, percent }) => typeof days === "number" && percent === "0");
    expect(odd.map(({ crop, soilF, days }) => [crop, soilF, days])).toEqual([
      ["asparagus", 104, 28],
    ]);
  });
});

type Sown = {
  readonly crop: Crop;
  readonly row: string;
  readonly minF: number;
  readonly maxF: number;
};

/** Soil that no garden is sown into above, where the facts give no bound [°F]: the table's column of 86. */
const HOTTEST_F = 86;

const SOWN: readonly Sown[] = CROPS.flatMap((crop) => {
  const row = seedlingsRow(crop);
  const { outdoors } = crop;
  if (row === null || outdoors === null) return [];
  const maxF = outdoors.soilMaxC ? fahrenheit(outdoors.soilMaxC.value) : HOTTEST_F;
  return [{ crop, row, minF: fahrenheit(outdoors.soilMinC.value), maxF }];
});

/** Shares from the coldest to the warmest soil a crop is sown into, degree by degree; untested ones left out. */
function sharesOf({ row, minF, maxF }: Sown): readonly number[] {
  const shares: number[] = [];
  for (let soilF = minF; soilF <= maxF + 1e-9; soilF++) {
    const share = emergenceShare(row, celsius(soilF));
    if (share !== null) shares.push(share);
  }
  return shares;
}

describe("the soil that our crops are sown into", () => {
  test("is held against the table for fifteen crops", () => {
    expect(SOWN.map(({ crop }) => crop.key).toSorted()).toEqual([
      "asparagus",
      "bean",
      "cabbage",
      "carrot",
      "cauliflower",
      "cucumber",
      "lima-bean",
      "melon",
      "okra",
      "onion",
      "parsley",
      "pole-bean",
      "radish",
      "spinach",
      "turnip",
    ]);
  });

  test("is nowhere poor: half and more come up from the coldest to the warmest", () => {
    const poor = SOWN.filter((sown) => Math.min(...sharesOf(sown)) < POOR);
    // Cauliflower's row is poor above 77 °F, where nobody sows it; melon's 38 in a hundred at 68 °F is why it is raised.
    expect(poor.map(({ crop }) => crop.key)).toEqual(["cauliflower", "melon"]);
  });

  test("is good somewhere for all but parsley and cauliflower, which never come up well", () => {
    const never = SOWN.filter((sown) => Math.max(...sharesOf(sown)) < GOOD);
    expect(never.map(({ crop }) => crop.key)).toEqual(["cauliflower", "parsley"]);
  });

  test("ends where spinach, beans and parsley begin to come up poorly", () => {
    for (const key of ["spinach", "bean", "parsley"]) {
      const { row, maxF } = must(SOWN.find(({ crop }) => crop.key === key));
      expect(must(emergenceShare(row, celsius(maxF + 1))), key).toBeLessThan(POOR);
    }
  });
});
