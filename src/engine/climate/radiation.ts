/*
 * Sunlight by the equations of R.G. Allen, L.S. Pereira, D. Raes and M. Smith, Crop evapotranspiration, FAO Irrigation
 * and Drainage Paper 56, Rome 1998. Latitudes in degrees, south negative; days of the year from 1 for 1 January;
 * radiation in MJ a square metre and day.
 */

const SOLAR_CONSTANT_MJ_MIN = 0.082;
const STEFAN_BOLTZMANN_MJ_K4 = 4.903e-9;
const KELVIN = 273.16;
const ALBEDO = 0.23;

/**
 * The part of the sun's radiation, for each square root of a kelvin of the day's range, that inland places get. Source:
 * Allen and others, FAO 56, 1998, eq. 50, interior.
 */
const SWING_COEFFICIENT = 0.16;

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const turnOf = (dayOfYear: number) => (2 * Math.PI * dayOfYear) / 365;

/** How much stronger or weaker the sun is for its distance, about 1. Source: Allen and others, FAO 56, 1998, eq. 23. */
export function sunDistance(dayOfYear: number): number {
  return 1 + 0.033 * Math.cos(turnOf(dayOfYear));
}

/** The sun's declination [rad], north positive. Source: Allen and others, FAO 56, 1998, eq. 24. */
export function sunDeclination(dayOfYear: number): number {
  return 0.409 * Math.sin(turnOf(dayOfYear) - 1.39);
}

/**
 * The hour angle of sunset [rad], from 0 where the sun never rises to π where it never sets: the argument of the
 * arccosine is limited to -1 to 1, which it exceeds in polar day and night.
 * Source: Allen and others, FAO 56, 1998, eq. 25.
 */
export function sunsetAngle(latitude: number, dayOfYear: number): number {
  const cosine = -Math.tan(radians(latitude)) * Math.tan(sunDeclination(dayOfYear));
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}

/** Hours of daylight [h] by geometry alone, sun's centre and no refraction: up to half an hour under `dayHours`. Source: Allen and others, FAO 56, 1998, eq. 34. */
export function geometricHours(latitude: number, dayOfYear: number): number {
  return (24 / Math.PI) * sunsetAngle(latitude, dayOfYear);
}

/** What the sun sends to the top of the air [MJ m⁻² day⁻¹]; 0 in polar night. Source: Allen and others, FAO 56, 1998, eq. 21. */
export function topOfAirMJ(latitude: number, dayOfYear: number): number {
  const [phi, delta] = [radians(latitude), sunDeclination(dayOfYear)];
  const sunset = sunsetAngle(latitude, dayOfYear);
  const up =
    sunset * Math.sin(phi) * Math.sin(delta) + Math.cos(phi) * Math.cos(delta) * Math.sin(sunset);
  const wholeDay = (24 * 60) / Math.PI;
  return Math.max(0, wholeDay * SOLAR_CONSTANT_MJ_MIN * sunDistance(dayOfYear) * up);
}

/** What reaches the ground under a clear sky [MJ m⁻² day⁻¹], the altitude in metres. Source: Allen and others, FAO 56, 1998, eq. 37. */
export function clearSkyMJ(topMJ: number, altitudeM: number): number {
  return (0.75 + 2e-5 * altitudeM) * topMJ;
}

/** A day's low and high in the shade [°C]. */
export type TemperatureSwing = { readonly lowC: number; readonly highC: number };

/**
 * What reaches the ground [MJ m⁻² day⁻¹] by how far the day's low and high lie apart, inland; never more than under
 * a clear sky at sea level. Nothing where the high is not above the low.
 * Source: Allen and others, FAO 56, 1998, eq. 50, kRs 0.16.
 */
export function solarFromSwingMJ({ lowC, highC }: TemperatureSwing, topMJ: number): number {
  const share = SWING_COEFFICIENT * Math.sqrt(Math.max(0, highC - lowC));
  return Math.min(share * topMJ, clearSkyMJ(topMJ, 0));
}

/**
 * The solar radiation that short grass absorbs [MJ m⁻² day⁻¹]. Source: Allen and others, FAO 56, 1998, eq. 38, albedo
 * 0.23.
 */
export function netShortwaveMJ(solarMJ: number): number {
  return (1 - ALBEDO) * solarMJ;
}

/** The inputs of the loss to the sky; vapour pressure of the air [kPa], sun and clear-sky sun [MJ m⁻² day⁻¹]. */
export type SkyLoss = TemperatureSwing & {
  readonly vapourKPa: number;
  readonly solarMJ: number;
  readonly clearSkyMJ: number;
};

/**
 * What the ground loses to the sky [MJ m⁻² day⁻¹], by warmth, damp and cloud. In polar night there is no sun to show
 * clouds, and the sky is assumed clear.
 * Source: Allen and others, FAO 56, 1998, eq. 39.
 */
export function netLongwaveMJ(loss: SkyLoss): number {
  const { lowC, highC, vapourKPa, solarMJ } = loss;
  const clearness = loss.clearSkyMJ > 0 ? Math.min(1, solarMJ / loss.clearSkyMJ) : 1;
  const warmth = ((highC + KELVIN) ** 4 + (lowC + KELVIN) ** 4) / 2;
  const damp = 0.34 - 0.14 * Math.sqrt(vapourKPa);
  return STEFAN_BOLTZMANN_MJ_K4 * warmth * damp * (1.35 * clearness - 0.35);
}
