import { describe, expect, test } from "vitest";
import { yearEvents } from "../../src/views/year-events.ts";
import { isoDay, QUARRY, tellOf } from "../gardens.ts";

/** No weather is known. */
const NOTHING_AHEAD = { coldNights: [], hardDays: [], spells: [] };

describe("a year's events", () => {
  test("are every job, what absences ask for, and the season's own line", () => {
    const away = QUARRY.replace("beds:\n", "away:\n  - everybody, 1 Aug to 8 Aug\nbeds:\n");
    const kinds = new Set(
      yearEvents(tellOf(away, { on: "2027-01-01" }).year, NOTHING_AHEAD).map((e) => e.kind),
    );
    for (const kind of ["session", "task", "rung", "warning", "away", "season"] as const)
      expect(kinds, kind).toContain(kind);
  });

  test("begin with the horizon's first day", () => {
    const { year } = tellOf(QUARRY, { on: "2028-02-10" });
    const days = yearEvents(year, NOTHING_AHEAD).map(({ day }) => day);
    expect(Math.min(...days)).toBeGreaterThanOrEqual(isoDay("2027-08-01"));
    expect(days.length).toBeLessThan(
      yearEvents(tellOf(QUARRY, { on: "2027-01-01" }).year, NOTHING_AHEAD).length,
    );
  });
});
