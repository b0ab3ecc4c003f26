import { describe, expect, test } from "vitest";
import {
  BAND_OPACITY,
  DAYLIGHT,
  type FamilyInk,
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

const FAMILIES: readonly FamilyInk[] = [
  "cabbage",
  "onion",
  "carrot",
  "beet",
  "daisy",
  "nightshade",
  "gourd",
  "pea",
  "other",
];

type Rows = readonly [Colour, Colour, Colour];

/**
 * What eyes without one kind of cone make of a colour, for linear light.
 * Source: Machado, Oliveira and Fernandes, 2009, A physiologically-based model for simulation of color vision deficiency,
 * IEEE Transactions on Visualization and Computer Graphics 15, the matrices of severity 1.0; from memory, and checked to leave white white.
 */
const SEEN: Readonly<Record<string, Rows>> = {
  "every cone": [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  "no long cones": [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  "no middle cones": [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  "no short cones": [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** Least distance of two colours [CIE 1976 L*a*b*]. Source: house rule: about 2.3 is just seen; the names stand beside. */
const LEAST_APART = 10;

const linear = (v: number) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);

function seenBy(eye: Rows, of: Colour): Colour {
  const [red, green, blue] = of.map(linear);
  const see = ([a, b, c]: Colour) =>
    Math.min(1, Math.max(0, a * (red ?? 0) + b * (green ?? 0) + c * (blue ?? 0)));
  return [see(eye[0]), see(eye[1]), see(eye[2])];
}

/** CIE L*a*b* of linear light under D65. Source: CIE 15, Colorimetry, and IEC 61966-2-1. */
function labOf([red, green, blue]: Colour): Colour {
  const share = (t: number) =>
    t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27) * (t / 116) + 16 / 116;
  const x = share((0.4124 * red + 0.3576 * green + 0.1805 * blue) / 0.9505);
  const y = share(0.2126 * red + 0.7152 * green + 0.0722 * blue);
  const z = share((0.0193 * red + 0.1192 * green + 0.9505 * blue) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

test("eyes without a cone take white for white, and red and green for nearly one", () => {
  for (const eye of Object.values(SEEN))
    for (const part of seenBy(eye, [1, 1, 1])) expect(part).toBeCloseTo(1, 3);
  const apart = (eye: Rows) => {
    const [a, b] = ["#a05030", "#6f7030"].map((hex) => labOf(seenBy(eye, colour(hex))));
    return a && b ? Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) : 0;
  };
  const [every, , middle] = Object.values(SEEN);
  expect(every && middle ? apart(middle) / apart(every) : 1).toBeLessThan(0.5);
});

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
    for (const ink of ["soil", "ice", ...FAMILIES] as const)
      expect(least(ink, palette), ink).toBeGreaterThanOrEqual(3);
  });

  test("names, rows and marks stand out on the soil of a bed seen from above", () => {
    const on = (ink: Ink) => contrast(colour(palette[ink]), colour(palette.earth));
    expect(on("ink")).toBeGreaterThanOrEqual(7);
    expect(on("pencil")).toBeGreaterThanOrEqual(4.5);
    for (const ink of ["plant", "soil", "mark"] as const)
      expect(on(ink), ink).toBeGreaterThanOrEqual(3);
  });

  test.each(Object.entries(SEEN))("any two families differ to %s", (_, eye) => {
    const labs = FAMILIES.map((ink) => [ink, labOf(seenBy(eye, colour(palette[ink])))] as const);
    const near = labs.flatMap(([one, a], i) =>
      labs
        .slice(i + 1)
        .filter(([, b]) => Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]) < LEAST_APART)
        .map(([two]) => `${one} and ${two}`),
    );
    expect(near).toEqual([]);
  });
});

test("the style holds all three, printed last and on white, and every colour also without variables", () => {
  expect(PICTURE_STYLE).toContain("@media (prefers-color-scheme:dark)");
  expect(PICTURE_STYLE.indexOf("@media print")).toBeGreaterThan(PICTURE_STYLE.indexOf("dark"));
  expect(PRINTED.paper).toBe("#ffffff");
  for (const [ink, hex] of Object.entries(DAYLIGHT))
    expect(PICTURE_STYLE).toContain(`.${ink}{fill:${hex};fill:var(--${ink})}`);
});
