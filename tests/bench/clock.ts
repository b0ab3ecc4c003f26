const SAMPLES = 50;
const SAMPLE_MS = 24;

/**
 * Median price [ms] of one run of each job, over 50 samples, the jobs taken in turn so that a slow moment
 * of the machine meets all of them. The runtime's clock counts whole milliseconds, so a sample repeats its
 * job until it lasts long enough, and lets the event loop turn before each, since a deployed worker's clock
 * stands still between two turns.
 */
export async function medians(jobs: readonly (() => unknown)[]): Promise<readonly number[]> {
  const repeats = [];
  for (const job of jobs) repeats.push(await repeatsFor(job));
  const samples: number[][] = jobs.map(() => []);
  for (let sample = 0; sample < SAMPLES; sample++) {
    for (const [index, job] of jobs.entries()) {
      samples[index]?.push(await timed(job, repeats[index] ?? 1));
    }
  }
  return samples.map(median);
}

async function repeatsFor(job: () => unknown): Promise<number> {
  await timed(job, 3);
  let repeats = 1;
  while ((await timed(job, repeats)) * repeats < SAMPLE_MS) repeats *= 2;
  return repeats;
}

async function timed(job: () => unknown, repeats: number): Promise<number> {
  await new Promise((resolve) => setTimeout(resolve, 0));
  const start = performance.now();
  for (let run = 0; run < repeats; run++) job();
  return (performance.now() - start) / repeats;
}

function median(numbers: readonly number[]): number {
  return numbers.toSorted((a, b) => a - b)[numbers.length >> 1] ?? Number.NaN;
}
