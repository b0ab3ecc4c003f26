import { type Day, dayOfYear, plus } from "../../base/index.ts";
import { type Observation, USUAL_SPREAD_K } from "../../garden/index.ts";
import type { Bed, Plan } from "../../garden/model/index.ts";
import { type AirCurves, airCurvesOf, monthlyValueOn } from "./air.ts";
import { bareSoil, usualAirC, usualSoil } from "./bare-soil.ts";
import { type DayAir, meanC } from "./day-air.ts";
import { type Air, airByBed, glassOf } from "./glass.ts";
import { lastingShare } from "./lasting.ts";
import { measuredSoil, type SoilMeasurement, soilMeasurementsIn } from "./measured-soil.ts";
import { roughAir } from "./rough-air.ts";
import { FROZEN_C, SOIL_AVERAGES_DAYS, soilCurve, soilWarmedBy } from "./soil.ts";
import { dayHoursOf } from "./sun.ts";

/**
 * A day whose air is known, and its rain [mm] where that is known too. `believed`: how much of it counts, 0 to 1, the rest being
 * the usual; left out: all of it, as of a day that was measured.
 */
export type ObservedDay = DayAir & {
  readonly rainMm?: number | null;
  /** The strongest gust [m/s], where that is known. */
  readonly gustMps?: number | null;
  readonly believed?: number;
};

/** Days whose weather is known, measured or forecast; it replaces the normals. */
export type ObservedWeather = ReadonlyMap<Day, ObservedDay>;

const NOTHING_OBSERVED: ObservedWeather = new Map();

/**
 * Air and soil of a garden, day by day. `warmerK`: how much warmer [K] than usual the season is assumed to be, 0 by
 * default; known days stay as they are.
 */
export type Climate = Air & {
  /** Whether the curve is the rough one, calculated from frost dates, clock and latitude only. */
  readonly rough: boolean;
  /** Mean of a day's soil at seed depth [°C] in a bed, or in open ground where that is null. */
  readonly soilC: (day: Day, bed: Bed | null, warmerK?: number) => number;
  /** The same in a row that is watered every day until it is up, which the sun warms by half as much. */
  readonly dampSoilC: (day: Day, bed: Bed | null) => number;
  /**
   * Mean of the soil that what goes in on a day lies in over its first weeks [°C], not counting the season's own warming: the day's
   * soil, drawn towards what is usual as far as differences do not last. Otherwise as soilC.
   */
  readonly soilAheadC: (day: Day, bed: Bed | null, warmerK?: number) => number;
  /** Mean air [°C] of the weeks about a day: the usual one, with as much of what this season differs as lasts. One hot day is no summer. */
  readonly airAheadC: (day: Day) => number;
  /** The same place in a usual year, whose weather is known of no day; this very climate where none is. */
  readonly usual: () => Climate;
  /** How much of a difference from the usual soil lasts over those weeks, 0 to 1. */
  readonly lasting: (day: Day) => number;
  /** A day's weather as it was measured or forecast; null where it is not known. */
  readonly known: (day: Day) => ObservedDay | null;
  /** Whether a day's air is measured or forecast, and not of the smooth curve. */
  readonly isObserved: (day: Day) => boolean;
  /** A key that is equal for beds with equal soil: open, under film, or a bed's own where it was measured. */
  readonly soilKey: (bed: Bed | null) => string;
  /** Standard deviation [K] of the month's mean from year to year, at that time of year. */
  readonly spreadK: (day: Day) => number;
  /** Standard deviation [K] of the curve itself at that time of year, the same in every year; 0 with the site's normals. */
  readonly curveK: (day: Day) => number;
  /** Rain of a day [mm] that is measured or forecast; null where nothing is known of it. */
  readonly rainMm: (day: Day) => number | null;
  /** Hours from sunrise to sunset; null where the plan gives no latitude. */
  readonly dayHours: ((day: Day) => number) | null;
  /** Whether it is the climate of a greenhouse or tunnel. */
  readonly underGlass: boolean;
  /** The climate that a bed stands in: that of its house, or this one in the open. The same object for equal houses. */
  readonly at: (bed: Bed | null) => Climate;
};

