import { type Day, dayOrThrow, earliest, latest, plus, weekdayOf } from "../../base/index.ts";
import type { Observation } from "../../garden/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import type { SowingContext } from "../growth/sowing-context.ts";
import {
  coefficientOn,
  type DailyWater,
  type DrinkingPeriod,
  drinkingPeriodOf,
  spreadOn,
  usualWaterOf,
  waterAt,
} from "../growth/thirst.ts";
import type { WholeGarden } from "./practice.ts";

/** A need below which a bed is left alone for the week [mm]. Source: house rule; a quarter of an inch. */
export const LEAST_MM = 6;

/** What some bed must need for the week to be told in a garden without any drip lines [mm]. Source: house rule; over half an inch is worth carrying. */
export const LEAST_BY_HAND_MM = 15;

/** Mean air [°C] from which a week is told where its need is not known. Source: house rule; below it beds lose little. */
const WARM_ENOUGH_C = 12;

/**
 * Mean air [°C] under which a bed is not told: where the rain is known, growth all but stands still; where it is not,
 * winter's wet and the showers of spring still serve. Source: house rule.
 */
const TOO_COLD_C = { rainKnown: 5, rainUnknown: 10 } as const;

/**
 * A bed's need in a week [mm of its ground, of the bags' own for bags]; null where it cannot be calculated. `bed` null: what
 * stands in no bed.
 */
export type WaterNeed = { readonly bed: Bed | null; readonly mm: number | null };

/**
 * A week, by its Monday, in which beds need water, with each bed that does. `number` counts from the year's first week,
 * as ISO 8601 has it, on into the next year; it is the same whatever is planted.
 */
export type DryWeek = {
  readonly number: number;
  readonly monday: Day;
  readonly needs: readonly WaterNeed[];
  /** The day on which what fell is used up; the Monday where nothing is known of the rain. */
  readonly due: Day;
  /** Rain of the week that is measured or forecast [mm]; null where less than half of its days are known. */
  readonly rainMm: number | null;
};

/** What grows in one bed, or in none where that is null. */
type ThirstyBed = {
  readonly bed: Bed | null;
  readonly drinkers: readonly {
    readonly growing: SowingContext;
    readonly drinking: DrinkingPeriod;
  }[];
};

/**
 * The weeks in which the garden wants watering, in order, from the first Monday on which anything grows;
 * none for plantings that go without watering.
 * Source: Allen and others, FAO 56, 1998, as in growth/thirst.ts; which weeks are worth telling, house rule.
 */
export function dryWeeksOf(garden: WholeGarden): readonly DryWeek[] {
  const known = byGarden.get(garden) ?? calculateWeeks(garden);
  byGarden.set(garden, known);
  return known;
}

/** The watering tasks and the absences ask for the weeks of the same garden. */
const byGarden = new WeakMap<WholeGarden, readonly DryWeek[]>();

function calculateWeeks(garden: WholeGarden): readonly DryWeek[] {
  const beds = thirstyBedsOf(garden);
  const waterOn = usualWaterOf(garden.plan.site, garden.climate);
  return mondaysOf(beds).flatMap((monday) => {
    const middle = plus(monday, TO_MIDDLE);
    const usual = waterOn === null ? null : weekWater(garden, monday, waterOn);
    const rainMm = knownRainMm(garden, monday, usual?.rainMm ?? 0);
    if (usual === null && (rainMm ?? 0) >= ENOUGH_MM) return [];
    const water = withMeasuredRain(withKnownRain(usual, rainMm), garden.observations, monday);
    const thirsty = beds
      .flatMap((each) => waterNeedOf(each, middle, water))
      .filter((need) => isThirsty(garden, middle, need));
    const needs = worthWatering(garden, thirsty);
    if (needs.length === 0) return [];
    const due = rainMm === null ? monday : usedUpOn(garden, monday, { needs, rainMm, usual });
    return [{ number: weekNumber(garden.plan.year, monday), monday, needs, due, rainMm }];
  });
}

