import type { Crop } from "../crops/facts.ts";
import type { Day } from "../days/day.ts";
import { rowCm } from "../growth/amounts.ts";
import type { Bed, Planting } from "../plan/plan.ts";
import { rowRoomCm } from "../plan/room.ts";
import type { Grown, Life } from "./lives.ts";

/** A planting while it stands in a bed, and how much of the bed's width it takes [cm]; null where the plan does not say how much it grows. */
export type Standing = {
  readonly planting: Planting;
  readonly crop: Crop;
  readonly life: Life;
  readonly widthCm: number | null;
};

/** All that ever stands in a bed, in the order of the plans, sowing by sowing. */
export function standingIn(grown: readonly Grown[], bed: Bed): readonly Standing[] {
  return grown.flatMap(({ planting, crop, lives }) =>
    crop === null || planting.bed !== bed.key
      ? []
      : lives.map((life) => ({ planting, crop, life, widthCm: widthTaken(planting, crop, bed) })),
  );
}

/** From when it takes its place to when it is surely gone, both inclusive. */
export function standsOn({ life }: Standing, day: Day): boolean {
  return (life.out ?? life.starts) <= day && day < life.gone;
}

/**
 * The width of a bed that a planting's rows take along its whole length [cm]; null where the bed has no size or the
 * planting no amount. Sowings again take their share of it one after another, and so count whole here.
 */
function widthTaken(planting: Planting, crop: Crop, bed: Bed): number | null {
  const row = rowCm({ planting, crop, bed });
  if (row === null || !bed.lengthCm) return null;
  return (row / bed.lengthCm.si) * rowRoomCm(crop, planting);
}

/** The width taken on a day by those of which it is known [cm]; a planting's sowings count once. */
export function takenCm(standing: readonly Standing[], day: Day): number {
  const widths = new Map<string, number>();
  for (const each of standing)
    if (standsOn(each, day) && each.widthCm !== null) widths.set(each.planting.key, each.widthCm);
  return [...widths.values()].reduce((sum, width) => sum + width, 0);
}
