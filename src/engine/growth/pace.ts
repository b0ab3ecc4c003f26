import { plus } from "../../base/days/day.ts";
import { shareIn } from "./emergence.ts";
import { anchorOf, type SowingContext } from "./sowing-context.ts";
import { sumBetween } from "./sums.ts";
import { seedOf } from "./up.ts";

/** Part of what coming up was off by that the rest is taken to be off by. Source: house rule; half of it lies in the bed, half in the looking. */
const PERSISTING_SHARE = 0.5;

/** The most that the rest is stretched or shortened by. Source: house rule; a fifth. */
const MOST_DEVIATION = 0.2;

/**
 * What the rest of a planting's warmth is multiplied by after it was seen up: over 1 where it took more of the table's
 * way than one, as in a bed colder than reckoned. 1 where it was not seen, or was raised indoors.
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