/** Rain of a week after which none is told where the need is not known [mm]. Source: common practice: an inch a week. */
const ENOUGH_MM = 25;

/** A day's water in a week: that of its Thursday; where days of it are known, the mean of all of them. */
function weekWater(
  { climate }: WholeGarden,
  monday: Day,
  waterOn: (day: Day) => DailyWater,
): DailyWater {
  const middle = waterOn(plus(monday, TO_MIDDLE));
  const days = Array.from({ length: WEEK }, (_, i) => plus(monday, i));
  if (!days.some(climate.isObserved)) return middle;
  const grassMm = days.reduce((sum, day) => sum + waterOn(day).grassMm, 0) / WEEK;
  return { ...middle, grassMm };
}

/** The first day of a week on which the rain that fell till then does not serve the thirstiest bed; bags and glass want it by the day. */
function usedUpOn(
  { climate }: WholeGarden,
  monday: Day,
  {
    needs,
    rainMm,
    usual,
  }: Pick<DryWeek, "needs"> & { readonly rainMm: number; readonly usual: DailyWater | null },
): Day {
  const known = needs.flatMap(({ mm }) => mm ?? []);
  if (
    known.length === 0 ||
    needs.some(({ bed }) => bed?.kind === "bags" || bed?.kind === "greenhouse")
  )
    return monday;
  const aDay = (Math.max(...known) + rainMm) / WEEK;
  const rainOn = (day: Day) => climate.rainMm(day) ?? usual?.rainMm ?? 0;
  let left = 0;
  for (let back = 1; back <= STILL_WET_DAYS; back++)
    left += climate.rainMm(plus(monday, -back)) ?? 0;
  for (let day = monday; day < plus(monday, WEEK); day = plus(day, 1)) {
    left += rainOn(day) - aDay;
    if (left < 0) return day;
  }
  return plus(monday, WEEK - 1);
}

/** Days of a week, and from its Monday to the Thursday that stands for all of them: usual years change slowly. */
const WEEK = 7;
const TO_MIDDLE = 3;

function thirstyBedsOf({ contexts, anchors }: WholeGarden): readonly ThirstyBed[] {
  const byBed = new Map<string | null, ThirstyBed>();
  for (const context of contexts) {
    const drinking = context.planting.without.includes("water")
      ? null
      : drinkingPeriodOf(context, anchors);
    if (!drinking) continue;
    const key = context.bed?.key ?? null;
    const drinkers = [...(byBed.get(key)?.drinkers ?? []), { growing: context, drinking }];
    byBed.set(key, { bed: byBed.get(key)?.bed ?? context.bed, drinkers });
  }
  return [...byBed.values()];
}

function mondaysOf(beds: readonly ThirstyBed[]): readonly Day[] {
  const all = beds.flatMap(({ drinkers }) => drinkers.map(({ drinking }) => drinking));
  if (all.length === 0) return [];
  const first = earliest(...all.map(({ from }) => from));
  const last = latest(...all.map(({ to }) => to));
  const mondays: Day[] = [];
  for (let day = plus(first, (8 - weekdayOf(first)) % WEEK); day <= last; day = plus(day, WEEK))
    mondays.push(day);
  return mondays;
}

function weekNumber(year: number, monday: Day): number {
  const fourth = dayOrThrow(year, 1, 4);
  return (monday - plus(fourth, 1 - weekdayOf(fourth))) / WEEK + 1;
}

/** Known days of a week from which its rain is taken instead of the usual. Source: house rule: more than half of it. */
const LEAST_KNOWN_DAYS = 4;

/** What is known of a week's rain and of the two days' before it, with the usual rain for its days that are not known [mm]. */
function knownRainMm({ climate }: WholeGarden, monday: Day, usualMm: number): number | null {
  const rain = Array.from({ length: WEEK }, (_, i) => climate.rainMm(plus(monday, i)));
  const known = rain.filter((mm) => mm !== null).length;
  if (known < LEAST_KNOWN_DAYS) return null;
  const before = Array.from(
    { length: STILL_WET_DAYS },
    (_, i) => climate.rainMm(plus(monday, -1 - i)) ?? 0,
  );
  return [...before, ...rain].reduce<number>((sum, mm) => sum + (mm ?? usualMm), 0);
}

