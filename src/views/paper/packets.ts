import { anchorsOf, type GardenSeason } from "../../engine/beds/lives.ts";
import { climateOf } from "../../engine/climate/climate.ts";
import { clockOf } from "../../engine/growth/clock.ts";
import { ownWarmth } from "../../engine/growth/own-warmth.ts";
import type { SowingContext } from "../../engine/growth/sowing-context.ts";
import { packetWarmth } from "../../engine/growth/warmth.ts";
import type { Plan } from "../../garden/model/plan.ts";
import type { PlantingHistory } from "./planting-history.ts";

/** What a planting took here beside its packet, in the packet's own days; next year's reckoning goes by it. */
export type PacketComparison = {
  readonly planting: PlantingHistory["planting"];
  readonly packet: number;
  readonly took: number;
};

/** The year as it was told. */
type ComparisonSeason = GardenSeason & { readonly plan: Plan };

/**
 * The garden's own days of each planting whose first ripe day the diary has, just as growth/own.ts will give them to a
 * planting of the same name next year. None for a crop that does not grow by warmth, or where the days are not believed.
 */
export function packetComparisonsOf(
  histories: readonly PlantingHistory[],
  season: ComparisonSeason,
): readonly PacketComparison[] {
  const anchors = anchorsOf(season);
  const climate = climateOf(season.plan, season.observations);
  return histories.flatMap(({ planting, crop, plan, sowings }) => {
    if (!crop?.warmth || plan.year !== season.plan.year || sowings.length === 0) return [];
    const bed = plan.beds.find(({ key }) => key === planting.bed) ?? null;
    const own = { sowing: 1, climate, anchors, observations: [], around: () => true };
    return compareWithPacket({ plan, planting, crop, bed, ...own });
  });
}

function compareWithPacket(context: SowingContext): readonly PacketComparison[] {
  const { plan, planting, crop } = context;
  const clock = clockOf(context);
  if ("none" in clock || !crop.warmth) return [];
  const year = plan.year + 1;
  const next: SowingContext = {
    ...context,
    plan: { ...plan, year },
    planting: { ...planting, key: planting.key.replace(/^\d+/, String(year)) },
  };
  const own = ownWarmth(next, clock.days);
  if (own?.year !== plan.year) return [];
  const took = Math.round(own.warmth / packetWarmth(1, crop.warmth));
  return [{ planting, packet: Math.round(clock.days), took }];
}
