import type { Day } from "../../base/index.ts";
import { CROPS, type Crop, cropFor, type Family, type Start } from "../../crops/index.ts";
import type { Observation } from "../../garden/index.ts";
import { type Bed, isRaised, type Plan, type Planting } from "../../garden/model/index.ts";
import { climateOf } from "../climate/climate.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import { chanceOf, type StartChance, type StartMethod } from "./chances.ts";
import { rootingChance, winterChance } from "./wintering.ts";

/** A crop that may go into the bed in one way, with its chance. `name` is its plural, for a list. */
export type CropChance = StartChance & {
  readonly crop: string;
  readonly name: string;
  readonly family: Family;
  readonly way: StartMethod;
  /** What it is grown for: a harvest this year, years of them (it only has to take root), or to feed the soil. */
  readonly purpose: "harvest" | "years" | "soil";
};

function purposeOf({ perennial, digInDays }: Crop): CropChance["purpose"] {
  if (perennial) return "years";
  return digInDays ? "soil" : "harvest";
}

type ChanceInput = {
  readonly plan: Plan;
  readonly day: Day;
  readonly observations: readonly Observation[];
};

/**
 * Every crop of the facts in every way that it may begin in a bed, on a day of that plan's season; in the order of the
 * facts.
 */
export function chancesIn(
  bed: Bed,
  { plan, day, observations }: ChanceInput,
): readonly CropChance[] {
  const climate = climateOf(plan, observations).at(bed);
  const alone = {
    plan,
    bed,
    climate,
    sowing: 1,
    anchors: new Map(),
    observations: [],
    around: () => true,
    soFar: null,
  };
  return CROPS.flatMap((crop) =>
    startMethodsOf(crop).flatMap((way) => {
      const planting = assumedPlanting(crop, way, { bed, year: plan.year });
      const answer = answerOf({ ...alone, crop: cropFor(planting) ?? crop, planting }, day);
      const { key, many: name, family } = crop;
      return answer ? [{ ...answer, crop: key, name, family, way, purpose: purposeOf(crop) }] : [];
    }),
  );
}

function answerOf(context: SowingContext, day: Day): StartChance | null {
  if (context.crop.perennial) return rootingChance(context, day);
  return context.crop.overwinter ? winterChance(context, day) : chanceOf(context, day);
}

function startMethodsOf({ starts, settingOut }: Crop): readonly StartMethod[] {
  return [...new Set(starts.map(startMethodOf))].filter(
    (way) => way !== "plants" || settingOut !== null,
  );
}

function startMethodOf(start: Start): StartMethod {
  if (start === "seed outdoors") return "seed";
  return isRaised(start) ? "plants" : start;
}

/** A planting that is not in the plan, made from the facts. */
function assumedPlanting(
  { key, many }: Crop,
  way: StartMethod,
  { bed, year }: { readonly bed: Bed; readonly year: number },
): Planting {
  return {
    key: `${year}/bed/${bed.key}/${key}`,
    crop: key,
    known: true,
    like: null,
    written: many,
    name: null,
    variety: null,
    bed: bed.key,
    amount: null,
    start: way === "seed" ? "seed outdoors" : way,
    days: null,
    hardenDays: null,
    fixed: { start: null, out: null },
    within: null,
    notBefore: null,
    inSince: null,
    repeat: null,
    under: bed.covers,
    has: [],
    mulch: bed.mulch,
    cutAgain: false,
    sproutedFirst: false,
    after: null,
    without: [],
    whose: null,
    at: bed.at,
  };
}
