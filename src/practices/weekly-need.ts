import { type Day, earliest, latest, plus, theDay, weekdayOf } from "../days/day.ts";
import type { Growing } from "../growth/growing.ts";
import { coefficientOn, type Drinking, drinkingOf, usualWaterOf } from "../growth/thirst.ts";
import type { Bed } from "../plan/plan.ts";
import type { WholeGarden } from "./practice.ts";

/** A need below which a bed is left alone for the week [mm]. Source: house rule; a quarter of an inch. */
export const LEAST_MM = 6;

/** What some bed must need for the week to be told in a garden without any drip lines [mm]. Source: house rule; over half an inch is worth carrying. */
export const LEAST_BY_HAND_MM = 15;

/** Mean air [°C] from which a week is told where its need is not known. Source: house rule; below it beds lose little. */
const WARM_ENOUGH_C = 12;

/** Mean air [°C] under which no week is told. Source: house rule; growth all but stands still. */
const TOO_COLD_C = 5;

/** A bed's need in a week [mm]; null where it cannot be reckoned. `bed` null: what stands in no bed. */
export type Need = { readonly bed: Bed | null; readonly mm: number | null };

/**
 * A week from its Monday on in which beds want water, and each bed that does. `number` counts from the year's first
 * week, as ISO 8601 has it, on into the next year; it is the same whatever is planted.
 */
export type DryWeek = {
  readonly number: number;
  readonly monday: Day;
  readonly needs: readonly Need[];
};

/** What grows outdoors in one bed, or in none where that is null. */
type Thirsty = {
  readonly bed: Bed | null;
  readonly drinkers: readonly { readonly growing: Growing; readonly drinking: Drinking }[];
};

/**
 * The weeks in which the garden wants watering, in order, from the first Monday on which anything stands outdoors;
 * none for plantings that go without watering.
 * Source: Allen and others, FAO 56, 1998, as in growth/thirst.ts; which weeks are worth telling, house rule.
 */
export function dryWeeksOf(garden: WholeGarden): readonly DryWeek[] {
  const beds = thirstyOf(garden);
  const water = usualWaterOf(garden.plan.site, garden.climate);
  return mondaysOf(beds).flatMap((monday) => {
    const week = DAYS.map((after) => plus(monday, after));
    const usual = water && week.map(water);
    const needs = beds
      .flatMap((each) => needOf(each, week, usual))
      .filter(({ mm }) => mm === null || mm >= LEAST_MM);
    if (!worthTelling(garden, monday, needs)) return [];
    return [{ number: weekNumber(garden.plan.year, monday), monday, needs }];
  });
}

/** Days of a week from its Monday on. */
const DAYS = [0, 1, 2, 3, 4, 5, 6];

function thirstyOf({ growings }: WholeGarden): readonly Thirsty[] {
  const byBed = new Map<Bed | null, Thirsty["drinkers"]>();
  for (const growing of growings) {
    const drinking = growing.planting.without.includes("water") ? null : drinkingOf(growing);
    if (drinking)
      byBed.set(growing.bed, [...(byBed.get(growing.bed) ?? []), { growing, drinking }]);
  }
  return [...byBed].map(([bed, drinkers]) => ({ bed, drinkers }));
}

function mondaysOf(beds: readonly Thirsty[]): readonly Day[] {
  const all = beds.flatMap(({ drinkers }) => drinkers.map(({ drinking }) => drinking));
  if (all.length === 0) return [];
  const first = earliest(...all.map(({ from }) => from));
  const last = latest(...all.map(({ to }) => to));
  const mondays: Day[] = [];
  for (let day = plus(first, (8 - weekdayOf(first)) % 7); day <= last; day = plus(day, 7))
    mondays.push(day);
  return mondays;
}

function weekNumber(year: number, monday: Day): number {
  const fourth = theDay(year, 1, 4);
  return (monday - plus(fourth, 1 - weekdayOf(fourth))) / 7 + 1;
}

type Usual = readonly { readonly grassMm: number; readonly rainMm: number }[];

/** What a bed wants in a week: the thirstiest of its plants day by day, less the usual rain of those days; none where nothing stands in it. */
function needOf(
  { bed, drinkers }: Thirsty,
  week: readonly Day[],
  usual: Usual | null,
): readonly Need[] {
  const parts = week.map((day) =>
    Math.max(...drinkers.map((each) => coefficientOn(each.growing, each.drinking, day))),
  );
  if (parts.every((part) => part === 0)) return [];
  if (!usual) return [{ bed, mm: null }];
  const daily = usual.map(({ grassMm, rainMm }, i) => {
    const part = parts[i] ?? 0;
    return part > 0 ? part * grassMm - rainMm : 0;
  });
  const sum = daily.reduce((a, b) => a + b, 0);
  return [{ bed, mm: Math.max(0, sum) }];
}

function worthTelling(
  { plan, climate }: WholeGarden,
  monday: Day,
  needs: readonly Need[],
): boolean {
  const airC = climate.airC(plus(monday, 3));
  const least = plan.beds.some((bed) => bed.drip) ? LEAST_MM : LEAST_BY_HAND_MM;
  return needs.some(({ mm }) =>
    mm === null ? airC >= WARM_ENOUGH_C : airC >= TOO_COLD_C && mm >= least,
  );
}
