import { celsius } from "../../base/index.ts";

/** Units a station's file may be in; `tenths` are tenths of °C and of mm, as NOAA's own archive has them. */
export type FileUnit = "°C" | "°F" | "tenths";

/**
 * Highs above these [as written] can't be °F, and can't be °C. Source: house rule: no air on earth has been that warm.
 */
const TOO_HIGH = { forF: 140, forC: 60 } as const;

/** The unit that a word means (`°F`, `f`, `C`, `tenths`), or null. */
export function fileUnitFrom(word: string): FileUnit | null {
  const small = word.trim().toLowerCase();
  if (/^(°? ?c|celsius)$/.test(small)) return "°C";
  if (/^(°? ?f|fahrenheit)$/.test(small)) return "°F";
  return /^tenths( of °?c)?$/.test(small) ? "tenths" : null;
}

/** The unit that a column's own name says, `Max Temp (°C)`; null where it says none. */
export function unitOfHead(name: string): FileUnit | null {
  const inside = /[([](.*?)[)\]]/.exec(name)?.[1];
  return inside === undefined ? null : fileUnitFrom(inside);
}

/** The unit that daily highs must be in, as written: above 140 tenths, above 60 °F, else °C. */
export function unitOfHighs(highs: readonly number[]): FileUnit {
  const most = highs.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  if (most > TOO_HIGH.forF) return "tenths";
  return most > TOO_HIGH.forC ? "°F" : "°C";
}

/** A temperature as written in °C. */
export function inC(value: number, unit: FileUnit): number {
  return unit === "°F" ? celsius(value) : unit === "tenths" ? value / 10 : value;
}

/** Rain as written in mm: inches where degrees are °F. */
export function inMm(value: number, unit: FileUnit): number {
  return unit === "°F" ? value * 25.4 : unit === "tenths" ? value / 10 : value;
}
