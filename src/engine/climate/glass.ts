import { DAYS_IN_YEAR, type Day, dayOfYear } from "../../base/index.ts";
import type { Bed } from "../../garden/model/index.ts";
import { type DayAir, meanC } from "./day-air.ts";
import { topOfAirMJ } from "./radiation.ts";

/** A greenhouse or tunnel as its air depends on it: the night temperature it is heated to [°C]; null without heater. */
export type Glass = { readonly keptAboveC: number | null };

/** The house that a bed stands in; null for a bed in the open, and where there is no bed. */
export function glassOf(bed: Bed | null): Glass | null {
  return bed?.kind === "greenhouse" ? { keptAboveC: bed.keptAbove?.si ?? null } : null;
}

/**
 * How much warmer nights are under glass or one layer of film that nothing heats [K]. Source: house rule, the low end of
 * the few degrees that growers report; so its frosts are the hard ones outdoors.
 */
export const GLASS_NIGHT_K = 2;

/**
 * How much warmer a usual day gets with the vents shut, under the sun of FULL_SUN_MJ [K]; under less sun in proportion.
 * Source: house rule, between dull days, which hardly warm it, and bright ones, which warm it twice as much.
 */
const GLASS_DAY_K = 8;

/** The sun at the top of the air at midsummer of the middle latitudes [MJ m⁻² day⁻¹]. Source: FAO 56, 1998, Table 2.6. */
const FULL_SUN_MJ = 41;

/** Air [°C] at which vents and door are open. Source: common practice, 25 °C. */
const VENTED_C = 25;

/** How much warmer it stays inside with everything open [K]. Source: house rule; some sun is always caught. */
const OPEN_K = 2;

/** The latitude that is assumed where a plan gives none. Source: house rule, the middle latitudes. */
export const MIDDLE_LATITUDE = 45;

/** A day's sun as a part of FULL_SUN_MJ, for each day of a year, 1 January first. Source: FAO 56, 1998, eq. 21. */
export function sunShares(latitude: number | null): readonly number[] {
  const at = latitude ?? MIDDLE_LATITUDE;
  return Array.from({ length: DAYS_IN_YEAR }, (_, i) => topOfAirMJ(at, i + 1) / FULL_SUN_MJ);
}

/**
 * A day's air in a house [°C]: nights a little warmer than outdoors and never below what it is heated to; days warmer by
 * the sun, till vents are open; then it is little warmer than outdoors. `share` as sunShares gives it.
 */
export function airUnder({ keptAboveC }: Glass, { lowC, highC }: DayAir, share: number): DayAir {
  const low = Math.max(lowC + GLASS_NIGHT_K, keptAboveC ?? Number.NEGATIVE_INFINITY);
  const shut = highC + Math.max(OPEN_K, GLASS_DAY_K * share);
  const high = Math.min(shut, Math.max(VENTED_C, highC + OPEN_K));
  return { lowC: low, highC: Math.max(low, high) };
}

/** Air by day; `warmerK`: how much warmer [K] than usual the season is, 0 by default. */
export type Air = {
  readonly air: (day: Day, warmerK?: number) => DayAir;
  /** Half the difference between a day's low and high [K]. */
  readonly swingK: (day: Day) => number;
  /** Mean of a day's air [°C]. */
  readonly airC: (day: Day, warmerK?: number) => number;
};

/** The air that a bed stands in: that of the open, or of its house; the same object for houses of equal heat. */
export function airByBed(open: Air, latitude: number | null): (bed: Bed | null) => Air {
  const houses = new Map<number | null, Air>();
  let shares: readonly number[] | null = null;
  return (bed) => {
    const glass = glassOf(bed);
    if (!glass) return open;
    const known = houses.get(glass.keptAboveC);
    if (known) return known;
    shares ??= sunShares(latitude);
    const house = houseAir(glass, open, shares);
    houses.set(glass.keptAboveC, house);
    return house;
  };
}

function houseAir(glass: Glass, open: Air, shares: readonly number[]): Air {
  const air: Air["air"] = (day, warmerK = 0) =>
    airUnder(glass, open.air(day, warmerK), shares[dayOfYear(day)] ?? 0);
  return {
    air,
    airC: (day, warmerK = 0) => meanC(air(day, warmerK)),
    swingK: (day) => (air(day).highC - air(day).lowC) / 2,
  };
}
