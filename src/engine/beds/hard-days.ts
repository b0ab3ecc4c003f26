import { type Day, plus } from "../../base/index.ts";
import {
  type KnownWeather,
  planOn,
  WARNED_DAYS,
  type WeatherDay,
} from "../../garden/model/index.ts";
import { objectOf } from "../practices/task.ts";
import { type PlantingInYear, plantingsIn, seasonFor, type YearCourse } from "../year.ts";
import { trayPlace } from "./trays-tonight.ts";

/**
 * A day's high that scorches and bolts what likes it cool [°C], and a gust that tears at covers [m/s]. Source: 90 °F, common practice;
 * Beaufort 8, a gale, from 17.2 m/s, World Meteorological Organization.
 */
const [HOT_C, GALE_MPS] = [32, 17.2];

/**
 * A hot day ahead: what suffers in the open, by name, and the names of the greenhouses that want air. A gale: the names of what lies
 * under covers, and of what stands out to harden off. Names in the plans' order, each once.
 */
export type HardDay =
  | {
      readonly kind: "heat";
      readonly day: Day;
      readonly highC: number;
      readonly suffering: readonly string[];
      readonly houses: readonly string[];
    }
  | {
      readonly kind: "gale";
      readonly day: Day;
      readonly gustMps: number;
      readonly covered: readonly string[];
      readonly hardening: readonly string[];
    };

/**
 * The stormy days and the first hot ones of today and the next two that ask for something in this garden, in day order, heat first. Empty where
 * nothing is known of the weather.
 */
export function hardDaysIn(year: YearCourse, weather: KnownWeather | null): readonly HardDay[] {
  if (weather === null) return [];
  const { asOf, days } = weather;
  return days
    .filter(({ day }) => day >= asOf && day < asOf + WARNED_DAYS)
    .flatMap((each) => [
      ...(isHotBefore(days, each.day) ? [] : heatOn(year, each)),
      ...galeOn(year, each),
    ]);
}

/** Days after a hot one on which the next is no news. Source: house rule: cloths hang there by then. */
const NO_NEWS_DAYS = 3;

/** Whether it was hot within the days before, so that heat has been told of already. */
function isHotBefore(days: readonly WeatherDay[], day: Day): boolean {
  return days.some(
    ({ day: hot, highC }) => hot < day && hot >= plus(day, -NO_NEWS_DAYS) && highC >= HOT_C,
  );
}

function heatOn(year: YearCourse, { day, highC }: WeatherDay): readonly HardDay[] {
  if (highC < HOT_C) return [];
  const here = plantingsIn(year).filter((each) => standsOn(each, day));
  const glass = new Map(
    planOn(year.plans, day)
      .beds.filter(({ kind }) => kind === "greenhouse")
      .map(({ key, name }) => [key, name]),
  );
  const suffering = here.filter(
    ({ planting, crop }) => crop?.limits.heatC && !glass.has(planting.bed ?? ""),
  );
  const houses = here.flatMap(({ planting }) => glass.get(planting.bed ?? "") ?? []);
  if (suffering.length + houses.length === 0) return [];
  return [
    { kind: "heat", day, highC, suffering: namesOf(suffering), houses: [...new Set(houses)] },
  ];
}

function galeOn(year: YearCourse, { day, gustMps }: WeatherDay): readonly HardDay[] {
  if (gustMps === null || gustMps < GALE_MPS) return [];
  const all = plantingsIn(year);
  const under = new Set(
    year.plans.flatMap((plan) =>
      seasonFor(year, plan).plantings.flatMap(({ planting, covers }) =>
        covers.some(({ from, to }) => from <= day && (to === null || day < to)) ? [planting] : [],
      ),
    ),
  );
  const covered = all.filter((each) => under.has(each.planting.key) && standsOn(each, day));
  const hardening = all.filter(
    ({ hardening: steps, lives }) =>
      lives.some(({ starts, out }) => out !== null && starts <= day && day < out) &&
      trayPlace(steps, day) !== "indoors",
  );
  if (covered.length + hardening.length === 0) return [];
  return [{ kind: "gale", day, gustMps, covered: namesOf(covered), hardening: namesOf(hardening) }];
}

/** Whether any of it stands in its place on a day, above the ground. */
function standsOn({ lives }: PlantingInYear, day: Day): boolean {
  return lives.some(({ up, out, gone }) => (out ?? up) <= day && day < gone);
}

function namesOf(all: readonly PlantingInYear[]): readonly string[] {
  return [
    ...new Set(all.flatMap(({ planting, crop }) => (crop ? [objectOf({ planting, crop })] : []))),
  ];
}
