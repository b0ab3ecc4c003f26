import { anchorsOf, type Season } from "../../engine/beds/lives.ts";
import { climateOf } from "../../engine/climate/climate.ts";
import type { WholeGarden } from "../../engine/practices/practice.ts";
import { growingsOf } from "../../engine/practices/repeat.ts";
import { householdOf } from "../../engine/schedule/household.ts";
import type { Plan } from "../../garden/model/plan.ts";

/**
 * A plan's year as it grows after what has been placed: the days its acts have come to, from the diary or the feed's
 * own tasks. What daily needs are read from; nothing is placed anew.
 */
export function wholeOf(plan: Plan, season: Season): WholeGarden {
  const known = season.wholes?.get(plan.year);
  if (known) return known;
  const anchors = anchorsOf(season);
  const climate = climateOf(plan, season.facts);
  const { around } = householdOf(plan.people, plan.away);
  const shared = { climate, anchors, facts: season.facts, around };
  const growings = plan.plantings.flatMap((planting) => growingsOf(planting, plan, shared));
  return { plan, climate, growings, anchors, facts: season.facts, around };
}
