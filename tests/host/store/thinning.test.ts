import { describe, expect, test } from "vitest";
import { insertVersion, planVersions, savePlan } from "../../../src/host/store/plans.ts";
import {
  bytesInForce,
  MOST_GARDEN_BYTES,
  thinnedVersions,
  thinVersions,
  type VersionSize,
} from "../../../src/host/store/thinning.ts";
import { inStore } from "../in-store.ts";
import { firstOf, SAVED_AT } from "./made.ts";

const DAY = 86_400_000;
const NOON = Date.UTC(2027, 5, 1, 12);

/** Versions newest first, each so many days before noon of 1 June. */
const versionsOf = (daysBefore: readonly number[], bytes = 1000): readonly VersionSize[] =>
  daysBefore.map((days, at) => {
    return { version: daysBefore.length - at, savedAt: NOON - days * DAY, bytes };
  });
const keptOf = (versions: readonly VersionSize[]) => {
  const gone = thinnedVersions(versions);
  return versions.filter(({ version }) => !gone.includes(version));
};
const range = (count: number) => Array.from({ length: count }, (_, at) => at);

describe("of a year's versions", () => {
  test("the thirty newest are kept, however fast they came", () => {
    expect(thinnedVersions(versionsOf(range(30).map((at) => at / 1000)))).toEqual([]);
    const hundred = versionsOf(range(100).map((at) => at / 1000));
    expect(keptOf(hundred).map(({ version }) => version)).toEqual(range(30).map((at) => 100 - at));
  });

  test("those before are kept one a day for sixty days, then one every thirty", () => {
    const hourly = versionsOf(range(24 * 400).map((at) => at / 24));
    const kept = keptOf(hourly);
    expect(kept.length).toBeGreaterThan(30 + 55);
    expect(kept.length).toBeLessThan(30 + 62 + 14);
    const days = kept.map(({ savedAt }) => Math.floor((NOON - savedAt) / DAY));
    expect(days.filter((day) => day > 60).length).toBeLessThan(14);
    expect(Math.max(...days)).toBeGreaterThan(330);
  });

  test("no more than ten MiB is kept, but the five newest always", () => {
    const large = versionsOf(range(30), 500 * 1024);
    expect(keptOf(large)).toHaveLength(20);
    expect(keptOf(versionsOf(range(30), 5 * 1024 * 1024))).toHaveLength(5);
  });

  test("to thin again lets go of nothing more", () => {
    const kept = keptOf(versionsOf(range(24 * 200).map((at) => at / 24)));
    expect(thinnedVersions(kept)).toEqual([]);
  });
});

test("a save lets go of what is too old, and numbers go on rising", async () => {
  await inStore("thin", (sql) => {
    const first = firstOf("thin");
    savePlan(sql, first);
    for (let version = 2; version <= 60; version += 1)
      insertVersion(sql, { ...first, plan: null, version, savedAt: SAVED_AT + version });
    expect(savePlan(sql, { ...first, first: false, base: 60, savedAt: SAVED_AT + 61 })).toBe(61);
    const versions = planVersions(sql, first.year).map(({ version }) => version);
    expect(versions).toEqual(range(30).map((at) => 61 - at));
  });
});

test("a garden keeps no more than it may have, the oldest versions of any year go first, none in force goes", async () => {
  await inStore("large", (sql) => {
    const { base: _, first: __, origin: ___, garden: ____, ...rest } = firstOf("large");
    const text = "x".repeat(250 * 1024);
    const each = { ...rest, text };
    for (let at = 0; at < 3 * 35; at += 1) {
      const [year, version] = [2025 + (at % 3), 1 + Math.floor(at / 3)];
      insertVersion(sql, { ...each, year, version, savedAt: SAVED_AT + at * 40 * DAY });
    }
    for (const year of [2025, 2026, 2027]) thinVersions(sql, year);
    const kept = [2025, 2026, 2027].map((year) => planVersions(sql, year));
    const all = kept.flat();
    expect(all.length * text.length).toBeLessThanOrEqual(MOST_GARDEN_BYTES);
    expect(all.length * text.length).toBeGreaterThan(MOST_GARDEN_BYTES - 4 * text.length);
    for (const versions of kept) expect(versions[0]?.version).toBe(35);
    const oldest = Math.min(...all.map(({ savedAt }) => savedAt));
    expect(all.length).toBe(Math.round((SAVED_AT + 104 * 40 * DAY - oldest) / (40 * DAY)) + 1);
    expect(bytesInForce(sql, 2027)).toBe(2 * (text.length + 2));
  });
});
