import { expect, test } from "vitest";
import { STYLESHEET } from "../../../src/host/web/assets.ts";

/** Relative luminance and contrast. Source: WCAG 2.2, "relative luminance" and "contrast ratio". */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const [light = {}, dark = {}] = [...STYLESHEET.matchAll(/:root \{[^}]*\}/g)].map(([block]) =>
  Object.fromEntries([...block.matchAll(/--(\w+): (#\w{6})/g)].map(([, name, hex]) => [name, hex])),
);

test.each([
  ["light", light],
  ["dark", dark],
])("ink, faint ink and links can be read in the sun on %s paper", (_, colours) => {
  const paper = colours.paper ?? "";
  expect(contrast(colours.ink ?? "", paper)).toBeGreaterThan(12);
  expect(contrast(colours.faint ?? "", paper)).toBeGreaterThan(6);
  expect(contrast(colours.link ?? "", paper)).toBeGreaterThan(7);
});

test("nothing is fetched from elsewhere", () => {
  expect(STYLESHEET).not.toMatch(/url\(|@import|https?:/);
});

test("a link round a picture is as large as the picture, for the focus to be seen", () => {
  expect(STYLESHEET).toContain("a:has(> img) { display: block; }");
});

test("what a form asks in hints keeps its distance from the field above", () => {
  expect(STYLESHEET).toContain("textarea { display: block; }");
  expect(STYLESHEET).toContain(".rows > .faint { margin-top: 0.35rem; }");
});

test("a crop and its bed have room beside each other in half of a desk's page", () => {
  const bases = [...STYLESHEET.matchAll(/\.crops (?:label|select) \{ flex: \d \d ([\d.]+)rem/g)];
  // Half of 36 less the margins of the page and the gap of two columns, less the gap between the two.
  expect(bases.reduce((sum, [, rem]) => sum + Number(rem), 0)).toBeLessThanOrEqual(15.5);
});
