import { type Quantity, quantityFrom } from "../../base/index.ts";

/** Whether a house is heated, and to what night temperature; null where it is said that nothing heats it. */
export type Heat = { readonly keptAbove: Quantity | null };

/** A greenhouse, a tunnel of film or a cold frame, as the first words of a bed say it; `heat` null where they don't say. */
export type House = { readonly of: "glass" | "film" | "frame"; readonly heat: Heat | null };

const HOUSE =
  /^(?:an? |the )?(?:(unheated|cold) )?(?:(green ?house|glass ?house)|(?:hoop ?house|high ?tunnel|(?:poly ?)?tunnel))$/i;

const COLD_FRAME = /^(?:an? |the )?(?:unheated )?cold ?frame$/i;

/** The house that words mean (`greenhouse`, `an unheated tunnel`, `cold frame`), or null. Nothing heats a cold frame. */
export function houseIn(text: string): House | null {
  if (COLD_FRAME.test(text)) return { of: "frame", heat: { keptAbove: null } };
  const found = HOUSE.exec(text);
  if (!found) return null;
  return {
    of: found[2] === undefined ? "film" : "glass",
    heat: found[1] ? { keptAbove: null } : null,
  };
}

const UNHEATED =
  /^(?:unheated|not heated|cold|no heat(?:er|ing)?|without (?:a )?heat(?:er|ing)?)$/i;
const HEATED = /^(?:(?:is )?(?:kept|stays|held) (?:above|at)|heated (?:to|above)|above) (.+)$/i;

/** The heat that words mean (`unheated`, `kept above 5 °C`); `unclear` where a temperature is no temperature; else null. */
export function heatIn(text: string): Heat | "unclear" | null {
  if (UNHEATED.test(text)) return { keptAbove: null };
  const warm = HEATED.exec(text);
  if (!warm) return null;
  const keptAbove = quantityFrom(warm[1] ?? "");
  return keptAbove?.kind === "temperature" ? { keptAbove } : "unclear";
}
