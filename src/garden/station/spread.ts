/**
 * Standard deviation [K] of a month's mean from year to year where the site does not say.
 * Source: the median over 24 months of Seattle and New York, 2012 to 2015, NOAA daily data.
 */
export const USUAL_SPREAD_K = 1.5;

/**
 * The usual spread weighs as much as that many years beyond the first.
 * Source: house rule: the standard deviations of the 24 months that USUAL_SPREAD_K is taken from lie apart as if each
 * had some three to four years behind it; by moments of their logarithms, Smyth, 2004, Statistical Applications in
 * Genetics and Molecular Biology 3, eq. 5, the method from memory.
 */
const USUAL_WEIGHS_YEARS = 4;

/**
 * The spread [K] to go by where a month's mean was seen in so many years, at least 1: its standard deviation (n - 1)
 * drawn towards the usual one, much after three years and hardly after thirty. Three mild Junes in a row say little of
 * the next one.
 * Source: Smyth, 2004, as USUAL_WEIGHS_YEARS; held by a hindcast on station years.
 */
export function likelySpreadK(seenK: number, years: number): number {
  const own = Math.max(0, years - 1);
  const squares = own * seenK ** 2 + USUAL_WEIGHS_YEARS * USUAL_SPREAD_K ** 2;
  return Math.sqrt(squares / (own + USUAL_WEIGHS_YEARS));
}
