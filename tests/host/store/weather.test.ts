import { expect, test } from "vitest";
import type { KnownWeather } from "../../../src/app/weather.ts";
import { gardenRecord } from "../../../src/host/store/gardens.ts";
import { savePlan } from "../../../src/host/store/plans.ts";
import { loadWeather, storeWeather, weatherRecord } from "../../../src/host/store/weather.ts";
import { isoDay } from "../../gardens.ts";
import { inStore } from "../in-store.ts";
import { firstOf } from "./made.ts";

const weather = (lowC: number): KnownWeather => ({
  ...{ source: "Open-Meteo", asOf: isoDay("2027-05-10"), saidColder: [] },
  days: [{ day: isoDay("2027-05-11"), lowC, highC: 9, rainMm: null, gustMps: null }],
});
const record = { cell: "a", fetchedAt: 5, nextAt: 9, fault: null };

test("what is known of the weather comes back, of its own cell alone", async () => {
  await inStore("weather", (sql) => {
    expect([weatherRecord(sql), loadWeather(sql, "a")]).toEqual([null, null]);
    storeWeather(sql, record, { weather: weather(-1), now: 5 });
    expect(weatherRecord(sql)).toEqual(record);
    expect(loadWeather(sql, "a")).toEqual(weather(-1));
    expect([loadWeather(sql, "b"), loadWeather(sql, null)]).toEqual([null, null]);
  });
});

test("a try that failed leaves what is known, unless the garden asks another cell", async () => {
  await inStore("failed", (sql) => {
    storeWeather(sql, record, { weather: weather(-1), now: 5 });
    storeWeather(sql, { ...record, fault: "late" }, { weather: null, now: 6 });
    expect(loadWeather(sql, "a")).toEqual(weather(-1));
    storeWeather(sql, { ...record, cell: "b" }, { weather: null, now: 7 });
    expect([loadWeather(sql, "a"), loadWeather(sql, "b")]).toEqual([null, null]);
  });
});

test("a build is owed where what is known is another, and only there", async () => {
  await inStore("revised", (sql) => {
    savePlan(sql, firstOf("g"));
    const first = gardenRecord(sql)?.revision ?? 0;
    const store = (lowC: number | null, now: number) => {
      storeWeather(sql, record, { weather: lowC === null ? null : weather(lowC), now });
      return (gardenRecord(sql)?.revision ?? 0) - first;
    };
    const later = Date.UTC(2090, 0, 1);
    expect(store(-1, later)).toBe(1);
    expect(store(-1, later + 1)).toBe(1);
    expect(store(null, later + 2)).toBe(1);
    expect(store(-2, later + 3)).toBe(2);
    expect(gardenRecord(sql)?.changedAt).toBe(later + 3);
  });
});
