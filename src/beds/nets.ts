import { type Day, latest } from "../days/day.ts";
import type { Planting } from "../plan/plan.ts";
import { coversOver } from "./covers.ts";
import type { Grown } from "./lives.ts";

/** Plantings of one bed that one cover serves, two or more in the plans' order, and the days it is needed, both inclusive. */
export type SharedNet = {
  readonly bed: string;
  readonly with: "net" | "fabric";
  readonly against: string;
  readonly plantings: readonly Planting[];
  readonly from: Day;
  readonly to: Day;
};

/** A planting that wants one cover for some days. */
type Wanted = Omit<SharedNet, "plantings"> & { readonly planting: Planting };

/**
 * What can share a net or fabric: plantings of one bed with the same pest that stand there at the same time, or one into
 * the time of the next, so that the cover stays on. In the order of the first to want it; what stands alone is left out.
 * Where one wants a net and another fabric, fabric serves both.
 */
export function sharedNets(grown: readonly Grown[]): readonly SharedNet[] {
  const groups = new Map<string, Wanted[]>();
  for (const wanted of grown.flatMap(wantedBy)) {
    const key = `${wanted.bed}|${wanted.against}`;
    groups.set(key, [...(groups.get(key) ?? []), wanted]);
  }
  return [...groups.values()].flatMap(runsOf).filter(({ plantings }) => plantings.length > 1);
}

/** From when the first of it stands in its bed to the end of the last; nothing where it stands in none or has no days. */
function wantedBy({ planting, crop, lives }: Grown): readonly Wanted[] {
  const { bed } = planting;
  if (bed === null || !crop) return [];
  return lives.flatMap((life) =>
    coversOver(planting, crop).map((cover) => ({
      ...cover,
      bed,
      planting,
      from: life.out ?? life.starts,
      to: life.ends,
    })),
  );
}

/** Wants that overlap, one after another, as one run each. */
function runsOf(wants: readonly Wanted[]): readonly SharedNet[] {
  const runs: SharedNet[] = [];
  for (const want of [...wants].sort((a, b) => a.from - b.from)) {
    const run = runs.at(-1);
    if (run && want.from <= run.to) runs[runs.length - 1] = joined(run, want);
    else runs.push({ ...withoutPlanting(want), plantings: [want.planting] });
  }
  return runs;
}

function withoutPlanting({ bed, with: thing, against, from, to }: Wanted) {
  return { bed, with: thing, against, from, to };
}

function joined(run: SharedNet, { planting, with: thing, to }: Wanted): SharedNet {
  const plantings = run.plantings.includes(planting) ? run.plantings : [...run.plantings, planting];
  const both = thing === "fabric" ? thing : run.with;
  return { ...run, with: both, plantings, to: latest(run.to, to) };
}
