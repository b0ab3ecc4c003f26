import type { Day } from "../../base/days/day.ts";
import { CROPS, cropFor } from "../../crops/crops.ts";
import type { Crop, Family, Start } from "../../crops/facts.ts";
import type { Fact } from "../../garden/diary/fact.ts";
import type { Bed, Plan, Planting } from "../../garden/model/plan.ts";
import { isRaised } from "../../garden/plan/begin.ts";
import { climateOf } from "../climate/climate.ts";
import type { Growing } from "../growth/growing.ts";
import { type Answer, chanceOf, type Way } from "./chances.ts";
import { rootingChance, winterChance } from "./wintering.ts";

/** A crop that may go into the bed in one way, and what it comes to. `name` is of many, as a list says it. */
export type Chance = Answer & {
  readonly crop: string;
  readonly name: string;
  readonly family: Family;
  readonly way: Way;
  /** Stands for years, so that only its taking root is judged. */
  readonly forYears: boolean;
};

type On = { readonly plan: Plan; readonly day: Day; readonly facts: readonly Fact[] };

/** Every crop of the facts in every way it may begin in a bed, as of a day of that plan's season; in the order of the facts. */
export function chancesIn(bed: Bed, { plan, day, facts }: On): readonly Chance[] {
  const climate = climateOf(plan, facts);
  const alone = {
    plan,
    bed,
    climate,
    sowing: 1,
    anchors: new Map(),
    facts: [],
    around: () => true,
  };
  return CROPS.flatMap((crop) =>
    waysOf(crop).flatMap((way) => {
      const planting = wouldBe(crop, way, { bed, year: plan.year });
      const answer = answerOf({ ...alone, crop: cropFor(planting) ?? crop, planting }, day);
      const { key, many: name, family } = crop;
      return answer
        ? [{ ...answer, crop: key, name, family, way, forYears: crop.perennial !== null }]
        : [];
    }),
  );
}

function answerOf(growing: Growing, day: Day): Answer | null {
  if (growing.crop.perennial) return rootingChance(growing, day);
  return growing.crop.overwinter ? winterChance(growing, day) : chanceOf(growing, day);
}

function waysOf({ starts, settingOut }: Crop): readonly Way[] {
  return [...new Set(starts.map(wayOf))].filter((way) => way !== "plants" || settingOut !== null);
}

function wayOf(start: Start): Way {
  if (start === "seed outdoors") return "seed";
  return isRaised(start) ? "plants" : start;
}

/** A planting that the plan does not hold, as the facts have it. */
function wouldBe(
  { key, many }: Crop,
  way: Way,
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
    under: [],
    sproutedFirst: false,
    after: null,
    without: [],
    whose: null,
    at: bed.at,
  };
}
