import { describe, expect, it } from "vitest";
import { CROPS, cropNamed, cropNames, cropOf, isTender } from "../../src/crops/crops.ts";
import { EMERGENCE_ROWS } from "../../src/crops/emergence.ts";
import type { MeasuredText } from "../../src/crops/facts.ts";
import { allFigures } from "./walk.ts";

describe("the crop facts", () => {
  it("know each crop by its key, once", () => {
    expect(new Set(CROPS.map(({ key }) => key)).size).toBe(CROPS.length);
    for (const crop of CROPS) expect(cropOf(crop.key)).toBe(crop);
    expect(cropOf("moonflower")).toBeNull();
  });

  it("know each crop by every name of the trade, whatever case and spaces", () => {
    for (const crop of CROPS)
      for (const name of [crop.one, crop.many, ...crop.alsoCalled, `  ${crop.one.toUpperCase()} `])
        expect(cropNamed(name), name).toBe(crop);
    expect(cropNamed("table   beet")?.key).toBe("beet");
    for (const name of ["moonflower", "", "toString"]) expect(cropNamed(name)).toBeNull();
  });

  it("give no name to two crops", () => {
    const names = CROPS.flatMap((crop) => [
      ...new Set([crop.key, crop.one, crop.many, ...crop.alsoCalled, ...crop.kinds]),
    ]);
    expect([...names].sort()).toEqual(cropNames());
  });

  it("say what frost kills", () => {
    expect(CROPS.filter(isTender).map(({ key }) => key)).toContain("tomato");
    expect(CROPS.filter(isTender).map(({ key }) => key)).not.toContain("beet");
  });

  it("name the row of the days table, or of the crop that replaces it", () => {
    for (const { comesUp } of CROPS)
      if (comesUp.kind === "table") expect(Object.keys(EMERGENCE_ROWS)).toContain(comesUp.row);
  });

  it("say how each way to begin is done", () => {
    for (const { key, starts, indoors, settingOut, outdoors } of CROPS) {
      expect(starts.length, key).toBeGreaterThan(0);
      if (starts.includes("seed indoors")) expect(indoors, key).not.toBeNull();
      if (starts.includes("seed indoors") || starts.includes("plants"))
        expect(settingOut, key).not.toBeNull();
      if (starts.some((start) => ["seed outdoors", "tubers", "cloves"].includes(start)))
        expect(outdoors, key).not.toBeNull();
    }
  });

  it("have ranges that rise and numbers that are finite", () => {
    for (const { path, figure } of allFigures(CROPS)) {
      const values = [figure.value].flat().filter((value) => typeof value === "number");
      expect(values.every(Number.isFinite), path).toBe(true);
      if (Array.isArray(figure.value))
        expect(values[0] ?? 0, path).toBeLessThanOrEqual(values[1] ?? 0);
    }
  });

  it("number thinnings in their order, each later and wider than the one before", () => {
    for (const { thinnings } of CROPS) {
      expect(thinnings.map(({ step }) => step)).toEqual(thinnings.map((_, n) => String(n + 1)));
      thinnings.slice(1).forEach((thinning, n) => {
        expect(thinning.daysAfterUp.value[0]).toBeGreaterThan(
          thinnings[n]?.daysAfterUp.value[1] ?? 0,
        );
        expect(thinning.apartCm.value[0]).toBeGreaterThan(thinnings[n]?.apartCm.value[0] ?? 0);
      });
    }
  });

  it("give care once a step, in short text without numbers of inches or degrees", () => {
    const plain = (said: MeasuredText | null) =>
      [said ?? ""]
        .flat()
        .map((piece) => (typeof piece === "string" ? piece : "a length"))
        .join("");
    for (const { key, care } of CROPS) {
      const steps = care.map(({ practice, step }) => `${practice}/${step}`);
      expect(new Set(steps).size, key).toBe(steps.length);
      for (const { how, sign, why, caution } of care) {
        const text = [how, sign, why, caution].map(plain).join(" ").trim();
        expect(text, key).not.toMatch(/\d/);
        expect(text, key).toMatch(/\.$/);
        expect(text.length, key).toBeLessThan(350);
      }
    }
  });

  it("have a cover that comes off at the flower only for a crop that is known to flower", () => {
    for (const { key, covers, care, flowers } of CROPS)
      if (covers.some(({ off }) => off === "flower") || care.some(({ from }) => from === "flower"))
        expect(flowers, key).not.toBeNull();
  });
});
