/** Something with a price: `run` does it so many times and ends when the last is done. */
export type Path = { readonly name: string; readonly run: (times: number) => Promise<void> };

/** What one run takes: CPU time [ms], its share of the reference measured beside it, and how far the shares' middle half spreads about their median. */
export type Price = { readonly ms: number; readonly share: number; readonly spread: number };

/** How CPU time is read, and one run of the reference. */
export type Meter = {
  readonly cpuMs: () => Promise<number>;
  readonly reference: Path;
};

const ROUNDS = 15;
/** The reference runs this often in a row, since a single run also pays for the request around it. */
const REFERENCE_RUNS = 2;
/** A sample repeats its path until it takes this long [ms]. */
const SAMPLE_MS = 20;
/** Before its first sample a path runs for this long [ms], and this often, so that it is compiled. */
const WARM_UP_MS = 800;
const WARM_UP_RUNS = 5;

/**
 * The median price of each path once warm. Paths take turns, with the reference between every two, so that a slow
 * moment of the machine meets all of them, and a path and the reference beside it alike.
 */
export async function warmPrices(
  meter: Meter,
  paths: readonly Path[],
): Promise<ReadonlyMap<string, Price>> {
  const timesOf = new Map<Path, number>();
  for (const path of paths) timesOf.set(path, await warmUp(meter, path));
  await warmUp(meter, meter.reference);
  const samples = new Map<Path, Sample[]>(paths.map((path) => [path, []]));
  const sampler = samplerOf(meter);
  for (let round = 0; round < ROUNDS; round++)
    for (const path of paths) samples.get(path)?.push(await sampler(path, timesOf.get(path) ?? 1));
  return new Map([...samples].map(([{ name }, all]) => [name, priceOf(all)]));
}

/** CPU time [ms] of one run of a path, and of one of the reference, right before and after. */
export type Sample = { readonly ms: number; readonly referenceMs: number };

/** Takes samples one after another, each between two measurements of the reference; two neighbours share one. */
export function samplerOf(meter: Meter): (path: Path, times: number) => Promise<Sample> {
  let before: number | null = null;
  return async (path, times) => {
    const first = before ?? (await costOf(meter, meter.reference, REFERENCE_RUNS));
    const ms = await costOf(meter, path, times);
    before = await costOf(meter, meter.reference, REFERENCE_RUNS);
    return { ms, referenceMs: (first + before) / 2 };
  };
}

/** The price that some samples of one path come to; at least one. */
export function priceOf(samples: readonly Sample[]): Price {
  const shares = samples.map(({ ms, referenceMs }) => ms / referenceMs);
  const share = quantile(shares, 0.5);
  const spread = (quantile(shares, 0.75) - quantile(shares, 0.25)) / 2 / share;
  return {
    ms: quantile(
      samples.map(({ ms }) => ms),
      0.5,
    ),
    share,
    spread,
  };
}

/** CPU time [ms] of one of so many runs in a row. */
async function costOf({ cpuMs }: Meter, path: Path, times: number): Promise<number> {
  const before = await cpuMs();
  await path.run(times);
  return ((await cpuMs()) - before) / times;
}

/** Gives how many runs make a sample. */
async function warmUp(meter: Meter, path: Path): Promise<number> {
  let spent = 0;
  let runs = 0;
  let last = 0;
  for (let times = 1; spent < WARM_UP_MS || runs < WARM_UP_RUNS; times = Math.min(times * 2, 64)) {
    last = await costOf(meter, path, times);
    spent += last * times;
    runs += times;
  }
  return Math.max(1, Math.ceil(SAMPLE_MS / last));
}

/** The value below which that part of the values lies, taken from the nearest of them. */
function quantile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.round(part * (sorted.length - 1))] ?? Number.NaN;
}
