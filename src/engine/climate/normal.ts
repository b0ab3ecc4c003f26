/**
 * Standard deviations from the mean to the value that one in ten lies beyond on either side: what deviationsAt(0.9) comes
 * near, to one figure more.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formula 26.2.17, which gives 0.900008 below it.
 */
export const ONE_IN_TEN = 1.2816;

/**
 * How many standard deviations above the mean a share of all values lies below; p between 0 and 1, both
 * exclusive; error below 0.00045.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formula 26.2.23.
 */
export function deviationsAt(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a share between 0 and 1, not ${p}`);
  if (p > 0.5) return -deviationsAt(1 - p);
  const t = Math.sqrt(-2 * Math.log(p));
  const above = 2.515517 + 0.802853 * t + 0.010328 * t * t;
  const below = 1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t * t * t;
  return above / below - t;
}

/**
 * The share of all values below so many standard deviations above the mean; error below 0.000001.
 * Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, formula 26.2.17.
 */
export function shareBelow(deviations: number): number {
  if (deviations < 0) return 1 - shareBelow(-deviations);
  const t = 1 / (1 + 0.2316419 * deviations);
  const tail =
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return 1 - (Math.exp((-deviations * deviations) / 2) / Math.sqrt(2 * Math.PI)) * tail;
}
