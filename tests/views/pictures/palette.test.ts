import { describe, expect, test } from "vitest";
import {
  BAND_OPACITY,
  DAYLIGHT,
  type Ink,
  LAMPLIGHT,
  type Palette,
  PICTURE_STYLE,
  PRINTED,
} from "../../../src/views/pictures/palette.ts";

type Colour = readonly [red: number, green: number, blue: number];

const colour = (hex: string): Colour => {
  const part = (i: number) => Number.parseInt(hex.slice(i, i + 2), 16) / 255;
  return [part(1), part(3), part(5)];
};

const over = (top: Colour, ground: Colour, opacity: number): Colour => {
  const mix = (i: 0 | 1 | 2) => top[i] * opacity + ground[i] * (1 - opacity);
  return [mix(0), mix(1), mix(2)];
};

/** Source: W3C, WCAG 2.2, definitions of relative luminance and contrast ratio. */
const luminance = (of: Colour) => {
  const [red, green, blue] = of.map((v) =>
    v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
};
const contrast = (a: Colour, b: Colour) => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((one, two) => one - two);
  return (light + 0.05) / (dark + 0.05);
};

/** Everything that words or plants can lie on: paper, each wash at its strongest, and both one on the other. */
function basis(palette: Palette): readonly Colour[] {
  const paper = colour(palette.paper);
  const frosty = over(colour(palette.frost), paper, BAND_OPACITY.frost);
  const warm = over(colour(palette.warm), paper, BAND_OPACITY.warm);
  return [paper, frosty, warm, over(colour(palette.warm), frosty, BAND_OPACITY.warm)];
}

const least = (ink: Ink, palette: Palette) =>
  Math.min(...basis(palette).map((ground) => contrast(colour(palette[ink]), ground)));

test("the reckoning knows black on white, and a grey that is too pale", () => {
  expect(contrast(colour("#000000"), colour("#ffffff"))).toBeCloseTo(21);
  expect(contrast(colour("#777777"), colour("#ffffff"))).toBeCloseTo(4.48, 2);
});

describe.each(Object.entries({ DAYLIGHT, LAMPLIGHT, PRINTED }))("in %s", (_, palette) => {
  test("words stand out 4.5 to 1 on all they can lie on", () => {
    for (const ink of ["ink", "pencil"] as const)
      expect(least(ink, palette), ink).toBeGreaterThanOrEqual(4.5);
  });

  test("lines and plants stand out 3 to 1 on all they can lie on", () => {
    for (const ink of ["soil", "ice", "leaf", "root", "fruit"] as const)
      expect(least(ink, palette), ink).toBeGreaterThanOrEqual(3);
  });
});

test("the style holds all three, printed last and on white, and every colour also without variables", () => {
  expect(PICTURE_STYLE).toContain("@media (prefers-color-scheme:dark)");
  expect(PICTURE_STYLE.indexOf("@media print")).toBeGreaterThan(PICTURE_STYLE.indexOf("dark"));
  expect(PRINTED.paper).toBe("#ffffff");
  for (const [ink, hex] of Object.entries(DAYLIGHT))
    expect(PICTURE_STYLE).toContain(`.${ink}{fill:${hex};fill:var(--${ink})}`);
});
