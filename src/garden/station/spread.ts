/**
 * Standard deviation [K] of a month's mean from year to year where the site has none of its own.
 * Source: the median over 24 months of Seattle and New York, 2012 to 2015, NOAA daily data.
 */
export const USUAL_SPREAD_K = 1.5;

/**
 * The usual spread weighs as much as this number of years beyond the first.
 * Source: house rule: the standard deviations of the 24 months that USUAL_SPREAD_K is taken from differ as if each came
 * from three to four years; by moments of their logarithms, Smyth, 2004, Statistical Applications in Genetics and
 * Molecular Biology 3, eq. 5, the method from memory.
 */
const USUAL_WEIGHS_YEARS = 4;

/**
 * The likely spread [K] of a month's mean from its standard deviation (n - 1) in a number of years, at least 1: drawn
 * towards the usual spread, strongly for three years and hardly for thirty. Three mild Junes in a row say little about
 * the next one.
 * Source: Smyth, 2004, as USUAL_WEIGHS_YEARS; checked by a hindcast on station years.
 */
export function likelySpreadK(seenK: number, years: number): number {
  const own = Math.max(0, years - 1);
  const squares = own * seenK ** 2 + USUAL_WEIGHS_YEARS * USUAL_SPREAD_K ** 2;
  return Math.sqrt(squares / (own + USUAL_WEIGHS_YEARS));
}
