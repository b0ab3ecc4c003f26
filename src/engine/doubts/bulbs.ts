import type { Problem } from "../../base/index.ts";
import { cropFor } from "../../crops/index.ts";
import { diagnostic } from "../../garden/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { bulbFault, bulbKindFor, bulbKindNamed } from "../growth/bulbs.ts";

/** `will-not-bulb` at each planting of bulbs whose named kind does not do at the plan's latitude. */
export function bulbDoubts({ plantings, site: { latitude } }: Plan): readonly Problem[] {
  if (latitude === null) return [];
  return plantings.flatMap((planting) => {
    const kinds = cropFor(planting)?.bulbs;
    const kind = kinds ? bulbKindNamed(planting) : null;
    const fault = kinds && kind ? bulbFault(kind, latitude, kinds) : null;
    if (fault === null) return [];
    const is =
      fault === "never"
        ? `${planting.written}: days here never get long enough for a ${kind} kind to make bulbs`
        : `${planting.written}: days here are long so early that a ${kind} kind makes small bulbs`;
    const kindHere = bulbKindFor(latitude);
    const article = kindHere === "intermediate" ? "an" : "a";
    return [diagnostic("will-not-bulb", planting.at, is, `Choose ${article} ${kindHere} kind`)];
  });
}
