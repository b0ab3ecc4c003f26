import { plus } from "../../base/index.ts";
import { shareIn } from "./emergence.ts";
import { anchorOf, type SowingContext } from "./sowing-context.ts";
import { sumBetween } from "./sums.ts";
import { seedOf } from "./up.ts";

/**
 * The part of emergence's delay that is applied to the rest of growth. Source: house rule; half of it comes from the
 * bed, half from when somebody looked.
 */
const PERSISTING_SHARE = 0.5;

/** The most by which the rest is lengthened or shortened. Source: house rule; a fifth. */
const MOST_DEVIATION = 0.2;

/**
 * The factor for the rest of a planting's warmth after it was seen up: over 1 where emergence took longer than by the
 * table, as in a bed colder than calculated. 1 where it was not seen, or was raised indoors.
 */
export function paceOf(context: SowingContext): number {
  const up = anchorOf(context, "up");
  const start = anchorOf(context, "start");
  const { comesUp } = context.crop;
  const outdoors = context.planting.start === "seed outdoors";
  if (!up || !start || up.from !== "diary" || !outdoors || comesUp.kind !== "table") return 1;
  const share = shareIn(context.climate, seedOf(context, comesUp.row, 0));
  const took = sumBetween(share, start.day, plus(up.day, -1));
  return Math.min(
    Math.max(1 + (took - 1) * PERSISTING_SHARE, 1 - MOST_DEVIATION),
    1 + MOST_DEVIATION,
  );
}
