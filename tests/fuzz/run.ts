import fc from "fast-check";
import { INPUTS, KINDS, type Kind } from "./inputs.ts";
import { READERS } from "./readers.ts";

/** An input that took long, or was read wrongly (`wrong` says how; null: it was not). */
export type Tried = {
  readonly kind: Kind;
  readonly cpuMs: number;
  readonly input: string;
  readonly wrong: string | null;
};

/** What a run found of each kind: how many were tried and failed, and all of its CPU time [ms]; the slowest, and those that failed. */
export type FuzzRun = {
  readonly kinds: ReadonlyMap<Kind, { tried: number; failed: number; cpuMs: number; most: number }>;
  readonly slowest: readonly Tried[];
  readonly failed: readonly Tried[];
};

const SLOWEST = 10;
const AT_ONCE = 100;

/** Tries so many inputs of every kind, drawn by a seed: the same seed and count draw the same. Ends early once `isOver`. */
export function fuzz(
  seed: number,
  each: number,
  isOver: () => boolean = () => false,
  kinds: readonly Kind[] = KINDS,
): FuzzRun {
  const rows = new Map(kinds.map((kind) => [kind, { tried: 0, failed: 0, cpuMs: 0, most: 0 }]));
  let slowest: readonly Tried[] = [];
  const failed: Tried[] = [];
  for (let from = 0; from < each && !isOver(); from += AT_ONCE)
    for (const kind of kinds) {
      const numRuns = Math.min(AT_ONCE, each - from);
      for (const input of fc.sample(INPUTS[kind], { seed: seed + from, numRuns })) {
        const tried = tryOne(kind, input);
        const row = rows.get(kind);
        if (row) {
          row.tried += 1;
          row.failed += tried.wrong === null ? 0 : 1;
          row.cpuMs += tried.cpuMs;
          row.most = Math.max(row.most, tried.cpuMs);
        }
        if (tried.wrong !== null) failed.push(tried);
        if (tried.cpuMs > (slowest.at(-1)?.cpuMs ?? 0) || slowest.length < SLOWEST)
          slowest = [...slowest, tried].sort((a, b) => b.cpuMs - a.cpuMs).slice(0, SLOWEST);
      }
    }
  return { kinds: rows, slowest, failed };
}

function tryOne(kind: Kind, input: string): Tried {
  const before = process.cpuUsage();
  let wrong: string | null = null;
  try {
    READERS[kind](input);
  } catch (error) {
    wrong = error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
  const { user, system } = process.cpuUsage(before);
  return { kind, input, wrong, cpuMs: (user + system) / 1000 };
}
