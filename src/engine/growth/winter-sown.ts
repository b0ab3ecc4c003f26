import { type Day, plus } from "../../base/index.ts";
import { isTender } from "../../crops/index.ts";
import type { Basis } from "./anchors.ts";
import type { SowingContext } from "./sowing-context.ts";

/**
 * Weeks before the usual last frost at which containers go out: of hardy crops, eight to ten, and of tender ones.
 * Source: common practice.
 */
const WEEKS_AHEAD = { hardy: 9, tender: 6 } as const;

/** The day its boxes go out, the intended weeks before the usual last frost, and the basis of the day. */
export type BoxesOut = {
  readonly day: Day;
  readonly weeks: number;
  readonly basis: readonly Basis[];
};

/** When a winter-sown planting's boxes go out: the gardener's own day, else weeks before the usual last frost; null for other starts and where no frost is known. */
export function boxesOut({ planting, crop, plan }: SowingContext): BoxesOut | null {
  const frost = plan.site.lastFrost;
  if (planting.start !== "winter-sown" || !frost) return null;
  const weeks = isTender(crop) ? WEEKS_AHEAD.tender : WEEKS_AHEAD.hardy;
  const given = planting.fixed.start;
  if (given !== null) return { day: given, weeks, basis: ["given"] };
  return { day: plus(frost.usual, -7 * weeks), weeks, basis: ["last frost"] };
}
