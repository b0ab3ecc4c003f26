/** Something with a price: `run` does it so many times and ends when the last is done. */
export type Path = { readonly name: string; readonly run: (times: number) => Promise<void> };

/** What one run takes: CPU time [ms], its share of the reference measured beside it, and half the width of the shares' middle half, as a part of their median. */
export type Price = { readonly ms: number; readonly share: number; readonly spread: number };

/** A price, or why there is none. */
export type Measured =
  | { readonly kind: "price"; readonly price: Price }
  | { readonly kind: "failed"; readonly why: string };

/** How the CPU time used so far [ms] is read, and the reference. */
export type Meter = {
  readonly cpuMs: () => Promise<number>;
  readonly reference: Path;
};

/** CPU time [ms] of one run of a path, and of one of the reference, before and after. */
export type Sample = { readonly ms: number; readonly referenceMs: number };

/** How many samples are taken of each path, and how long one lasts at least [ms]: a path is repeated until it does. */
export type Depth = { readonly rounds: number; readonly sampleMs: number };

/** Enough for requests, of which one is like another. */
const USUAL: Depth = { rounds: 15, sampleMs: 20 };
/** The reference runs this often in a row, since a single run also pays for the request around it. */
const REFERENCE_RUNS = 2;
/** Before its first sample a path runs for this long [ms], and this often, so that it is compiled. */
const WARM_UP_MS = 500;
const WARM_UP_RUNS = 5;

/**
 * The median price of each path once warm, by its name. Paths take turns, with the reference between every two, so that a
 * slow moment of the machine meets all of them, and a path and the reference beside it alike.
 */
export async function warmPrices(
  meter: Meter,
  paths: readonly Path[],
  { rounds, sampleMs }: Depth = USUAL,
): Promise<ReadonlyMap<string, Measured>> {
  const collector = collectorOf(paths.map(({ name }) => name));
  const timesOf = new Map<Path, number>();
  for (const path of [meter.reference, ...paths])
    await collector.attempt(path.name, async () => {
      timesOf.set(path, Math.max(1, Math.ceil(sampleMs / (await warmUp(meter, path)))));
    });
  const sampler = samplerOf(meter);
  for (let round = 0; round < rounds; round++)
    for (const path of paths)
      await collector.sample(path.name, () =>
        sampler(() => costOf(meter, path, timesOf.get(path) ?? 1)),
      );
  return collector.measured();
}

/** Takes samples one after another, each between two measurements of the reference; two neighbours share one. `cost` gives the CPU time [ms] of one run. */
export function samplerOf(meter: Meter): (cost: () => Promise<number>) => Promise<Sample> {
  const referenceCost = () => costOf(meter, meter.reference, REFERENCE_RUNS);
  let before: number | null = null;
  return async (cost) => {
    const first = before ?? (await referenceCost());
    const ms = await cost();
    before = await referenceCost();
    return { ms, referenceMs: (first + before) / 2 };
  };
}

/** CPU time [ms] of one of so many runs in a row. */
export async function costOf({ cpuMs }: Meter, path: Path, times: number): Promise<number> {
  const before = await cpuMs();
  await path.run(times);
  return ((await cpuMs()) - before) / times;
}

/** Gathers samples by name. What fails once is not tried again, and says why in the end. */
export function collectorOf(names: readonly string[]) {
  const samples = new Map<string, Sample[]>(names.map((name) => [name, []]));
  const failures = new Map<string, string>();
  const attempt = async (name: string, work: () => Promise<void>) => {
    if (failures.has(name)) return;
    try {
      await work();
    } catch (error) {
      failures.set(name, error instanceof Error ? error.message : String(error));
    }
  };
  const sample = (name: string, take: () => Promise<Sample>) =>
    attempt(name, async () => {
      samples.get(name)?.push(await take());
    });
  const measuredOf = (name: string, all: readonly Sample[]): Measured => {
    const why = failures.get(name);
    return why === undefined ? { kind: "price", price: priceOf(all) } : { kind: "failed", why };
  };
  const measured = (): ReadonlyMap<string, Measured> =>
    new Map([...samples].map(([name, all]) => [name, measuredOf(name, all)]));
  return { attempt, sample, measured };
}

/** The price that some samples of one path come to; not a number where there are none. */
export function priceOf(samples: readonly Sample[]): Price {
  const shares = samples.map(({ ms, referenceMs }) => ms / referenceMs);
  const share = quantile(shares, 0.5);
  const spread = (quantile(shares, 0.75) - quantile(shares, 0.25)) / 2 / share;
  const all = samples.map(({ ms }) => ms);
  return { ms: quantile(all, 0.5), share, spread };
}

/** Gives what the last of its runs took [ms]. */
async function warmUp(meter: Meter, path: Path): Promise<number> {
  let spent = 0;
  let runs = 0;
  let last = 0;
  for (let times = 1; spent < WARM_UP_MS || runs < WARM_UP_RUNS; times = Math.min(times * 2, 64)) {
    last = await costOf(meter, path, times);
    spent += last * times;
    runs += times;
  }
  return last;
}

/** The value below which that part of the values lies, taken from the nearest of them. */
function quantile(values: readonly number[], part: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.round(part * (sorted.length - 1))] ?? Number.NaN;
}
