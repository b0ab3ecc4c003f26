import { type Day, plus } from "../../base/index.ts";
import type { Family } from "../../crops/index.ts";
import {
  type KnownWeather,
  planOn,
  WARNED_DAYS,
  type WeatherDay,
} from "../../garden/model/index.ts";
import { objectOf } from "../practices/task.ts";
import { type PlantingInYear, plantingsIn, type YearCourse } from "../year.ts";

/**
 * Wet or dry weather ahead that asks for something, told once, on its first day. A soaking: what slugs take now, and what is ripe and
 * splits. A dry spell: since when it has not rained and until when none is forecast, and what is not up yet. Blight weather: what takes
 * blight. Names in the plans' order, each once.
 */
export type Spell =
  | {
      readonly kind: "soaking";
      readonly day: Day;
      readonly rainMm: number;
      readonly slugFood: readonly string[];
      readonly splitting: readonly string[];
    }
  | {
      readonly kind: "dry spell";
      readonly day: Day;
      readonly since: Day;
      readonly until: Day;
      readonly seeds: readonly string[];
    }
  | { readonly kind: "blight weather"; readonly day: Day; readonly plants: readonly string[] };

/** Rain of a day that soaks a bed [mm]: three quarters of an inch. Source: common practice: an inch serves a week. */
const SOAKING_MM = 20;

/** A day without rain to speak of [mm]; how many in a row make a spell, and how many more must be forecast. Source: house rule. */
const [DRY_MM, DRY_DAYS, DRY_AHEAD] = [2, 10, 4];

/** A mean of days under which beds lose so little that a dry spell is no news [°C]. Source: house rule, as for watering. */
const WARM_C = 12;

/**
 * Nights at least so mild [°C] and hours of air nearly full of water on each of two days running are blight weather. Source: from
 * memory, unchecked: the Hutton criteria, James Hutton Institute, 2017: 10 °C, six hours at 90 %.
 */
const [MILD_C, HUMID_HOURS] = [10, 6];

/**
 * Rain of a day on which leaves are taken as wet for as long, where nothing is known of the air's damp [mm]. Source: house rule; a
 * shower dries within the hour, a tenth of an inch falls over half a day.
 */
const WET_MM = 2.5;

/** Days for which it is not told again, since leaves are looked over by then. Source: house rule. */
const TOLD_FOR_DAYS = 10;

/** The spells that begin today or on the next two days and matter in this garden, in day order. Empty where nothing is known of the weather. */
export function spellsIn(year: YearCourse, weather: KnownWeather | null): readonly Spell[] {
  if (weather === null) return [];
  const { asOf } = weather;
  const known = new Map(weather.days.map((each) => [each.day, each]));
  const ahead = Array.from({ length: WARNED_DAYS }, (_, i) => plus(asOf, i));
  return ahead.flatMap((day) => [
    ...soakingOn(year, known, day),
    ...drySpellOn(year, known, day),
    ...blightOn(year, known, day),
  ]);
}

type Days = ReadonlyMap<Day, WeatherDay>;

const isSoaking = (days: Days, day: Day) => (days.get(day)?.rainMm ?? 0) >= SOAKING_MM;

/** Families whose seedlings slugs take first. Source: common practice. */
const SLUG_FOOD: readonly Family[] = [
  "cabbage family",
  "daisy family",
  "pea family",
  "gourd family",
];

/** Days after it stands there for which a plant is small enough to be lost to slugs. Source: house rule. */
const SMALL_DAYS = 28;

function soakingOn(year: YearCourse, days: Days, day: Day): readonly Spell[] {
  const open = inTheOpen(year, day);
  if (!isSoaking(days, day) || isSoaking(days, plus(day, -1)) || open.length === 0) return [];
  const slugFood = open.filter(
    ({ crop, lives }) =>
      crop !== null &&
      SLUG_FOOD.includes(crop.family) &&
      lives.some(({ out, up, gone }) => {
        const since = out ?? up;
        return since <= day && day < Math.min(gone, since + SMALL_DAYS);
      }),
  );
  const splitting = open.filter(
    ({ crop, lives }) =>
      crop?.key === "tomato" &&
      lives.some(({ ready, full, gone }) => ready && full <= day && day < gone),
  );
  const rainMm = days.get(day)?.rainMm ?? 0;
  return [
    { kind: "soaking", day, rainMm, slugFood: namesOf(slugFood), splitting: namesOf(splitting) },
  ];
}

const isDry = (days: Days, day: Day) => (days.get(day)?.rainMm ?? DRY_MM) < DRY_MM;

/** Whether the ten days before a day were dry, it is, and so are the next. */
function isDrySpell(days: Days, day: Day): boolean {
  for (let off = -DRY_DAYS; off <= DRY_AHEAD; off++) if (!isDry(days, plus(day, off))) return false;
  return true;
}

function drySpellOn(year: YearCourse, days: Days, day: Day): readonly Spell[] {
  const open = inTheOpen(year, day);
  const today = days.get(day);
  const warm = today !== undefined && (today.lowC + today.highC) / 2 >= WARM_C;
  if (!warm || open.length === 0 || !isDrySpell(days, day) || isDrySpell(days, plus(day, -1)))
    return [];
  let since = plus(day, -DRY_DAYS);
  while (isDry(days, plus(since, -1))) since = plus(since, -1);
  const seeds = open.filter(({ lives }) =>
    lives.some(({ starts, up, out }) => out === null && starts <= day && day < up),
  );
  return [{ kind: "dry spell", day, since, until: plus(day, DRY_AHEAD), seeds: namesOf(seeds) }];
}

function isDamp({ rainMm, humidHours }: WeatherDay): boolean {
  return typeof humidHours === "number" ? humidHours >= HUMID_HOURS : (rainMm ?? 0) >= WET_MM;
}

/** Whether a day and the one before were mild and damp enough. */
const isBlightWeather = (days: Days, day: Day) =>
  [plus(day, -1), day].every((each) => {
    const known = days.get(each);
    return known !== undefined && known.lowC >= MILD_C && isDamp(known);
  });

function blightOn(year: YearCourse, days: Days, day: Day): readonly Spell[] {
  if (!isBlightWeather(days, day)) return [];
  for (let back = 1; back <= TOLD_FOR_DAYS; back++)
    if (isBlightWeather(days, plus(day, -back))) return [];
  const plants = inTheOpen(year, day).filter(
    ({ crop, lives }) =>
      crop?.lateBlight &&
      lives.some(({ out, up, gone }) => (out ?? up) + SMALL_DAYS <= day && day < gone),
  );
  return plants.length === 0 ? [] : [{ kind: "blight weather", day, plants: namesOf(plants) }];
}

/** What is in its place in the open on a day, seed in the ground too. */
function inTheOpen(year: YearCourse, day: Day): readonly PlantingInYear[] {
  const houses = planOn(year.plans, day).beds.filter(({ kind }) => kind === "greenhouse");
  return plantingsIn(year).filter(
    ({ planting, lives }) =>
      !houses.some(({ key }) => key === planting.bed) &&
      lives.some(({ starts, out, gone }) => (out ?? starts) <= day && day < gone),
  );
}

function namesOf(all: readonly PlantingInYear[]): readonly string[] {
  return [
    ...new Set(all.flatMap(({ planting, crop }) => (crop ? [objectOf({ planting, crop })] : []))),
  ];
}
