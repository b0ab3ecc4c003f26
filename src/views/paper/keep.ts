import { anchorsOf, type Season } from "../../engine/beds/lives.ts";
import { climateOf } from "../../engine/climate/climate.ts";
import { clockOf } from "../../engine/growth/clock.ts";
import type { Growing } from "../../engine/growth/growing.ts";
import { ownWarmth } from "../../engine/growth/own.ts";
import { packetWarmth } from "../../engine/growth/warmth.ts";
import type { Plan } from "../../garden/model/plan.ts";
import type { Went } from "./stages.ts";

/** What a planting took here beside its packet, in the packet's own days; next year's reckoning goes by it. */
export type Kept = {
  readonly planting: Went["planting"];
  readonly packet: number;
  readonly took: number;
};

/** The year as it was told. */
type Told = Season & { readonly plan: Plan };

/**
 * The garden's own days of each planting whose first ripe day the diary has, just as growth/own.ts will give them to a
 * planting of the same name next year. None for a crop that does not grow by warmth, or where the days are not believed.
 */
export function keptOf(went: readonly Went[], told: Told): readonly Kept[] {
  const anchors = anchorsOf(told);
  const climate = climateOf(told.plan, told.facts);
  return went.flatMap(({ planting, crop, plan, sowings }) => {
    if (!crop?.warmth || plan.year !== told.plan.year || sowings.length === 0) return [];
    const bed = plan.beds.find(({ key }) => key === planting.bed) ?? null;
    const own = { sowing: 1, climate, anchors, facts: [], around: () => true };
    return keptBy({ plan, planting, crop, bed, ...own });
  });
}

function keptBy(growing: Growing): readonly Kept[] {
  const { plan, planting, crop } = growing;
  const clock = clockOf(growing);
  if ("none" in clock || !crop.warmth) return [];
  const year = plan.year + 1;
  const next: Growing = {
    ...growing,
    plan: { ...plan, year },
    planting: { ...planting, key: planting.key.replace(/^\d+/, String(year)) },
  };
  const own = ownWarmth(next, clock.days);
  if (own?.year !== plan.year) return [];
  const took = Math.round(own.warmth / packetWarmth(1, crop.warmth));
  return [{ planting, packet: Math.round(clock.days), took }];
}