/**
 * A garden's air and soil as numbers, plain JSON: what a climate is made of. Curves have one value for each day of a year,
 * 1 January first [°C]; `soilC` is soil before freezing and film.
 */
export type ClimateData = {
  readonly rough: boolean;
  readonly lowC: readonly number[];
  readonly highC: readonly number[];
  readonly soilC: readonly number[];
  /** Twelve monthly values, January first, or one for the whole year [K]. */
  readonly spreadK: readonly number[] | number;
  /** How far the curve may be off, twelve monthly values, January first [K]; null with the site's normals. */
  readonly curveK: readonly number[] | null;
  readonly latitude: number | null;
  /** What the diary measured of the soil, in day order. */
  readonly measuredSoil: readonly SoilMeasurement[];
  /** Days whose air is known, in day order. */
  readonly observedWeather: readonly (readonly [day: Day, weather: ObservedDay])[];
};

/** The climate data of a plan's site, with what the diary measured of its soil, and the days whose air is known. */
export function climateDataOf(
  plan: Plan,
  observations: readonly Observation[],
  observedWeather = NOTHING_OBSERVED,
): ClimateData {
  const { latitude, normals } = plan.site;
  const curves = curvesOf(plan);
  return {
    ...curves,
    spreadK: normals?.spreadK ?? USUAL_SPREAD_K,
    latitude,
    measuredSoil: soilMeasurementsIn(observations),
    observedWeather: [...observedWeather],
  };
}

type Curves = Pick<ClimateData, "rough" | "lowC" | "highC" | "soilC" | "curveK">;

/** Through the site's normals, else a rough year; not rough where the plan has both its temperatures. */
function curvesOf({ site }: Plan): Curves {
  const air = airCurvesOf(site);
  const soil = (curves: AirCurves) => [...soilCurve(curves, site.latitude)];
  if (air) return { rough: false, ...asNumbers(air), soilC: soil(air), curveK: null };
  const rough = roughAir(site);
  const { hottestAfternoons, coldestNights } = site;
  return {
    rough: hottestAfternoons === null || coldestNights === null,
    ...asNumbers(rough),
    soilC: soil(rough),
    curveK: rough.curveK,
  };
}

const asNumbers = ({ lowC, highC }: AirCurves) => ({ lowC: [...lowC], highC: [...highC] });

/** The part of the sun's warmth that goes into drying a watered row. Source: house rule, a half. */
const DAMP_TAKES = 0.5;

/** The climate of a plan's site by its normals and its diary; see climateFrom. */
export function climateOf(
  plan: Plan,
  observations: readonly Observation[],
  observedWeather = NOTHING_OBSERVED,
): Climate {
  return climateFrom(climateDataOf(plan, observations, observedWeather));
}

/**
 * Air and soil from what is known of the days, else from the data's curves. Soil is warmed by the eleven days' air up to the day
 * and by the sun, never below freezing, warmer under film, and corrected by what was measured in the diary. Under glass the
 * house's own warmth stands for the sun's.
 */
