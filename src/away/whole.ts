import type { Season } from "../beds/lives.ts";
import { climateOf } from "../climate/climate.ts";
import { cropFor } from "../crops/crops.ts";
import type { Anchors } from "../growth/anchors.ts";
import type { Growing } from "../growth/growing.ts";
import { remembered } from "../growth/remembered.ts";
import type { Plan, Planting } from "../plan/plan.ts";
import type { WholeGarden } from "../practices/practice.ts";
import { sowingNumbers } from "../practices/repeat.ts";
import { anchored } from "../schedule/anchored.ts";
import { householdOf } from "../schedule/household.ts";

/**
 * A plan's year as it grows after what has been placed: the days its acts have come to, from the diary or the feed's
 * own tasks. What daily needs are read from; nothing is placed anew.
 */
export function wholeOf(plan: Plan, season: Season): WholeGarden {
  const plantings = season.plans.flatMap((each) => each.plantings);
  const anchors = anchored(remembered(plantings, season.facts), season.placed);
  const climate = climateOf(plan, season.facts);
  const { around } = householdOf(plan.people, plan.away);
  const one = (planting: Planting) => sowingsOf(planting, { plan, season, anchors });
  const growings = plan.plantings.flatMap(one).map((each) => ({ ...each, climate, around }));
  return { plan, climate, growings: growings.flatMap(again), anchors, around };
}

type Grown = { readonly plan: Plan; readonly season: Season; readonly anchors: Anchors };

/** The first sowing of a planting; none where the facts do not know the crop. */
function sowingsOf(planting: Planting, { plan, season, anchors }: Grown) {
  const crop = cropFor(planting);
  if (!crop) return [];
  const bed = plan.beds.find(({ key }) => key === planting.bed) ?? null;
  const facts = season.facts.filter((fact) => "planting" in fact && fact.planting === planting.key);
  return [{ plan, planting, crop, bed, sowing: 1, anchors, facts }];
}

/** It and each time it is sown again. */
function again(first: Growing): readonly Growing[] {
  return sowingNumbers(first).map((sowing) => (sowing === 1 ? first : { ...first, sowing }));
}
