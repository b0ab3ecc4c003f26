import { describe, expect, it } from "vitest";
import { DIARY_PHRASES, type DiaryAct, practiceFor } from "../../../src/garden/diary/acts.ts";
import { PRACTICE_NAMES } from "../../../src/garden/plan/practices.ts";
import { PLAN } from "../plan/canonical.ts";

const ACTS: readonly DiaryAct[] = [
  "sow",
  "sow again",
  "plant",
  "set out",
  "pot on",
  "harden off",
  "thin",
  "weed",
  "hill",
  "board",
  "cover",
  "mulch",
  "stalks",
  "feed",
  "stake and train",
  "stop the tops",
  "fill in and blanch",
  "scout",
  "cure and store",
  "harvest",
];

function practice(act: DiaryAct, crop: string, overwinters = false) {
  const planting = PLAN.plantings.find((one) => one.crop === crop);
  return planting ? (practiceFor(act, null, planting, overwinters)?.practice ?? null) : undefined;
}

describe("acts and practices", () => {
  it("make every act a practice that tasks carry, or none", () => {
    for (const act of ACTS)
      for (const planting of PLAN.plantings) {
        const found = practiceFor(act, "1", planting, planting.crop === "garlic");
        if (found) expect(PRACTICE_NAMES).toContain(found.practice);
      }
  });

  it("say sowing and planting by how the planting begins", () => {
    expect([
      practice("sow", "tomato"),
      practice("sow", "carrot"),
      practice("sow", "potato"),
    ]).toEqual(["sow indoors", "sow outdoors", null]);
    expect([
      practice("plant", "tomato"),
      practice("plant", "potato"),
      practice("plant", "beet"),
    ]).toEqual(["set out", "plant", "sow outdoors"]);
    expect(practice("plant", "garlic", true)).toBe("overwinter");
    expect([practice("set out", "carrot"), practice("harden off", "tomato")]).toEqual([
      null,
      "harden off",
    ]);
    expect([practice("sow again", "lettuce"), practice("sow again", "carrot")]).toEqual([
      "repeat",
      null,
    ]);
    expect([practice("mulch", "garlic", true), practice("mulch", "carrot")]).toEqual([
      "overwinter",
      null,
    ]);
  });

  it("read each way of saying from its beginning to its end", () => {
    for (const { pattern } of DIARY_PHRASES) {
      expect(pattern.source.startsWith("^")).toBe(true);
      expect(pattern.test("")).toBe(false);
    }
  });

  it("know a wish from a deed", () => {
    for (const text of ["sow the carrots", "thin the beets", "plant garlic"])
      expect(
        DIARY_PHRASES.some(({ pattern }) => pattern.test(text)),
        text,
      ).toBe(false);
  });
});
