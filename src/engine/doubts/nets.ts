import type { Problem } from "../../base/index.ts";
import { cropFor } from "../../crops/index.ts";
import { diagnostic } from "../../garden/index.ts";
import type { Plan, Planting } from "../../garden/model/index.ts";
import { type Covering, coversOver, isHost } from "../beds/covers.ts";
import { coversIn, regionOf } from "../rules/regions.ts";

/**
 * Pests that come from elsewhere in spring, so that a net traps none of them.
 * Source: Wilson, Colorado State University Extension, Floating row covers complicate insect management, for insects
 * that winter beside the garden; New England Vegetable Management Guide, Insects that can be controlled by row covers,
 * which asks for no rotation against cucumber beetles.
 */
const FROM_ELSEWHERE: readonly string[] = ["birds", "cucumber beetles"];

/**
 * `net-over-hosts` at each planting under a net or fabric in a bed that held hosts of the same pest the year before: they
 * come up from the soil under it. By year, in the order of the plans; bags get new soil and have none.
 * Source: University of Vermont Extension Master Gardeners, column of 19 May 2019, against leaf miners; Wilson, Colorado
 * State University Extension, as above, for what winters in the soil.
 */
export function netDoubts(plans: readonly Plan[]): readonly Problem[] {
  return plans.flatMap((plan) => {
    const last = plans.find(({ year }) => year === plan.year - 1);
    return last ? plan.plantings.flatMap((planting) => trapDoubt(planting, plan, last)) : [];
  });
}

function trapDoubt(planting: Planting, plan: Plan, last: Plan): readonly Problem[] {
  const crop = cropFor(planting);
  const bed = plan.beds.find(({ key }) => key === planting.bed);
  if (!crop || !bed || bed.kind === "bags" || planting.inSince !== null) return [];
  const covers = bed.kind === "greenhouse" ? [] : coversIn(regionOf(plan.site), crop);
  for (const cover of coversOver(planting, { ...crop, covers })) {
    const host = hostIn(last, bed.key, cover.against);
    if (host) return [trapProblem({ planting, bed: bed.name, cover, host, last })];
  }
  return [];
}

function hostIn(last: Plan, bed: string, pest: string): Planting | null {
  if (FROM_ELSEWHERE.includes(pest)) return null;
  const isHere = (other: Planting) => {
    const crop = cropFor(other);
    return other.bed === bed && crop !== null && isHost(crop, pest);
  };
  return last.plantings.find(isHere) ?? null;
}

type Trap = {
  readonly planting: Planting;
  readonly bed: string;
  readonly cover: Covering;
  readonly host: Planting;
  readonly last: Plan;
};

function trapProblem({ planting, bed, cover, host, last }: Trap): Problem {
  const pests = cover.against.startsWith("pests") ? `the ${cover.against}` : cover.against;
  return diagnostic(
    "net-over-hosts",
    planting.at,
    `${cover.with === "net" ? "The net" : "The fabric"} over ${planting.written} would shut in ${pests}: ${bed} had ${host.written} last year (${last.file}, line ${host.at.line}), and they winter in its soil`,
    `Grow ${planting.written} in another bed, or leave the cover off there`,
  );
}
