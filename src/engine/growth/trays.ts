import { type Day, plus } from "../../base/index.ts";
import type { Planting } from "../../garden/model/index.ts";
import { isReached, middle } from "./milestones.ts";
import { anchorOf, type SowingContext } from "./sowing-context.ts";
import { upMilestone } from "./up.ts";

/** Seedlings to a tray: cells, or pots where a crop is potted on. Source: common practice: 40 cells, 18 pots of 3 inches. */
const PER_TRAY = { cells: 40, pots: 18 } as const;

/** Trays that stand under cover on a day: of cells, and of pots where they have been potted on. */
export type TrayCounts = { readonly cells: number; readonly pots: number };

const NONE: TrayCounts = { cells: 0, pots: 0 };

/** The day that seedlings come out of their cells into pots; null where they stay in them or are not up. */
function potOnDay(context: SowingContext): Day | null {
  const pots = context.crop.indoors?.potOnDaysAfterUp ?? null;
  const up = upMilestone(context);
  return pots && isReached(up) ? plus(up.usual, middle(pots.value)) : null;
}

/** The trays of one planting on a day: none before it is sown indoors and from the day it is set out. */
export function traysOn(context: SowingContext, day: Day): TrayCounts {
  const sown = anchorOf(context, "start");
  const out = anchorOf(context, "set out");
  if (context.planting.start !== "seed indoors" || !sown || day < sown.day) return NONE;
  if (out && day >= out.day) return NONE;
  const potted = potOnDay(context);
  const inPots = potted !== null && day >= potted;
  const count = traysFor(context.planting, inPots ? "pots" : "cells");
  return inPots ? { cells: 0, pots: count } : { cells: count, pots: 0 };
}

/** Trays that a planting's seedlings take in cells or in pots; 0 where it is not raised here, or the plan names no number of plants. */
export function traysFor({ start, amount }: Planting, vessel: "cells" | "pots"): number {
  if (start !== "seed indoors" || amount?.kind !== "plants") return 0;
  return Math.ceil(amount.count / PER_TRAY[vessel]);
}

/** The fullest day under cover, and the trays that stand there then. */
export type FullestDay = { readonly day: Day; readonly trays: number };

/** The first of the days on which most trays stand under cover; null where nothing is raised. */
export function fullestDay(contexts: readonly SowingContext[]): FullestDay | null {
  const days = contexts.flatMap((context) => {
    const sown = anchorOf(context, "start");
    const potted = potOnDay(context);
    return [sown?.day ?? null, potted].filter((day) => day !== null);
  });
  const full = days
    .sort((a, b) => a - b)
    .map((day) => ({ day, trays: traysUnderCover(contexts, day) }))
    .reduce<FullestDay | null>(
      (most, each) => (each.trays > (most?.trays ?? 0) ? each : most),
      null,
    );
  return full;
}

function traysUnderCover(contexts: readonly SowingContext[], day: Day): number {
  return contexts
    .map((context) => traysOn(context, day))
    .reduce((sum, { cells, pots }) => sum + cells + pots, 0);
}
