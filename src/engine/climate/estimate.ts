/** What is believed of several numbers at once: their means, and how they vary together (variances on the diagonal). */
export type Estimate = {
  readonly means: readonly number[];
  readonly covariances: readonly (readonly number[])[];
};

/** A sum of the numbers, each by its weight, that is known to be a value give or take a standard deviation. */
export type KnownSum = {
  readonly weights: readonly number[];
  readonly value: number;
  readonly sd: number;
};

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, each, i) => sum + each * (b[i] ?? 0), 0);

const weighed = ({ covariances }: Estimate, weights: readonly number[]): readonly number[] =>
  covariances.map((row) => dot(row, weights));

/**
 * The estimate once a sum is known: nothing that was believed is lost, and what varies with the sum moves with it. Any
 * order of sums gives the same.
 * Source: R. E. Kalman, A new approach to linear filtering and prediction problems, 1960: the conditional normal distribution.
 */
export function knowing(estimate: Estimate, { weights, value, sd }: KnownSum): Estimate {
  const along = weighed(estimate, weights);
  const variance = dot(along, weights) + sd * sd;
  const off = value - dot(estimate.means, weights);
  return {
    means: estimate.means.map((mean, i) => mean + ((along[i] ?? 0) / variance) * off),
    covariances: estimate.covariances.map((row, i) =>
      row.map((each, j) => each - ((along[i] ?? 0) * (along[j] ?? 0)) / variance),
    ),
  };
}

/** The standard deviation of a sum of the numbers, each by its weight; 0 where rounding leaves less. */
export function deviationOfSum(estimate: Estimate, weights: readonly number[]): number {
  return Math.sqrt(Math.max(0, dot(weighed(estimate, weights), weights)));
}
