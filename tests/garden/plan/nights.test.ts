import { describe, expect, it } from "vitest";
import { isoOf } from "../../../src/base/days/day.ts";
import type { Problem } from "../../../src/base/problems/problem.ts";
import { NIGHT_KEYS, readNights, type ThreeDates } from "../../../src/garden/plan/nights.ts";
import { treeOf } from "../../../src/garden/plan/yaml.ts";

function nights(text: string, south = false) {
  const told: Problem[] = [];
  const { tree } = treeOf(text, "w.yaml");
  if (tree === null) throw new Error("the text is no YAML");
  const read = readNights(tree, { year: 2027, south, spreadDays: 15, problems: told });
  return { read, told: told.map(({ code, at }) => `${code}@${at.line}:${at.column}`) };
}

const iso = (three: ThreeDates | null) => three?.map((day) => day && isoOf(day)) ?? null;

describe("nights of a weather file", () => {
  it("are early, usual and late, in a list or between commas", () => {
    for (const dates of ["[20 Apr, 6 May, 21 May]", "20 Apr, 6 May, 21 May"])
      expect(iso(nights(`last frost: ${dates}`).read.last[32])).toEqual([
        "2027-04-20",
        "2027-05-06",
        "2027-05-21",
      ]);
  });

  it("may be dated for three temperatures on each side, and for none", () => {
    const keys = [...Object.values(NIGHT_KEYS.last), ...Object.values(NIGHT_KEYS.first)];
    const { read, told } = nights(keys.map((key) => `${key}: none`).join("\n"));
    expect(told).toEqual([]);
    for (const side of ["last", "first"] as const)
      for (const nightF of [36, 32, 28] as const) {
        expect(read[side][nightF]).toEqual([null, null, null]);
        expect(nights("in: °C").read[side][nightF]).toBeNull();
      }
  });

  it("spread one date as a plan does", () => {
    expect(iso(nights("first frost: about 2 Oct").read.first[32])).toEqual([
      "2027-09-17",
      "2027-10-02",
      "2027-10-17",
    ]);
  });

  it("are in the winter before midsummer and in the one after it", () => {
    expect(iso(nights("last frost: [20 Dec, 5 Jan, 3 Feb]").read.last[32])).toEqual([
      "2026-12-20",
      "2027-01-05",
      "2027-02-03",
    ]);
    expect(iso(nights("first frost: [1 Dec, 20 Dec, 20 Jan]").read.first[32])?.[2]).toBe(
      "2028-01-20",
    );
  });

  it("turn with the year in the south", () => {
    const { read } = nights(
      "last frost: [1 Sep, 5 Oct, 3 Nov]\nfirst frost: [20 Apr, 10 May, 2 Jun]",
      true,
    );
    expect(iso(read.last[32])?.[1]).toBe("2027-10-05");
    expect(iso(read.first[32])?.[1]).toBe("2028-05-10");
  });

  it("are none for some years, before spring's dates and after autumn's", () => {
    const { read, told } = nights(
      "last frost: [none, none, 3 Feb]\nfirst frost: [3 Dec, none, none]",
    );
    expect(iso(read.last[32])).toEqual([null, null, "2027-02-03"]);
    expect(iso(read.first[32])).toEqual(["2027-12-03", null, null]);
    expect(told).toEqual([]);
  });

  it("are reported at their place where they are not in order, too few, or no days", () => {
    expect(nights("last frost: [21 May, 6 May, 20 Apr]").told).toEqual(["weather-wrong@1:13"]);
    expect(nights("last frost: [3 Feb, none, none]").told).toEqual(["weather-wrong@1:13"]);
    expect(nights("a: 1\nfirst frost: [1 Oct, 2 Oct]").told).toEqual(["weather-wrong@2:14"]);
    expect(nights("first frost: []").told).toEqual(["weather-wrong@1:14"]);
    expect(nights("first frost: [1 Oct, 31 Sep, 2 Okt]").told).toEqual([
      "no-such-day@1:22",
      "day-unclear@1:30",
    ]);
  });
});
