import { expect, test } from "vitest";
import { detailsOf } from "../../../../src/views/pictures/from-above/details.ts";
import { bedsFoot } from "../../../../src/views/pictures/from-above/key.ts";
import type { Mark } from "../../../../src/views/pictures/from-above/sketch.ts";
import { sheetOf } from "../../../../src/views/pictures/sheet.ts";
import { QUARRY } from "../../../gardens.ts";
import { BEDS, bedsSketchOf } from "./beds.ts";

function foot(text: string, pxPerCm: number, marks: readonly Mark[] = []) {
  const beds = [{ bed: "root-bed", lines: [], marks, freeCm: null }];
  const details = detailsOf(
    bedsSketchOf(text, "2027-06-20", { notes: { text: "", beds, alone: false } }),
  );
  return bedsFoot(sheetOf("phone"), { pxPerCm }, { details, measures: "us", y: 100 }).svg.join(" ");
}

test("the ruler is as long as it says, and long enough to be read", () => {
  for (const pxPerCm of [0.05, 0.3, 0.47, 1]) {
    const svg = foot(QUARRY, pxPerCm);
    const [, from = "", to = ""] = /M([\d.]+) [\d.]+v5H([\d.]+)v-5/.exec(svg) ?? [];
    const feet = Number(/>(\d+) ft</.exec(svg)?.[1]);
    expect(Number(to) - Number(from)).toBeCloseTo(feet * 30.48 * pxPerCm, 0);
    expect(Number(to) - Number(from)).toBeGreaterThanOrEqual(43);
  }
});

test("the key explains what is drawn and nothing else", () => {
  expect(foot(QUARRY, 0.5)).not.toMatch(/Hatched|Framed|Dashed/);
  expect(foot(QUARRY, 0.5, [{ planting: "2027/beet", as: "cover" }])).toContain("Hatched");
  expect(foot(QUARRY, 0.5, [{ planting: "2027/beet", as: "do" }])).toContain("Framed");
  expect(foot(BEDS["no sizes, no amounts"] ?? "", 0.5)).toContain("Dashed");
});
