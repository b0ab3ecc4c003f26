/**
 * What the reference takes [ms] on the machine that all bounds in ms are for. A path is held to its share of the
 * reference, so a slower or busier machine, whose reference takes longer, gives the same verdict.
 */
export const REFERENCE_MS = 10;

/** The most a row may come to: CPU time [ms] on a machine whose reference takes `REFERENCE_MS`, or a plain ratio. */
export type Bound = { readonly unit: "ms" | "ratio"; readonly most: number };

const ms = (most: number): Bound => ({ unit: "ms", most });
const ratio = (most: number): Bound => ({ unit: "ratio", most });

/** Every bound, by the kind of row it is for. */
export const BOUNDS = {
  rebuild: ms(12),
  /** From 60 to 500 plantings, the price goes with this power of their number. */
  rebuildGrowth: ratio(1.1),
  /** House rule: what the platform's free plan gives one call. */
  oneCall: ms(10),
  /** The tasks of 600 plantings. House rule. */
  placing: ms(50),
  /** Beside the plainest writer, 250 and 2,500 events, and an event of 2,500 beside one of 250. House rule. */
  smallWriter: ratio(2.5),
  greatWriter: ratio(2.2),
  writerGrowth: ratio(1.25),
} as const;

export type BoundName = keyof typeof BOUNDS;
