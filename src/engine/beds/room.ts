import type { Day } from "../../base/index.ts";
import { CROPS, type Family } from "../../crops/index.ts";
import type { Bed, Plan, Planting } from "../../garden/model/index.ts";
import { familyBefore } from "../rules/families.ts";
import { plantingsIn, type YearCourse } from "../year.ts";
import { type CropChance, chancesIn } from "./crop-chances.ts";
import { type FreeSpace, freeOn } from "./free.ts";
import { occupancyIn } from "./occupancy.ts";
import { seasonPlanOn } from "./season-plan.ts";

/**
 * What can still be started in a bed on a day, as plain JSON. `unknown` are plantings of the year whose days are not
 * known; `away` the families that were there too few years ago. Chances are in the order of the facts, each crop once
 * for every way it may begin; perennials are apart.
 */
export type BedSpace = FreeSpace & {
  readonly bed: string;
  readonly name: string;
  readonly day: Day;
  readonly unknown: readonly string[];
  readonly away: readonly {
    readonly family: Family;
    readonly had: string;
    readonly year: number;
  }[];
  readonly crops: readonly CropChance[];
  readonly perennials: readonly CropChance[];
  /** What is sown to be dug in. */
  readonly greenManures: readonly CropChance[];
};

/** The room of a bed, by its key; null where no plan has such a bed. Calculated anew for the day. */
export function roomIn(year: YearCourse, bedKey: string, day: Day): BedSpace | null {
  const plan = seasonPlanOn(year.plans, day);
  const bed = year.plans.findLast((each) => each.beds.some(({ key }) => key === bedKey))?.beds;
  const found =
    plan.beds.find(({ key }) => key === bedKey) ?? bed?.find(({ key }) => key === bedKey);
  if (!found) return null;
  const plantings = plantingsIn(year);
  const noDays = plantings.filter(
    ({ planting, lives, plan: own }) =>
      planting.bed === bedKey && own.year === plan.year && lives.length === 0,
  );
  const chances = chancesIn(found, { plan, day, observations: year.observations });
  return {
    bed: found.key,
    name: found.name,
    day,
    ...freeOn(found, occupancyIn(found, plantings), day),
    unknown: noDays.map(({ planting }) => nameOf(planting)),
    away: familiesAway(found, plan, year.plans),
    crops: chances.filter(({ purpose }) => purpose === "harvest"),
    perennials: chances.filter(({ purpose }) => purpose === "years"),
    greenManures: chances.filter(({ purpose }) => purpose === "soil"),
  };
}

/** What stands and what is free in each bed of the season's plan, by its key, without what still fits. */
export function freeInBeds(year: YearCourse, day: Day): ReadonlyMap<string, FreeSpace> {
  const plantings = plantingsIn(year);
  const { beds } = seasonPlanOn(year.plans, day);
  return new Map(beds.map((bed) => [bed.key, freeOn(bed, occupancyIn(bed, plantings), day)]));
}

const nameOf = ({ name, written }: Planting): string => name ?? written;

function familiesAway(bed: Bed, { year }: Plan, plans: readonly Plan[]): BedSpace["away"] {
  const one = new Map(CROPS.map((crop) => [crop.family, crop]));
  return [...one].flatMap(([family, crop]) => {
    const had = familyBefore(crop, bed, { year, before: plans });
    return had ? [{ family, had: nameOf(had.planting), year: had.plan.year }] : [];
  });
}
