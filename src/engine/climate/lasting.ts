/**
 * How much of what soil is warmer or colder than usual is still there over the four weeks that follow, on average. Source: measured
 * on Seattle's and New York's years of tests/hindcast, 0.47 and 0.57; house rule, a half.
 */
const WEATHER_LASTS = 0.5;

/**
 * How much of a difference from the usual soil lasts, 0.5 to 1: half of what is this year's weather, and all of what is the
 * curve's own error. `yearK` and `curveK`: the standard deviations of both [K].
 */
export function lastingShare(yearK: number, curveK: number): number {
  const [year, curve] = [yearK ** 2, curveK ** 2];
  return year + curve === 0 ? WEATHER_LASTS : (WEATHER_LASTS * year + curve) / (year + curve);
}