function withKnownRain(usual: DailyWater | null, rainMm: number | null): DailyWater | null {
  return usual === null || rainMm === null ? usual : { ...usual, rainMm: rainMm / WEEK };
}

/** A week's usual water with the rain that the diary measured in it or in the two days before, where that is more than usual. */
function withMeasuredRain(
  usual: DailyWater | null,
  observations: readonly Observation[],
  monday: Day,
): DailyWater | null {
  const fell = observations.flatMap((observation) =>
    observation.kind === "measured" &&
    observation.what === "rain" &&
    observation.day >= plus(monday, -STILL_WET_DAYS) &&
    observation.day < plus(monday, WEEK)
      ? [observation.value.si * MM_A_CM]
      : [],
  );
  if (usual === null) return usual;
  const isDry = fell.every((mm) => mm === 0) && wasDry(observations, monday);
  if (isDry) return { ...usual, rainMm: 0 };
  const aDay = fell.reduce((sum, mm) => sum + mm, 0) / WEEK;
  return { ...usual, rainMm: Math.max(usual.rainMm, aDay) };
}

/** Whether the diary says of most of a week, up to where it ends, that no rain fell. */
function wasDry(observations: readonly Observation[], monday: Day): boolean {
  return observations.some((observation) => {
    if (observation.kind !== "measured" || observation.what !== "rain") return false;
    const { day, days = 1, value } = observation;
    const last = Math.min(day, plus(monday, WEEK - 1));
    const first = Math.max(day - days + 1, monday);
    return value.si === 0 && last - first + 1 >= LEAST_KNOWN_DAYS;
  });
}

/** Days for which rain before the week still serves it. Source: house rule. */
const STILL_WET_DAYS = 2;
const MM_A_CM = 10;

/** What a bed wants in a week, by its thirstiest plant, less the usual rain; none where nothing stands in it in the middle of the week. */
function waterNeedOf(
  { bed, drinkers }: ThirstyBed,
  middle: Day,
  usual: DailyWater | null,
): readonly WaterNeed[] {
  let part = 0;
  for (const { growing: context, drinking } of drinkers) {
    const spread = spreadOn(context, drinking, middle);
    part = Math.max(part, coefficientOn(context, drinking, middle) * spread);
  }
  if (part === 0) return [];
  if (!usual) return [{ bed, mm: null }];
  const { grassMm, rainMm } = waterAt(bed, usual);
  return [{ bed, mm: Math.max(0, WEEK * (part * grassMm - rainMm)) }];
}

/** Whether it is warm enough for a bed to want its water, and the water is enough to speak of. */
function isThirsty({ plan, climate }: WholeGarden, middle: Day, { bed, mm }: WaterNeed): boolean {
  const airC = climate.at(bed).airC(middle);
  if (mm === null) return airC >= WARM_ENOUGH_C;
  const rainKnown = plan.site.normals?.rainMm || bed?.kind === "greenhouse";
  return mm >= LEAST_MM && airC >= TOO_COLD_C[rainKnown ? "rainKnown" : "rainUnknown"];
}

/** Beds in the open are told together, if one of them is worth a round; a greenhouse for itself, since no rain helps it. */
function worthWatering({ plan }: WholeGarden, needs: readonly WaterNeed[]): readonly WaterNeed[] {
  const least = plan.beds.some((bed) => bed.drip) ? LEAST_MM : LEAST_BY_HAND_MM;
  const isOpen = ({ bed }: WaterNeed) => bed?.kind !== "greenhouse";
  const isWorth = (need: WaterNeed) =>
    need.mm === null || need.mm >= (isOpen(need) ? least : LEAST_MM);
  const round = needs.some((need) => isOpen(need) && isWorth(need));
  return needs.filter((need) => (isOpen(need) ? round : isWorth(need)));
}
