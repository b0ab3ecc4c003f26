import { type Measures, type Quantity, quantity, type Unit, unitFrom } from "./quantity.ts";

const FRACTIONS: Readonly<Record<string, number>> = {
  "⅛": 1 / 8,
  "¼": 1 / 4,
  "⅓": 1 / 3,
  "½": 1 / 2,
  "⅔": 2 / 3,
  "¾": 3 / 4,
};

/**
 * The number a gardener writes: `12`, `-3`, `0.5`, `0,5`, `1/2`, `2 1/2`, `½`, `2½`; null for anything else.
 */
export function numberFrom(text: string): number | null {
  const short = text.trim();
  const found = /^(-?)(\d+(?:[.,]\d+)?)?(?: ?([⅛¼⅓½⅔¾])| ?(\d+)\/(\d+))?$/u.exec(short);
  if (short === "" || !found) return fraction(short);
  const [, sign, whole, glyph, above, below] = found;
  if (above !== undefined && whole === undefined) return fraction(short);
  const share = glyph ? (FRACTIONS[glyph] ?? 0) : above ? Number(above) / Number(below) : 0;
  const value = Number((whole ?? "0").replace(",", ".")) + share;
  return Number.isFinite(value) && short !== "-" ? (sign ? -value : value) : null;
}

function fraction(text: string): number | null {
  const found = /^(\d+)\/(\d+)$/.exec(text);
  const value = found ? Number(found[1]) / Number(found[2]) : Number.NaN;
  return Number.isFinite(value) ? value : null;
}

/**
 * An amount with its unit as a gardener writes it (`16 in`, `16"`, `0.5 m`, `45 °F`, `45F`), or null where the
 * number or the unit is missing or not known. `difference` reads degrees as a difference of temperatures.
 */
export function quantityFrom(text: string, difference = false): Quantity | null {
  const found = /^(-?[\d.,/⅛¼⅓½⅔¾ ]*[\d⅛¼⅓½⅔¾])\s*([^\d\s⅛¼⅓½⅔¾].*)$/u.exec(text.trim());
  if (!found) return null;
  const value = numberFrom(found[1] ?? "");
  const unit: Unit | null = unitFrom((found[2] ?? "").replace(/\.$/, ""));
  if (value === null || unit === null) return null;
  return quantity(value, unit, difference);
}

/** A temperature as one says it, with its unit or bare in the household's own (`29`, `29 °F`, `−2`); null for anything else. */
export function temperatureFrom(text: string, measures: Measures): Quantity | null {
  const plain = text.trim().replace(/^[−–]/, "-");
  const number = numberFrom(plain);
  const said =
    number === null ? quantityFrom(plain) : quantity(number, measures === "us" ? "°F" : "°C");
  return said?.kind === "temperature" ? said : null;
}
