import { type Day, latest } from "../../base/days/day.ts";
import { cropFor } from "../../crops/crops.ts";
import type { Crop } from "../../crops/facts.ts";
import type { Observation } from "../../garden/diary/observation.ts";
import type { Plan, Planting } from "../../garden/model/plan.ts";
import { climateOf } from "../climate/climate.ts";
import { type Anchors, anchorKey } from "../growth/anchors.ts";
import { diaryAnchors } from "../growth/diary-anchors.ts";
import { isReached } from "../growth/milestones.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { upMilestone } from "../growth/up.ts";
import type { WholeGarden } from "../practices/practice.ts";
import type { ScheduledTask } from "../schedule/scheduled-task.ts";
import { withTaskAnchors } from "../schedule/task-anchors.ts";
import { type FullAndEnd, fullAndEnd } from "./ends.ts";

/** All years of a garden in year order, with what was placed and what the diary says. */
export type GardenSeason = {
  readonly plans: readonly Plan[];
  readonly scheduled: readonly ScheduledTask[];
  readonly observations: readonly Observation[];
  /** Each year as it grows after what was placed, where the telling that placed it has it at hand. */
  readonly wholes?: ReadonlyMap<number, WholeGarden>;
};

/** One sowing from the day it goes in to the day the last of it is gone; days in that order. */
export type Life = FullAndEnd & {
  /** 1 for the first sowing. */
  readonly sowing: number;
  /** Sown, planted, or set out where it was bought. */
  readonly starts: Day;
  /** When it left the house or the greenhouse; null where it grows in its place from the start. */
  readonly out: Day | null;
  /** Usually shows above the soil by then. */
  readonly up: Day;
};

/** A planting with its sowings in order; none where nothing is known of the crop's days, or it has none this season. */
export type PlantingLives = {
  readonly planting: Planting;
  readonly crop: Crop | null;
  readonly plan: Plan;
  readonly lives: readonly Life[];
};

/** Every planting of every year, in the order of the plans. */
export function plantingLivesOf(season: GardenSeason): readonly PlantingLives[] {
  const anchors = anchorsOf(season);
  return season.plans.flatMap((plan) => {
    const climate = climateOf(plan, season.observations);
    return plan.plantings.map((planting) => {
      const crop = cropFor(planting);
      const whole = { season, plan, planting, anchors, climate };
      const numbers = sowingsOf(season.scheduled, planting);
      const lives = crop ? numbers.flatMap((sowing) => lifeOf({ ...whole, crop, sowing })) : [];
      return { planting, crop, plan, lives };
    });
  });
}

/** The days of acts: as the diary saw them, else as their tasks were placed. */
export function anchorsOf({ plans, scheduled, observations }: GardenSeason): Anchors {
  const plantings = plans.flatMap((plan) => plan.plantings);
  return withTaskAnchors(diaryAnchors(plantings, observations), scheduled);
}

/** Numbers of a planting's sowings, rising; none where it is never sown or planted. */
function sowingsOf(scheduled: readonly ScheduledTask[], planting: Planting): readonly number[] {
  const numbers = new Set(planting.inSince === null ? [] : [1]);
  for (const { task } of scheduled)
    if (task.sets?.planting === planting.key && task.sets.act !== "end")
      numbers.add(task.sets.sowing);
  return [...numbers].sort((a, b) => a - b);
}

type LifeInput = Pick<
  SowingContext,
  "plan" | "planting" | "crop" | "sowing" | "climate" | "anchors"
> & {
  readonly season: GardenSeason;
};

function lifeOf(input: LifeInput): readonly Life[] {
  const { plan, planting, sowing, anchors } = input;
  const day = (act: "start" | "set out" | "end") =>
    anchors.get(anchorKey(planting.key, sowing, act))?.day ?? null;
  const [start, out] = [day("start"), day("set out")];
  const starts = start ?? out;
  if (starts === null) return [];
  const bed = plan.beds.find((each) => each.key === planting.bed) ?? null;
  const observations = input.season.observations.filter(
    (observation) => "planting" in observation && observation.planting === planting.key,
  );
  const context: SowingContext = { ...input, bed, observations, around: () => true };
  const up = upDay(context, starts);
  const moved = start !== null && out !== null && out > start ? out : null;
  const inPlace = latest(up, moved ?? up);
  const rest = fullAndEnd(context, input.season.scheduled, {
    inPlace,
    end: day("end"),
  });
  return [{ sowing, starts, out: moved, up, ...rest }];
}

/** When it shows; plants that were bought show at once. */
function upDay(context: SowingContext, starts: Day): Day {
  const up = upMilestone(context);
  return context.planting.start === "plants" || !isReached(up) ? starts : latest(starts, up.usual);
}