export function climateFrom(data: ClimateData): Climate {
  const observedWeather: ObservedWeather = new Map(data.observedWeather);
  const open = airFrom(data, observedWeather);
  const airAt = airByBed(open, data.latitude);
  const curve = usualSoil(data);
  const bare = bareSoil(data, observedWeather, open.airC);
  const middleOf = (day: Day) => plus(day, -Math.floor(SOIL_AVERAGES_DAYS / 2));
  const bySunK = (day: Day) => curve(day, 0) - usualAirC(data, middleOf(day));
  const underGlassK = (day: Day, bed: Bed | null, warmerK: number) => {
    if (bed?.kind !== "greenhouse") return 0;
    const middle = middleOf(day);
    return airAt(bed).airC(middle, warmerK) - open.airC(middle, warmerK) - bySunK(day);
  };
  const estimate = (day: Day, bed: Bed | null, warmerK = 0) =>
    Math.max(FROZEN_C, bare(day, warmerK) + underGlassK(day, bed, warmerK)) +
    soilWarmedBy(bed).warmerK;
  const measured = measuredSoil(data.measuredSoil, estimate);
  const { spreadK, curveK, latitude } = data;
  const climates = new Map<Air, Climate>();
  const at = (bed: Bed | null): Climate => {
    const air = airAt(bed);
    const known = climates.get(air);
    if (known) return known;
    const usual = () => usualYear()?.at(bed) ?? climate;
    const airAheadC = (day: Day) => usual().airC(day) + lasting(day) * differsK(day, 0);
    const climate: Climate = { ...shared, ...air, underGlass: air !== open, usual, airAheadC };
    climates.set(air, climate);
    return climate;
  };
  let plain: Climate | null = null;
  const usualYear = () => {
    if (observedWeather.size > 0) plain ??= climateFrom({ ...data, observedWeather: [] });
    return plain;
  };
  const soilC: Climate["soilC"] = (day, bed, warmerK = 0) =>
    measured.appliesTo(bed)
      ? Math.max(FROZEN_C, estimate(day, bed, warmerK) + measured.correctionK(day, bed, warmerK))
      : estimate(day, bed, warmerK);
  const spreadOn = (day: Day) =>
    typeof spreadK === "number" ? spreadK : monthlyValueOn(spreadK, dayOfYear(day));
  const curveOn = (day: Day) => (curveK ? monthlyValueOn(curveK, dayOfYear(day)) : 0);
  const lasting = (day: Day) => lastingShare(spreadOn(day), curveOn(day));
  const differsK = (day: Day, warmerK: number) => bare(day, warmerK) - curve(day, warmerK);
  const shared: Omit<Climate, keyof Air | "underGlass" | "usual" | "airAheadC"> = {
    rough: data.rough,
    soilC,
    dampSoilC: (day, bed) =>
      measured.appliesTo(bed) || bed?.kind === "greenhouse"
        ? soilC(day, bed)
        : Math.max(FROZEN_C, soilC(day, bed) - DAMP_TAKES * Math.max(0, bySunK(day))),
    soilAheadC: (day, bed, warmerK = 0) =>
      soilC(day, bed, warmerK) - (1 - lasting(day)) * differsK(day, warmerK),
    lasting,
    known: (day) => observedWeather.get(day) ?? null,
    isObserved: (day) => observedWeather.has(day),
    soilKey: (bed) =>
      measured.appliesTo(bed) ? `bed ${bed?.key ?? ""}` : `${houseKey(bed)}${soilWarmedBy(bed).by}`,
    spreadK: spreadOn,
    rainMm: (day) => observedWeather.get(day)?.rainMm ?? null,
    curveK: curveOn,
    dayHours: latitude === null ? null : dayHoursOf(latitude),
    at,
  };
  return at(null);
}

function houseKey(bed: Bed | null): string {
  const glass = glassOf(bed);
  return glass ? `glass ${glass.keptAboveC ?? ""} ` : "";
}

/** A day's air as it is known, as far as that is believed, else by the curves. */
function airFrom({ lowC, highC }: ClimateData, observedWeather: ObservedWeather): Air {
  const means = lowC.map((low, i) => (low + (highC[i] ?? 0)) / 2);
  const swings = highC.map((high, i) => (high - (lowC[i] ?? 0)) / 2);
  return {
    air: (day, warmerK = 0) => {
      const i = dayOfYear(day);
      const usual = { lowC: (lowC[i] ?? 0) + warmerK, highC: (highC[i] ?? 0) + warmerK };
      const known = observedWeather.get(day);
      return known
        ? {
            lowC: believedC(known, known.lowC, usual.lowC),
            highC: believedC(known, known.highC, usual.highC),
          }
        : usual;
    },
    airC: (day, warmerK = 0) => {
      const known = observedWeather.get(day);
      const usualC = (means[dayOfYear(day)] ?? 0) + warmerK;
      return known ? believedC(known, meanC(known), usualC) : usualC;
    },
    swingK: (day) => {
      const known = observedWeather.get(day);
      const usualK = swings[dayOfYear(day)] ?? 0;
      return known ? believedC(known, (known.highC - known.lowC) / 2, usualK) : usualK;
    },
  };
}

/** Between what is usual and what is known [°C or K], as far as that is believed. */
function believedC({ believed = 1 }: ObservedDay, known: number, usual: number): number {
  return usual + believed * (known - usual);
}
