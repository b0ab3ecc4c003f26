import { fahrenheit, type Measures, type Quantity, type Unit } from "./quantity.ts";

/**
 * A quantity as the household reads it, rounded the way a gardener would say it: a length to the quarter, half or
 * whole inch (from three feet on in feet), or the centimetre, below one in millimetres; a volume to the half gallon or
 * whole litre; a temperature to the degree. Parts of US measures are fractions, `¼ in`, `1½ ft`. What the gardener
 * wrote in these measures is printed back as the same number.
 */
export function sayQuantity(quantity: Quantity, measures: Measures): string {
  const { said } = quantity;
  if (said && isUs(said.unit) === (measures === "us")) return `${sayNumber(said)} ${said.unit}`;
  return measures === "us" ? sayUs(quantity) : sayMetric(quantity);
}

const US: readonly Unit[] = ["in", "ft", "yd", "ft²", "gal", "qt", "°F"];
const isUs = (unit: Unit) => US.includes(unit);

/** A number without trailing zeros: 0.25, 1.5, 12. */
function plain(value: number): string {
  return String(Math.round(value * 100) / 100);
}

/** Parts that have a sign of their own. Source: common practice, the marks of a ruler and of a cup. */
const GLYPHS: readonly (readonly [part: number, glyph: string])[] = [
  [1 / 8, "⅛"],
  [1 / 4, "¼"],
  [1 / 3, "⅓"],
  [1 / 2, "½"],
  [2 / 3, "⅔"],
  [3 / 4, "¾"],
];

/** How far a part may be from its sign, as two digits of thirds are. */
const SAME = 0.005;

/** A number whose part is a fraction's sign where there is one: `¼`, `1½`, `12`, `3.7`. */
function fractional(value: number): string {
  const whole = Math.trunc(value);
  const part = Math.abs(value - whole);
  const glyph = GLYPHS.find(([size]) => Math.abs(part - size) < SAME)?.[1];
  if (glyph === undefined) return plain(value);
  return `${value < 0 ? "-" : ""}${whole === 0 ? "" : Math.abs(whole)}${glyph}`;
}

/** What was written, with a fraction's sign where the unit is one that is halved and quartered. */
function sayNumber({ value, unit }: NonNullable<Quantity["said"]>): string {
  return isUs(unit) && unit !== "°F" ? fractional(value) : plain(value);
}

function roundToStep(value: number, step: number): number {
  return Math.max(step, Math.round(value / step) * step);
}

function sayUs({ kind, si }: Quantity): string {
  switch (kind) {
    case "length": {
      const inch = si / 2.54;
      if (inch >= 36) return `${fractional(roundToStep(inch / 12, 0.5))} ft`;
      return `${fractional(roundToStep(inch, inch < 1 ? 0.25 : inch < 4 ? 0.5 : 1))} in`;
    }
    case "area":
      return `${fractional(roundToStep(si / 0.09290304, 1))} ft²`;
    case "volume": {
      const gal = si / 3.785411784;
      return gal < 0.5
        ? `${fractional(roundToStep(gal * 4, 1))} qt`
        : `${fractional(roundToStep(gal, gal < 10 ? 0.5 : 1))} gal`;
    }
    case "temperature":
      return `${Math.round(fahrenheit(si))} °F`;
    case "difference":
      return `${Math.round((si * 9) / 5)} °F`;
  }
}

function sayMetric({ kind, si }: Quantity): string {
  switch (kind) {
    case "length":
      if (si >= 200) return `${plain(roundToStep(si / 100, 0.1))} m`;
      if (si < 1) return `${Math.max(1, Math.round(si * 2) * 5)} mm`;
      return si < 2
        ? `${plain(roundToStep(si, 0.5))} cm`
        : `${plain(roundToStep(si, si < 30 ? 1 : 5))} cm`;
    case "area":
      return `${plain(roundToStep(si, 0.5))} m²`;
    case "volume":
      return `${plain(roundToStep(si, si < 20 ? 1 : 5))} L`;
    case "temperature":
      return `${Math.round(si)} °C`;
    case "difference":
      return `${Math.round(si)} °C`;
  }
}
