import { expect, test } from "vitest";
import { frostDateLabels } from "../../../src/views/pictures/dates.ts";
import type { FrostField } from "../../../src/views/pictures/drift.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { planOf, QUARRY } from "../../gardens.ts";
import { GARDENS, labelsOf, on } from "./drawn.ts";
import { parse } from "./xml.ts";

const field: FrostField = {
  scale: { from: on("2027-04-01"), to: on("2027-10-31"), leftPx: 16, rightPx: 374 },
  topPx: 100,
  groundPx: 430,
};
const labels = (text: string) =>
  labelsOf(parse(`<g>${frostDateLabels(planOf(text), field, sheetOf("phone")).join("")}</g>`));

test("all six dates find room on a phone, each with its odds below it, and the clear time between", () => {
  expect(labels(QUARRY).length).toBe(13);
  const said = labels(QUARRY).map((label) => label.text);
  expect(said.slice(0, 2)).toEqual(["6 May usual", "1 spring in 2"]);
  expect(said).toContain("17 Oct late");
});

test("spring's dates stand right of the drift, autumn's left of it", () => {
  const at = (text: string) => labels(QUARRY).find((label) => label.text === text)?.box;
  expect(at("6 May usual")?.x).toBeGreaterThan(75);
  const autumn = at("2 Oct usual");
  expect((autumn?.x ?? 0) + (autumn?.widthPx ?? 0)).toBeLessThan(324);
});

test("dates that fall together are named once, and a place without frost has none", () => {
  const same = labels(QUARRY.replace("20 Apr, 6 May, 21 May", "6 May, 6 May, 6 May"));
  expect(same.filter((label) => label.text.startsWith("6 May")).length).toBe(1);
  expect(labels(GARDENS["no frost"] ?? "")).toEqual([]);
});
