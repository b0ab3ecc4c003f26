import { random } from "./garden/plan/random.ts";

/** How far a run looks, and the number its samples are drawn from. */
export type Depth = { readonly full: boolean; readonly seed: number };

/**
 * A run's depth by its environment. `DEPTH=full` takes every sample of every suite; `SEED=` repeats a run's samples.
 * Where no seed is given, the full depth takes 0, the samples that were looked over when their suites were written,
 * and the usual one takes one made from `any`, a whole number. Throws on any other setting.
 */
export function depthFrom(env: Readonly<Record<string, string | undefined>>, any: number): Depth {
  const { DEPTH = "usual", SEED } = env;
  if (DEPTH !== "usual" && DEPTH !== "full")
    throw new RangeError(`DEPTH is usual or full, not ${DEPTH}`);
  const full = DEPTH === "full";
  if (SEED === undefined) return { full, seed: full ? 0 : 1 + (any % 999_983) };
  if (!/^\d{1,6}$/.test(SEED)) throw new RangeError(`SEED is up to six digits, not ${SEED}`);
  return { full, seed: Number(SEED) };
}

/** This run's depth. The configuration hands its seed to every process and prints it. */
export const DEPTH: Depth = depthFrom(process.env, Date.now());

/** How many samples a suite takes: all of them in the full depth, a part of them in the usual one. */
export function samples(full: number, usual: number): number {
  return DEPTH.full ? full : usual;
}

/** All of some things in the full depth, and so many in the usual one, others in each run. */
export function partOf<T>(all: readonly T[], usual: number): readonly T[] {
  const from = DEPTH.seed % Math.max(1, all.length);
  return DEPTH.full ? all : [...all.slice(from), ...all.slice(0, from)].slice(0, usual);
}

/** Random numbers from 0 to 1 for one suite's samples; suites of other numbers draw others. */
export function drawnFor(suite: number): () => number {
  return random(suite + DEPTH.seed * 1_000_003);
}

/**
 * Random numbers from 0 to 1 for a suite that measures a mean or a middle over its samples: always the same, since other samples
 * would move the figure and not the code.
 */
export function drawnForMeans(suite: number): () => number {
  return random(suite);
}
