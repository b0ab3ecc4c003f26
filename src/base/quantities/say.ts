import { fahrenheit, type Measures, type Quantity } from "./quantity.ts";

/**
 * A quantity as the household reads it, rounded the way a gardener would say it: a length to the half or
 * whole inch (from three feet on in feet), or the centimetre; a volume to the half gallon or whole litre;
 * a temperature to the degree. What the gardener wrote in these measures is printed back in the same digits.
 */
export function sayQuantity(quantity: Quantity, measures: Measures): string {
  const { said } = quantity;
  if (said && isUs(said.unit) === (measures === "us")) return `${plain(said.value)} ${said.unit}`;
  return measures === "us" ? sayUs(quantity) : sayMetric(quantity);
}

const US = ["in", "ft", "yd", "ft²", "gal", "qt", "°F"];
const isUs = (unit: string) => US.includes(unit);

/** A number without trailing zeros, quarters and halves of the kitchen as decimals: 0.25, 1.5, 12. */
function plain(value: number): string {
  return String(Math.round(value * 100) / 100);
}

function roundToStep(value: number, step: number): number {
  return Math.max(step, Math.round(value / step) * step);
}

function sayUs({ kind, si }: Quantity): string {
  switch (kind) {
    case "length": {
      const inch = si / 2.54;
      if (inch >= 36) return `${plain(roundToStep(inch / 12, 0.5))} ft`;
      return `${plain(roundToStep(inch, inch < 1 ? 0.25 : inch < 4 ? 0.5 : 1))} in`;
    }
    case "area":
      return `${plain(roundToStep(si / 0.09290304, 1))} ft²`;
    case "volume": {
      const gal = si / 3.785411784;
      return gal < 0.5
        ? `${plain(roundToStep(gal * 4, 1))} qt`
        : `${plain(roundToStep(gal, gal < 10 ? 0.5 : 1))} gal`;
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
