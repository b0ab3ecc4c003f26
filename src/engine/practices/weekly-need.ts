import { type Day, earliest, latest, plus, theDay, weekdayOf } from "../../base/days/day.ts";
import type { Fact } from "../../garden/diary/fact.ts";
import type { Bed } from "../../garden/model/plan.ts";
import type { Growing } from "../growth/growing.ts";
import { coefficientOn, type Drinking, drinkingOf, usualWaterOf } from "../growth/thirst.ts";
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
  const waterOn = usualWaterOf(garden.plan.site, garden.climate);
  return mondaysOf(beds).flatMap((monday) => {
    const middle = plus(monday, TO_MIDDLE);
    const usual = rained(waterOn?.(middle) ?? null, garden.facts, monday);
    const needs = beds
      .flatMap((each) => needOf(each, middle, usual))
      .filter(({ mm }) => mm === null || mm >= LEAST_MM);
    if (!worthTelling(garden, middle, needs)) return [];
    return [{ number: weekNumber(garden.plan.year, monday), monday, needs }];
  });
}

/** Days of a week, and from its Monday to the Thursday that stands for all of them: usual years change slowly. */
const WEEK = 7;
const TO_MIDDLE = 3;

function thirstyOf({ growings, anchors }: WholeGarden): readonly Thirsty[] {
  const byBed = new Map<Bed | null, Thirsty["drinkers"]>();
  for (const growing of growings) {
    const drinking = growing.planting.without.includes("water")
      ? null
      : drinkingOf(growing, anchors);
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
  for (let day = plus(first, (8 - weekdayOf(first)) % WEEK); day <= last; day = plus(day, WEEK))
    mondays.push(day);
  return mondays;
}

function weekNumber(year: number, monday: Day): number {
  const fourth = theDay(year, 1, 4);
  return (monday - plus(fourth, 1 - weekdayOf(fourth))) / WEEK + 1;
}

type Usual = { readonly grassMm: number; readonly rainMm: number };

/** A week's usual water with the rain that the diary measured in it or in the two days before, where that is more than usual. */
function rained(usual: Usual | null, facts: readonly Fact[], monday: Day): Usual | null {
  const fell = facts.flatMap((fact) =>
    fact.kind === "measured" &&
    fact.what === "rain" &&
    fact.day >= plus(monday, -STILL_WET_DAYS) &&
    fact.day < plus(monday, WEEK)
      ? [fact.value.si * MM_A_CM]
      : [],
  );
  if (fell.length === 0 || usual === null) return usual;
  const aDay = fell.reduce((sum, mm) => sum + mm, 0) / WEEK;
  return { ...usual, rainMm: Math.max(usual.rainMm, aDay) };
}

/** Days for which rain before the week still serves it. Source: house rule. */
const STILL_WET_DAYS = 2;
const MM_A_CM = 10;

/** What a bed wants in a week, by its thirstiest plant, less the usual rain; none where nothing stands in it in the middle of the week. */
function needOf({ bed, drinkers }: Thirsty, middle: Day, usual: Usual | null): readonly Need[] {
  let part = 0;
  for (const { growing, drinking } of drinkers)
    part = Math.max(part, coefficientOn(growing, drinking, middle));
  if (part === 0) return [];
  if (!usual) return [{ bed, mm: null }];
  return [{ bed, mm: Math.max(0, WEEK * (part * usual.grassMm - usual.rainMm)) }];
}

function worthTelling(
  { plan, climate }: WholeGarden,
  middle: Day,
  needs: readonly Need[],
): boolean {
  const airC = climate.airC(middle);
  const least = plan.beds.some((bed) => bed.drip) ? LEAST_MM : LEAST_BY_HAND_MM;
  return needs.some(({ mm }) =>
    mm === null ? airC >= WARM_ENOUGH_C : airC >= TOO_COLD_C && mm >= least,
  );
}
