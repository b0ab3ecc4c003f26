import { expect, test } from "vitest";
import type { Year } from "../../../src/app/build.ts";
import {
  loadPlannedSeasons,
  storePlannedSeasons,
} from "../../../src/host/store/planned-seasons.ts";
import { inStore } from "../in-store.ts";

test("what was planned for a year comes back for the readings that it was built from", async () => {
  await inStore("planned", (sql) => {
    const key = { year: 2027, of: "2027.1 code 1" };
    const seasons = [{ year: 2027 }] as unknown as Year["seasons"];
    expect(loadPlannedSeasons(sql, key)).toBeNull();
    storePlannedSeasons(sql, key, seasons);
    expect(loadPlannedSeasons(sql, key)).toEqual(seasons);
    expect(loadPlannedSeasons(sql, { ...key, of: "2027.2 code 1" })).toBeNull();
    expect(loadPlannedSeasons(sql, { ...key, year: 2026 })).toBeNull();
    sql.rows("UPDATE pieces SET bytes = substr(bytes, 1, 20)");
    expect(loadPlannedSeasons(sql, key)).toBeNull();
  });
});
