import type { Problem, TextPosition } from "../../base/index.ts";
import { type Crop, cropFor } from "../../crops/index.ts";
import { diagnostic } from "../../garden/index.ts";
import type { Bed, Plan, Planting } from "../../garden/model/index.ts";
import { MOST_SOWINGS } from "../growth/anchors.ts";
import { bedCapacity } from "../rules/spacing.ts";

/**
 * `bed-too-full` at each planting that alone is more than its bed has room for. What several take together depends on the
 * season and is another doubt. Two crops in one bed are good practice and no doubt.
 */
export function bedSizeDoubts(plan: Plan): readonly Problem[] {
  return plan.plantings.flatMap((planting) => {
    const bed = plan.beds.find(({ key }) => key === planting.bed);
    const crop = cropFor(planting);
    return bed && crop ? bedDoubt(planting, crop, bed) : [];
  });
}

function bedDoubt(planting: Planting, crop: Crop, bed: Bed): readonly Problem[] {
  const { amount } = planting;
  const limit = bedCapacity(planting, crop, bed);
  if (amount === null || amount.kind === "length" || limit === null) return [];
  const most = Math.floor(limit + 0.01);
  const where = bed.bags ? null : bed;
  return amount.count > most ? [tooFull(planting, where, { count: amount.count, most })] : [];
}

function tooFull(
  planting: Planting,
  bed: Bed | null,
  { count, most }: { readonly count: number; readonly most: number },
): Problem {
  const what = planting.amount?.kind === "rows" ? "rows" : "plants";
  if (most === 0)
    return diagnostic(
      "bed-too-full",
      planting.at,
      `${bed?.name ?? "A bag"} is too small for ${planting.written}`,
      "Give it a larger place, or a bed without a size",
    );
  return diagnostic(
    "bed-too-full",
    planting.at,
    `${count} ${what} of ${planting.written} stand in ${bed ? `${bed.name}, which holds` : "bags that hold"} about ${most}`,
    "Plant fewer, or give some another bed",
  );
}

/**
 * `not-sown-again` at each planting that is to be sown again and does not grow from seed in its place, and
 * `too-many-sowings` at those with more than a season has. Sowings are counted by their harvests; plants and tubers
 * begin only once.
 */
export function repeatDoubts(plan: Plan): readonly Problem[] {
  return plan.plantings.flatMap(repeatDoubt);
}

function repeatDoubt({ repeat, start, written, at }: Planting): readonly Problem[] {
  if (repeat === null) return [];
  if (start === "seed outdoors") return manyDoubt(written, repeat.times ?? 0, at);
  const is = `${written} begins from ${start} here, which is not done again and again`;
  return [
    diagnostic("not-sown-again", at, is, "Write from seed outdoors, or give each its own line"),
  ];
}

function manyDoubt(written: string, times: number, at: TextPosition): readonly Problem[] {
  if (times <= MOST_SOWINGS) return [];
  const is = `${written} is sown ${times} times here, and only the first ${MOST_SOWINGS} are told`;
  return [diagnostic("too-many-sowings", at, is, `Write ${MOST_SOWINGS} times or fewer`)];
}
