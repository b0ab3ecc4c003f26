import { type Day, dayOfYear, plus } from "../../base/index.ts";
import type { Air } from "./glass.ts";
import { SOIL_AVERAGES_DAYS } from "./soil.ts";

/** Bare open soil [°C] on a day before freezing, in a season that many kelvins warmer than usual [K]. */
export type BareSoil = (day: Day, warmerK: number) => number;

/** A usual year's lows, highs and soil [°C], one value for each day, 1 January first. */
type Usual = {
  readonly lowC: readonly number[];
  readonly highC: readonly number[];
  readonly soilC: readonly number[];
};

/** Bare soil by the year's curve alone. */
export const usualSoil =
  ({ soilC }: Usual): BareSoil =>
  (day, warmerK) =>
    (soilC[dayOfYear(day)] ?? 0) + warmerK;

/** The mean air [°C] of a day by the curves alone. */
export const usualAirC = ({ lowC, highC }: Usual, day: Day): number =>
  ((lowC[dayOfYear(day)] ?? 0) + (highC[dayOfYear(day)] ?? 0)) / 2;

/**
 * Bare soil where days are known: on those and the ten after them it is as much warmer than usual as the air of the days up to
 * the day was; the usual one on every other day. `airC`: the mean of each day's air [°C].
 */
export function bareSoil(
  usual: Usual,
  known: ReadonlyMap<Day, unknown>,
  airC: Air["airC"],
): BareSoil {
  const curve = usualSoil(usual);
  const days = [...known.keys()];
  const [first, last] = [Math.min(...days), Math.max(...days) + SOIL_AVERAGES_DAYS - 1];
  const byWarmth = new Map<number, Map<Day, number>>();
  return (day, warmerK) => {
    if (!(day >= first && day <= last)) return curve(day, warmerK);
    const soils = byWarmth.get(warmerK) ?? new Map<Day, number>();
    byWarmth.set(warmerK, soils);
    const there = soils.get(day);
    if (there !== undefined) return there;
    let warmer = 0;
    for (let on = plus(day, 1 - SOIL_AVERAGES_DAYS); on <= day; on = plus(on, 1))
      warmer += (airC(on, warmerK) - usualAirC(usual, on)) / SOIL_AVERAGES_DAYS;
    const soilC = curve(day, 0) + warmer;
    soils.set(day, soilC);
    return soilC;
  };
}
