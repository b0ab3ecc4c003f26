import { describe, expect, it } from "vitest";
import {
  COLUMNS_F,
  EMERGENCE_DAYS,
  EMERGENCE_ROWS,
  EMERGENCE_SOURCE,
  type EmergenceDays,
  REMEMBERED_DAYS,
} from "../../src/crops/emergence.ts";
import { saySource } from "../../src/crops/figures.ts";
import { SEEDLINGS_PERCENT } from "../../src/crops/seedlings.ts";

describe("the days to emergence", () => {
  it("have a column for each nine degrees from 32 to 104 °F in every row", () => {
    expect(COLUMNS_F).toEqual([32, 41, 50, 59, 68, 77, 86, 95, 104]);
    for (const [row, days] of Object.entries(EMERGENCE_ROWS))
      expect(days.length, row).toBe(COLUMNS_F.length);
  });

  it("fall with warmth to a shortest time and never fall again", () => {
    for (const [row, days] of Object.entries(EMERGENCE_ROWS)) {
      const known = days.filter((value: EmergenceDays) => typeof value === "number");
      const least = known.lastIndexOf(Math.min(...known));
      known.slice(1, least + 1).forEach((value, n) => {
        expect(value, row).toBeLessThanOrEqual((known[n] ?? 0) + 1);
      });
    }
  });

  it("are the published ones at 59 and 68 °F", () => {
    const at = (row: string) => EMERGENCE_DAYS[row]?.slice(3, 5);
    expect([at("beet"), at("lettuce"), at("parsley"), at("tomato"), at("radish")]).toEqual([
      [10, 6],
      [4, 3],
      [17, 14],
      [14, 8],
      [6, 4],
    ]);
  });

  it("that are remembered are where seedlings of the same experiments are, and none where they are not", () => {
    expect(Object.keys(REMEMBERED_DAYS)).toHaveLength(6);
    for (const [row, days] of Object.entries(REMEMBERED_DAYS)) {
      expect(EMERGENCE_DAYS[row]).toBeUndefined();
      days.forEach((value, i) => {
        const percent = SEEDLINGS_PERCENT[row]?.[i] ?? null;
        expect(typeof value === "number", `${row} at ${COLUMNS_F[i]}`).toBe((percent ?? 0) > 20);
      });
    }
  });

  it("are of Harrington and Minges", () => {
    expect(saySource(EMERGENCE_SOURCE)).toContain("Harrington and Minges");
  });
});
