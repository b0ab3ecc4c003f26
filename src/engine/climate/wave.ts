import { DAYS_IN_YEAR } from "../../base/index.ts";

/**
 * A year's warmth as a wave: its mean, half of what lies between its coldest and warmest day [°C, K], and the day of
 * the year, 0 to 364, on which the surface is coldest.
 */
export type Wave = {
  readonly meanC: number;
  readonly swingK: number;
  readonly coldest: number;
};

/**
 * The depth [m] at which a wave of temperature in soil has shrunk to 1/e. `diffusivity` of the soil [m²/s], period of
 * the wave [days].
 * Source: Oklahoma State University, Soil Physics Toolkit, after Hillel, 1982: the square root of twice the diffusivity
 * over the wave's angular speed.
 */
export function dampingDepthM(diffusivity: number, periodDays: number): number {
  return Math.sqrt((diffusivity * periodDays * 86_400) / Math.PI);
}

/** Moist loam's thermal diffusivity [m²/s]. Source: the middle of the Oklahoma toolkit's usual 3 to 8 × 10⁻⁷. */
const DIFFUSIVITY = 5e-7;

/** The depths that the year's and the day's wave reach in garden soil [m]. */
export const REACH_M = {
  year: dampingDepthM(DIFFUSIVITY, DAYS_IN_YEAR),
  day: dampingDepthM(DIFFUSIVITY, 1),
} as const;

/**
 * Temperature [°C] of a day of the year (0 to 364, fractions welcome) at a depth [m] below a surface whose year is that
 * wave; at depth 0 the surface itself. `reachM`: the depth that the year's wave reaches.
 * Source: Oklahoma State University, Soil Physics Toolkit, after Hillel, 1982, and Marshall and Holmes, 1988.
 */
export function waveC(wave: Wave, day: number, depthM: number, reachM = REACH_M.year): number {
  const shrunk = depthM / reachM;
  const turn = (2 * Math.PI * (day - wave.coldest)) / DAYS_IN_YEAR - shrunk - Math.PI / 2;
  return wave.meanC + wave.swingK * Math.exp(-shrunk) * Math.sin(turn);
}

/** The share, 0 to 1, of the surface's swing over a day that is felt at a depth [cm]. Source: as waveC, for a wave of one day. */
export function dailySwingShare(depthCm: number): number {
  return Math.exp(-depthCm / 100 / REACH_M.day);
}
