/**
 * A difference of temperatures is not the same kind as a temperature: 3 °F of difference is not 3 °F on a thermometer.
 */
export type QuantityKind = "length" | "area" | "volume" | "temperature" | "difference";

/** The two systems a household can read in. */
export type Measures = "us" | "metric";

/**
 * An amount with its unit. `si` is in centimetres for a length, square metres for an area, litres for a volume, degrees
 * Celsius for a temperature and kelvins for a difference. `said` is what the gardener wrote, so that 16 in prints as 16
 * in again; null where nobody wrote it.
 */
export type Quantity = {
  readonly kind: QuantityKind;
  readonly si: number;
  readonly said: { readonly value: number; readonly unit: Unit } | null;
};

/** Unit names as they are printed. */
export type Unit =
  | "in"
  | "ft"
  | "yd"
  | "mm"
  | "cm"
  | "m"
  | "ft²"
  | "m²"
  | "gal"
  | "qt"
  | "L"
  | "°F"
  | "°C";

const CM: Partial<Record<Unit, number>> = {
  in: 2.54,
  ft: 30.48,
  yd: 91.44,
  mm: 0.1,
  cm: 1,
  m: 100,
};
const M2: Partial<Record<Unit, number>> = { "ft²": 0.09290304, "m²": 1 };
const LITRES: Partial<Record<Unit, number>> = { gal: 3.785411784, qt: 0.946352946, L: 1 };

const SPELLINGS: Readonly<Record<string, Unit>> = {
  in: "in",
  inch: "in",
  inches: "in",
  '"': "in",
  ft: "ft",
  foot: "ft",
  feet: "ft",
  "'": "ft",
  yd: "yd",
  yard: "yd",
  yards: "yd",
  mm: "mm",
  cm: "cm",
  m: "m",
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  "ft²": "ft²",
  "sq ft": "ft²",
  "m²": "m²",
  "sq m": "m²",
  gal: "gal",
  gallon: "gal",
  gallons: "gal",
  qt: "qt",
  quart: "qt",
  quarts: "qt",
  l: "L",
  litre: "L",
  litres: "L",
  liter: "L",
  liters: "L",
  "°f": "°F",
  f: "°F",
  "°c": "°C",
  c: "°C",
};

/** The unit a gardener's spelling means (`inches`, `"`, `litres`, `°f`), or null. Case does not matter. */
export function unitFrom(spelling: string): Unit | null {
  return SPELLINGS[spelling.trim().toLowerCase().replace(/\s+/g, " ")] ?? null;
}

/** A value in a unit as a quantity; `difference` reads a temperature unit as a difference of temperatures. */
export function quantity(value: number, unit: Unit, difference = false): Quantity {
  const said = { value, unit };
  const length = CM[unit];
  if (length !== undefined) return { kind: "length", si: value * length, said };
  const area = M2[unit];
  if (area !== undefined) return { kind: "area", si: value * area, said };
  const volume = LITRES[unit];
  if (volume !== undefined) return { kind: "volume", si: value * volume, said };
  if (difference) return { kind: "difference", si: unit === "°F" ? (value * 5) / 9 : value, said };
  return { kind: "temperature", si: unit === "°F" ? celsius(value) : value, said };
}

/** Degrees Fahrenheit to degrees Celsius. */
export function celsius(fahrenheit: number): number {
  return ((fahrenheit - 32) * 5) / 9;
}

/** Degrees Celsius to degrees Fahrenheit. */
export function fahrenheit(celsiusDegrees: number): number {
  return (celsiusDegrees * 9) / 5 + 32;
}

/** A length nobody wrote [cm]. */
export function cm(si: number): Quantity {
  return { kind: "length", si, said: null };
}

/** A length from a table in inches; printed back in whichever units the household reads. */
export function inches(value: number): Quantity {
  return { kind: "length", si: value * 2.54, said: null };
}

/** A volume nobody wrote [L]. */
export function litres(si: number): Quantity {
  return { kind: "volume", si, said: null };
}

/** A temperature nobody wrote [°C]. */
export function degreesC(si: number): Quantity {
  return { kind: "temperature", si, said: null };
}
