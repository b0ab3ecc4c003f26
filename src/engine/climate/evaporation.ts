import { type Day, dayOfYear } from "../../base/index.ts";
import {
  clearSkyMJ,
  netLongwaveMJ,
  netShortwaveMJ,
  solarFromSwingMJ,
  type TemperatureSwing,
  topOfAirMJ,
} from "./radiation.ts";

/** Wind two metres up where nobody measures it [m/s]. Source: Allen and others, FAO 56, 1998, chapter 3: the mean of over 2000 stations. */
const USUAL_WIND_MS = 2;

/** The most vapour that air of that temperature [°C] holds [kPa]. Source: Allen and others, FAO 56, 1998, eq. 11. */
export function saturationKPa(airC: number): number {
  return 0.6108 * Math.exp((17.27 * airC) / (airC + 237.3));
}

/** How steeply that rises with temperature [kPa/°C]. Source: Allen and others, FAO 56, 1998, eq. 13. */
export function saturationSlope(airC: number): number {
  return (4098 * saturationKPa(airC)) / (airC + 237.3) ** 2;
}

/** The air's usual pressure [kPa] at an altitude [m]. Source: Allen and others, FAO 56, 1998, eq. 7. */
export function pressureKPa(altitudeM: number): number {
  return 101.3 * ((293 - 0.0065 * altitudeM) / 293) ** 5.26;
}

/** The inputs of the equation: wind two metres up, vapour pressure of the air, the grass's net radiation. */
export type EvaporationWeather = TemperatureSwing & {
  readonly vapourKPa: number;
  readonly windMs: number;
  readonly netMJ: number;
  readonly altitudeM: number;
};

/**
 * What short, well-watered grass gives off in a day [mm], at least nothing; the heat stored in the soil is left out, as
 * usual for single days.
 * Source: Allen and others, FAO 56, 1998, eq. 6, with eq. 8, 9 and 12.
 */
export function penmanMonteithMm({
  lowC,
  highC,
  vapourKPa,
  windMs,
  netMJ,
  altitudeM,
}: EvaporationWeather): number {
  const meanC = (lowC + highC) / 2;
  const slope = saturationSlope(meanC);
  const psychrometric = 0.665e-3 * pressureKPa(altitudeM);
  const dryness = (saturationKPa(lowC) + saturationKPa(highC)) / 2 - vapourKPa;
  const bySun = 0.408 * slope * netMJ;
  const byWind = ((psychrometric * 900) / (meanC + 273)) * windMs * dryness;
  return Math.max(0, (bySun + byWind) / (slope + psychrometric * (1 + 0.34 * windMs)));
}

/** A day where only lows and highs are known: degrees, south negative; altitude in metres, sea level where not given. */
export type EvaporationDay = TemperatureSwing & {
  readonly day: Day;
  readonly latitude: number;
  readonly altitudeM?: number;
};

/**
 * What short, well-watered grass gives off in a day [mm], from the day's low and high alone: the dew point is taken as
 * the low, the wind as 2 m/s, and the sun follows from the day's range. Too little in dry country, where no dew falls.
 * Source: Allen and others, FAO 56, 1998, eq. 6 with its chapter 3 for missing data, eq. 48 and 50.
 */
export function referenceEvaporationMm({
  day,
  latitude,
  altitudeM = 0,
  lowC,
  highC,
}: EvaporationDay): number {
  const topMJ = topOfAirMJ(latitude, dayOfYear(day) + 1);
  const solarMJ = solarFromSwingMJ({ lowC, highC }, topMJ);
  const vapourKPa = saturationKPa(lowC);
  const clear = clearSkyMJ(topMJ, altitudeM);
  const lost = netLongwaveMJ({ lowC, highC, vapourKPa, solarMJ, clearSkyMJ: clear });
  const netMJ = netShortwaveMJ(solarMJ) - lost;
  return penmanMonteithMm({ lowC, highC, vapourKPa, windMs: USUAL_WIND_MS, netMJ, altitudeM });
}
