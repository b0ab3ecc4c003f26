/**
 * What the reference takes [ms] on the machine that all bounds in ms are for. A path is held to its share of the
 * reference, so a slower or busier machine, whose reference takes longer, gives the same verdict.
 */
export const REFERENCE_MS = 10;

/** The most a row may come to: CPU time [ms] on a machine whose reference takes `REFERENCE_MS`, or a plain ratio. */
export type Bound = { readonly unit: "ms" | "ratio"; readonly most: number };

const ms = (most: number): Bound => ({ unit: "ms", most });
const ratio = (most: number): Bound => ({ unit: "ratio", most });

/** Every bound, by the kind of row it is for. All of them are house rules. */
export const BOUNDS = {
  /** Stored bytes, or that the client has them. */
  poll: ms(0.3),
  /** A page read from rows: warm, and as the first request of an isolate. */
  page: ms(2),
  firstPage: ms(10),
  /** What the answer to a tap takes, without the rebuild behind it. */
  tap: ms(3),
  picture: ms(10),
  paper: ms(10),
  /** What the platform's free plan gives one call. Source: Cloudflare, Workers limits, CPU time, from memory. */
  oneCall: ms(10),
  /** Loading the script into an isolate, before its first request. */
  startUp: ms(30),
  /** Of 60 plantings. */
  rebuild: ms(12),
  /** The power of the number of plantings with which a rebuild's price grows from 60 to 500. */
  rebuildGrowth: ratio(1.1),
  /** The tasks of 600 plantings. */
  placing: ms(50),
  /** Seldom asked, and never while something else waits. */
  extreme: ms(500),
  /** Five days of what still fits a bed, all crops in all their ways. */
  askedRoom: ms(100),
  /** Beside the plainest writer, 250 and 2,500 events, and an event of 2,500 beside one of 250. */
  smallWriter: ratio(2.5),
  greatWriter: ratio(2.2),
  writerGrowth: ratio(1.25),
} as const;

export type BoundName = keyof typeof BOUNDS;
