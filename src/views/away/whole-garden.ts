import { anchorsOf, type GardenSeason } from "../../engine/beds/lives.ts";
import { climateOf } from "../../engine/climate/climate.ts";
import type { WholeGarden } from "../../engine/practices/practice.ts";
import { sowingContextsOf } from "../../engine/practices/repeat.ts";
import { householdOf } from "../../engine/schedule/household.ts";
import type { Plan } from "../../garden/model/plan.ts";

/**
 * A plan's year as it grows after what has been scheduled: the days its acts have come to, from the diary or the feed's
 * own tasks. What daily needs are read from; nothing is scheduled anew.
 */
export function wholeGardenOf(plan: Plan, season: GardenSeason): WholeGarden {
  const known = season.wholes?.get(plan.year);
  if (known) return known;
  const anchors = anchorsOf(season);
  const climate = climateOf(plan, season.observations);
  const { around } = householdOf(plan.people, plan.away);
  const shared = { climate, anchors, observations: season.observations, around };
  const contexts = plan.plantings.flatMap((planting) => sowingContextsOf(planting, plan, shared));
  return { plan, climate, contexts, anchors, observations: season.observations, around };
}
