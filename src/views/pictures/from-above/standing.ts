import { capital, type Day, earliest } from "../../../base/index.ts";
import type { PlantingRecord } from "../../../engine/index.ts";
import { type Planting, seasonOf } from "../../../garden/model/index.ts";
import { plainLine } from "../svg.ts";
import type { BedsSketch, StandingYears } from "./sketch.ts";

/** One sowing in its bed: from the day it goes in to the day before the last of it is gone. */
export type StandingSowing = { readonly from: Day; readonly gone: Day };

/** A planting that is in a bed this season, with all its sowings in their order, never none. */
export type Standing = Pick<PlantingRecord, "spacing"> &
  Pick<Planting, "key" | "amount" | "after"> & {
    /** As its label has it: `Beets`. */
    readonly name: string;
    readonly sowings: readonly StandingSowing[];
  };

/** What is in each bed at any time of the plan's season, or on the day, in the order of the plans, by the bed's key; null: in none of its beds. */
export type StandingByBed = ReadonlyMap<string | null, readonly Standing[]>;

/** Everything that stands in the garden this season, bed by bed; a bed with nothing in it is left out. */
export function standingByBed({
  year,
  plan,
  day,
}: Pick<BedsSketch, "year" | "plan" | "day">): StandingByBed {
  const keys = new Set(plan.beds.map(({ key }) => key));
  const season = seasonOf(plan);
  const [from, till] = [Math.min(day, season.from), Math.max(day, season.to)];
  const byBed = new Map<string | null, StandingVariety[]>();
  for (const found of recordsOf(year)) {
    const standing = standingOf(found);
    const shows = standing.sowings.some((each) => each.from <= till && each.gone > from);
    if (!shows) continue;
    const { bed } = found.record;
    const key = bed !== null && keys.has(bed) ? bed : null;
    byBed.set(key, [...(byBed.get(key) ?? []), standing]);
  }
  const named = (all: readonly StandingVariety[]) =>
    all.map((each) => ({ ...each, name: labelOf(each, all) }));
  return new Map([...byBed].map(([key, all]) => [key, named(all)]));
}

type PlantingWithRecord = { readonly planting: Planting; readonly record: PlantingRecord };

function recordsOf({ plans, seasons }: StandingYears): readonly PlantingWithRecord[] {
  return plans.flatMap((plan) => {
    const plantings = new Map(plan.plantings.map((planting) => [planting.key, planting]));
    const records = seasons.find(({ year }) => year === plan.year)?.plantings ?? [];
    return records.flatMap((record) => {
      const planting = plantings.get(record.planting);
      return planting ? [{ planting, record }] : [];
    });
  });
}

type StandingVariety = Standing & Pick<Planting, "variety">;

function standingOf({ planting, record }: PlantingWithRecord): StandingVariety {
  const { key, amount, after, variety } = planting;
  const sowings = record.sowings.flatMap(({ placed, gone }) =>
    placed === null ? [] : [{ from: placed, gone }],
  );
  return {
    ...{ key, amount, after, variety, sowings },
    name: capital(plainLine(record.name)),
    spacing: record.spacing,
  };
}

/** Its name, with its variety where another one in the bed is called the same. */
function labelOf({ key, name, variety }: StandingVariety, all: readonly StandingVariety[]): string {
  const alike = all.some((other) => other.key !== key && other.name === name);
  return alike && variety !== null ? `${name} (${plainLine(variety)})` : name;
}

/** Whether any of it stands on a day. */
export function standsOn({ sowings }: Standing, day: Day): boolean {
  return sowings.some(({ from, gone }) => from <= day && day < gone);
}

/** Whether two of a bed are ever there at once. */
export function meet(a: Standing, b: Standing): boolean {
  return a.sowings.some((one) =>
    b.sowings.some((other) => one.from < other.gone && other.from < one.gone),
  );
}

/** The day of the plan's season on which most of its own plantings stand, the first of them; the season's first where none ever does. */
export function fullestDay(sketch: Pick<BedsSketch, "year" | "plan">): Day {
  const season = seasonOf(sketch.plan);
  const all = [...standingByBed({ ...sketch, day: season.from }).values()].flat();
  const days = all.flatMap(({ sowings }) => sowings.map(({ from }) => from));
  const within = days.filter((day) => day >= season.from && day <= season.to);
  const count = (day: Day) => all.filter((each) => standsOn(each, day)).length;
  const counted = within.map((day) => ({ day, count: count(day) }));
  const most = Math.max(0, ...counted.map((each) => each.count));
  const fullest = counted.filter((each) => each.count === most).map(({ day }) => day);
  return fullest.length === 0 ? season.from : earliest(...fullest);
}
