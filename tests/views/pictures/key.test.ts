import { expect, test } from "vitest";
import { bedRowsOf } from "../../../src/views/pictures/beds.ts";
import { keyFoot } from "../../../src/views/pictures/key.ts";
import { sheetOf } from "../../../src/views/pictures/sheet.ts";
import { QUARRY } from "../../gardens.ts";
import { GARDENS, labelsOf, sketchOf } from "./drawn.ts";
import { parse } from "./xml.ts";

const foot = (text: string, frost = true) =>
  keyFoot(sheetOf("phone"), { rows: bedRowsOf(sketchOf(text)), frost }, 500);
const said = (text: string) =>
  labelsOf(parse(`<g>${foot(text).svg.join("")}</g>`)).map((label) => label.text);

test("the key names the colours that are in the picture and no others", () => {
  expect(said(QUARRY).slice(0, 5)).toEqual([
    "nightshade family",
    "carrot family",
    "beet family",
    "daisy family",
    "onion family",
  ]);
  expect(said(GARDENS["a single crop"] ?? "")[0]).toBe("beet family");
  expect(said(GARDENS["two months without frost"] ?? "")).toContain("others");
  expect(said(GARDENS["nothing in it"] ?? "").join(" ")).not.toContain("family");
});

test("it says how the picture is read, and ends below that", () => {
  expect(said(QUARRY).join(" ")).toContain("fades where its end is not certain");
  expect(said(QUARRY).join(" ")).toContain("Thick line on the soil: you eat of it");
  expect(said(GARDENS["nothing in it"] ?? "").join(" ")).toBe(
    "Blue air: frost is likely. Brown ground: the soil is warm.",
  );
  expect(said(GARDENS["a single crop"] ?? "").join(" ")).not.toContain("indoors");
  expect(foot(QUARRY).endsPx).toBeGreaterThan(550);
});
