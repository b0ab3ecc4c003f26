import { type Day, plus } from "../../base/days/day.ts";
import { traysFor } from "../../garden/plan/room.ts";
import { anchorOf, type Growing } from "./growing.ts";
import { middle, reached } from "./milestones.ts";
import { upMilestone } from "./up.ts";

/** Trays that stand under cover on a day: of cells, and of pots where they have been potted on. */
export type Trays = { readonly cells: number; readonly pots: number };

const NONE: Trays = { cells: 0, pots: 0 };

/** The day that seedlings come out of their cells into pots; null where they stay in them or are not up. */
function pottedOn(growing: Growing): Day | null {
  const pots = growing.crop.indoors?.potOnDaysAfterUp ?? null;
  const up = upMilestone(growing);
  return pots && reached(up) ? plus(up.usual, middle(pots.value)) : null;
}

/** The trays of one planting on a day: none before it is sown indoors and from the day it is set out. */
export function traysOn(growing: Growing, day: Day): Trays {
  const sown = anchorOf(growing, "start");
  const out = anchorOf(growing, "set out");
  if (growing.planting.start !== "seed indoors" || !sown || day < sown.day) return NONE;
  if (out && day >= out.day) return NONE;
  const potted = pottedOn(growing);
  const inPots = potted !== null && day >= potted;
  const count = traysFor(growing.planting, inPots ? "pots" : "cells");
  return inPots ? { cells: 0, pots: count } : { cells: count, pots: 0 };
}

/** The fullest day under cover, and the trays that stand there then. */
export type Fullest = { readonly day: Day; readonly trays: number };

/** The first of the days on which most trays stand under cover; null where nothing is raised. */
export function fullestDay(growings: readonly Growing[]): Fullest | null {
  const days = growings.flatMap((growing) => {
    const sown = anchorOf(growing, "start");
    const potted = pottedOn(growing);
    return [sown?.day ?? null, potted].filter((day) => day !== null);
  });
  const full = days
    .sort((a, b) => a - b)
    .map((day) => ({ day, trays: traysUnderCover(growings, day) }))
    .reduce<Fullest | null>((most, each) => (each.trays > (most?.trays ?? 0) ? each : most), null);
  return full;
}

function traysUnderCover(growings: readonly Growing[], day: Day): number {
  return growings
    .map((growing) => traysOn(growing, day))
    .reduce((sum, { cells, pots }) => sum + cells + pots, 0);
}
