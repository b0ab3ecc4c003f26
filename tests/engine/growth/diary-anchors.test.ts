import { describe, expect, test } from "vitest";
import { type Anchors, LAST_SOWING_NUMBER } from "../../../src/engine/growth/anchors.ts";
import { diaryAnchors, withLosses } from "../../../src/engine/growth/diary-anchors.ts";
import type { Observation, ObservedStage } from "../../../src/garden/diary/observation.ts";
import { isoDay, planOf, QUARRY } from "../../gardens.ts";

const PLANTINGS = planOf(QUARRY).plantings;

function seen(day: string, stage: ObservedStage, sowing: number | null = null): Observation {
  return { kind: "seen", day: isoDay(day), planting: "2027/lettuce", stage, sowing };
}

/** Anchors as `key day from`. */
const told = (...facts: readonly Observation[]) =>
  [...diaryAnchors(PLANTINGS, facts)].map(([key, { day, from }]) => [key, day, from]);

describe("what is known before anything is placed", () => {
  test("is nothing without a diary and with nothing in the ground", () => {
    expect(told()).toEqual([]);
  });

  test("is what stands in the ground since before, on the day the plan gives", () => {
    const plan = planOf(QUARRY.replace("plant this October", "in since 14 Oct 2026"));
    const anchor = diaryAnchors(plan.plantings, []).get("2027/garlic|1|start");
    expect(anchor).toEqual({
      day: isoDay("2026-10-14"),
      from: "given",
      basis: ["given"],
      task: null,
    });
  });

  test("is what was seen, from the diary", () => {
    expect(told(seen("2027-05-14", "up"))).toEqual([
      ["2027/lettuce|1|up", isoDay("2027-05-14"), "diary"],
    ]);
  });
});

describe("a sighting that names no sowing", () => {
  test("counts for the first, the next one for the second", () => {
    expect(told(seen("2027-05-14", "up"), seen("2027-05-25", "up"))).toEqual([
      ["2027/lettuce|1|up", isoDay("2027-05-14"), "diary"],
      ["2027/lettuce|2|up", isoDay("2027-05-25"), "diary"],
    ]);
  });

  test("counts by its day, whatever the order of the lines", () => {
    expect(told(seen("2027-05-25", "up"), seen("2027-05-14", "up"))).toEqual(
      told(seen("2027-05-14", "up"), seen("2027-05-25", "up")),
    );
  });

  test("does not take the place of another stage", () => {
    expect(told(seen("2027-05-14", "up"), seen("2027-07-01", "first ripe"))).toEqual([
      ["2027/lettuce|1|up", isoDay("2027-05-14"), "diary"],
      ["2027/lettuce|1|first ripe", isoDay("2027-07-01"), "diary"],
    ]);
  });
});

test("a sighting that names its sowing counts for that one", () => {
  expect(told(seen("2027-05-25", "up", 3))).toEqual([
    ["2027/lettuce|3|up", isoDay("2027-05-25"), "diary"],
  ]);
});

describe("a loss", () => {
  const began = (...days: readonly string[]): Anchors =>
    new Map(
      days.map((day, i) => [
        `2027/lettuce|${i + 1}|start`,
        { day: isoDay(day), from: "placed", basis: [], task: null },
      ]),
    );
  const ended = (anchors: Anchors, sowing: number | null) => {
    const planting = "2027/lettuce";
    const day = isoDay("2027-06-20");
    const loss: Observation = { kind: "lost", day, planting, sowing, text: "slugs ate it" };
    return [...withLosses(anchors, [loss]).keys()].filter((key) => key.endsWith("|end"));
  };

  test("ends the sowings that could be up by then, and none that goes in later", () => {
    const anchors = began("2027-05-03", "2027-06-01", "2027-06-19", "2027-07-10");
    expect(ended(anchors, null)).toEqual(["2027/lettuce|1|end", "2027/lettuce|2|end"]);
  });

  test("ends the sowing that is named, whatever its day", () => {
    expect(ended(began("2027-05-03", "2027-06-19"), 2)).toEqual(["2027/lettuce|2|end"]);
  });

  test("ends every sowing where none could be up", () => {
    expect(ended(began("2027-07-03"), null)).toHaveLength(LAST_SOWING_NUMBER);
  });
});
