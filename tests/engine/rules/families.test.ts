import { describe, expect, it } from "vitest";
import { CROPS, cropOf } from "../../../src/crops/crops.ts";
import { saySource } from "../../../src/crops/figures.ts";
import { familyBefore, yearsAway } from "../../../src/engine/rules/families.ts";
import { least, planOf } from "../../garden/plan/canonical.ts";

const year = (y: number, crop: string) =>
  planOf(
    least(`beds:\n  A:\n    is: 12 x 4 ft\n    crops:\n      - ${crop}`).replace("2027", String(y)),
  );

describe("years a family should be away", () => {
  it("are a few, with their source, for every family of the facts", () => {
    for (const { family } of CROPS) {
      const { value, source } = yearsAway(family);
      expect(value).toBeGreaterThanOrEqual(1);
      expect(value).toBeLessThanOrEqual(4);
      expect(saySource(source).length).toBeGreaterThan(10);
    }
  });

  it("are held against every earlier plan, the newest first", () => {
    const tomato = cropOf("tomato");
    const now = year(2027, "tomato");
    const [bed] = now.beds;
    if (!tomato || !bed) throw new Error("no tomato");
    const before = [year(2024, "potato"), year(2025, "tomato"), year(2026, "beet")];
    const found = (plans: typeof before) =>
      familyBefore(tomato, bed, { year: 2027, before: plans })?.plan.year ?? null;
    expect(found(before)).toBe(2025);
    expect(found([...before].reverse())).toBe(2025);
    expect(found([year(2024, "potato")])).toBe(2024);
    expect(found([year(2023, "potato")])).toBeNull();
    expect(found([now, year(2028, "potato")])).toBeNull();
  });
});
