import type { Day } from "../base/index.ts";
import { type Crop, cropFor } from "../crops/index.ts";
import type { Observation } from "../garden/index.ts";
import type { KnownWeather, Plan, Planting } from "../garden/model/index.ts";
import type { PlantingRecord, SowingRecord } from "./beds/planting-record.ts";
import type { WateringWeek } from "./beds/watering-weeks.ts";
import type { ClimateData } from "./climate/climate.ts";
import type { PacketComparison } from "./growth/packet.ts";
import type { Horizon } from "./schedule/horizon.ts";
import type { PublishedState, ScheduledTask } from "./schedule/scheduled-task.ts";

/** Each task's due day, by id, on this site in a mean year. */
export type Baseline = Readonly<Record<string, Day>>;

/**
 * A garden: its years' plans in year order, not empty, all of one garden id. `baseline` is what `buildBaseline` gave
 * for these plans, where it is available; it costs as much as a build and changes only when a plan does.
 */
export type Garden = {
  readonly id: string;
  readonly plans: readonly Plan[];
  readonly baseline?: Baseline;
  /** What is known of this year's weather; left out where nobody was asked. */
  readonly weather?: KnownWeather | null;
};

/**
 * The engine's result for a garden: everything that feeds, pages, pictures and paper show, so that none of them
 * calculates growth. Plain JSON: it can be stored in pieces and read back without the engine.
 */
export type Year = {
  /** The garden's id. */
  readonly garden: string;
  /** As they were written, in year order, not empty. */
  readonly plans: readonly Plan[];
  readonly horizon: Horizon;
  /** The valid observations of the diaries of all years, in day order. */
  readonly observations: readonly Observation[];
  readonly baseline: Baseline;
  /** What was published of the garden before this build. */
  readonly published: PublishedState;
  /** Every task of every year on its day, in the order of the plans. */
  readonly scheduled: readonly ScheduledTask[];
  /** One for each plan, in their order. */
  readonly seasons: readonly Season[];
};

/** What stands where and when, season by season, without any task: enough for pictures, frost tonight and room. */
export type YearCourse = Pick<Year, "plans" | "observations" | "seasons">;

/** The season of one plan: its climate, and the course of its plantings. */
export type Season = {
  readonly year: number;
  readonly climate: ClimateData;
  /** In the plan's order. */
  readonly plantings: readonly PlantingRecord[];
  /**
   * The weeks in which beds need water, in order, where the plan has absences; else empty, because only a neighbour
   * needs them.
   */
  readonly wateringWeeks: readonly WateringWeek[];
};

/** A planting with its plan, the facts of its crop, null where they are not known, and its course. */
export type PlantingInYear = {
  readonly planting: Planting;
  readonly crop: Crop | null;
  readonly plan: Plan;
  readonly lives: readonly SowingRecord[];
  readonly covers: PlantingRecord["covers"];
  readonly hardening: PlantingRecord["hardening"];
  readonly packet: PacketComparison | null;
};

/** Every planting of every year, in the order of the plans. */
export function plantingsIn(year: YearCourse): readonly PlantingInYear[] {
  return year.plans.flatMap((plan) => {
    const records = new Map(
      seasonFor(year, plan).plantings.map((record) => [record.planting, record]),
    );
    return plan.plantings.map((planting) => {
      const record = records.get(planting.key);
      return {
        planting:
          record && record.bed !== planting.bed ? { ...planting, bed: record.bed } : planting,
        crop: cropFor(planting),
        plan,
        lives: record?.sowings ?? [],
        covers: record?.covers ?? [],
        hardening: record?.hardening ?? [],
        packet: record?.packet ?? null,
      };
    });
  });
}

/** The season of one of the year's plans. Throws for a plan that is none of them. */
export function seasonFor(
  { seasons }: Pick<Year, "seasons">,
  { year }: Pick<Plan, "year">,
): Season {
  const season = seasons.find((each) => each.year === year);
  if (!season) throw new RangeError(`no plan of ${year} in this garden`);
  return season;
}
