import type { Schedule } from "../../src/app/build.ts";
import { cropFor } from "../../src/crops/crops.ts";
import { climateOf } from "../../src/engine/climate/climate.ts";
import { type Anchor, anchorKey } from "../../src/engine/growth/anchors.ts";
import type { DateDecision } from "../../src/engine/growth/date-decision.ts";
import type { SowingContext } from "../../src/engine/growth/sowing-context.ts";
import {
  autumnPlantingDay,
  plantingOutDay,
  settingOutDay,
} from "../../src/engine/growth/starting.ts";
import type { Plan } from "../../src/garden/model/plan.ts";

/** Every sowing of every planting as it was told: with the days its tasks were placed on, no diary and nobody named. */
export function grownIn(plan: Plan, told: Schedule): readonly SowingContext[] {
  const climate = climateOf(plan, []);
  const anchors = new Map<string, Anchor>();
  const sowings = new Map<string, Set<number>>();
  for (const { task, day } of told.scheduled) {
    if (!task.sets) continue;
    const { planting, sowing, act } = task.sets;
    anchors.set(anchorKey(planting, sowing, act), {
      ...{ day, from: "placed", basis: task.basis, task: task.id },
    });
    sowings.set(planting, (sowings.get(planting) ?? new Set()).add(sowing));
  }
  return plan.plantings.flatMap((planting) => {
    const crop = cropFor(planting);
    const bed = plan.beds.find(({ key }) => key === planting.bed) ?? null;
    return [...(sowings.get(planting.key) ?? [])].flatMap((sowing) =>
      crop
        ? [
            {
              plan,
              planting,
              crop,
              bed,
              sowing,
              climate: climate.at(bed),
              anchors,
              observations: [],
              around: () => true,
              soFar: null,
            },
          ]
        : [],
    );
  });
}

/** The days a sowing's own facts give it to begin: sown, set out, planted for the winter. */
export function reckonedFor(growing: SowingContext): readonly DateDecision[] {
  const { crop } = growing;
  const days = [
    crop.outdoors ? plantingOutDay(growing, crop.outdoors) : null,
    settingOutDay(growing),
    autumnPlantingDay(growing),
  ];
  return days.flatMap((each) => each ?? []);
}
