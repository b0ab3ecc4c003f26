import { type Problem, type Quantity, quantityFrom } from "../../base/index.ts";
import { unclearQuantity } from "./place.ts";
import type { Words } from "./tree.ts";

const HOURLY = /^(.*\S)\s*(?:\/|\b(?:an|a|per|each|every)\b)\s*(?:hours?|hr|h)\.?$/i;
const SHORT = /^(.*\d)\s*([gl])ph$/i;

/**
 * What all drip lines of a bed give together in an hour, as a volume [L], from `12 gal an hour`, `45 l/h` or `12 gph`;
 * null where the plan does not give it. Problem: `quantity-unclear` where it is no flow above zero.
 */
export function readDrip(words: Words | null, problems: Problem[]): Quantity | null {
  if (words === null) return null;
  const [, amount, unit] = SHORT.exec(words.text) ?? [];
  const short = unit && `${amount} ${unit.toLowerCase() === "g" ? "gal" : "l"}`;
  const flow = quantityFrom(short ?? HOURLY.exec(words.text)?.[1] ?? "");
  if (flow?.kind === "volume" && flow.si > 0) return flow;
  problems.push(unclearQuantity(words, "a flow", "12 gal an hour or 45 l an hour"));
  return null;
}
