import type { BoundName } from "./bounds.ts";
import { jobPath, meterOf } from "./jobs.ts";
import { type Depth, type Measured, type Meter, type Path, warmPrices } from "./measure.ts";
import { plainWorker, type Scripts, startRuntime } from "./start.ts";
import type { Row } from "./table.ts";

type PathOf = (job: string) => Path;
type Group = (meter: Meter, pathOf: PathOf) => Promise<readonly Row[]>;

/** Groups of rows that need no store and no request of ours: jobs of worker.ts, which run in workerd all the same. */
export const PURE_GROUPS: Readonly<Record<string, Group>> = {
  rebuild: rebuildRows,
  reading: readingRows,
  writing: writingRows,
  extremes: extremeRows,
};

/** The rows of some of those groups, measured in a runtime of their own. */
export async function pureRows(
  groups: readonly string[],
  scripts: Scripts,
): Promise<readonly Row[]> {
  const workers = ["reference", "jobs"].map((name) => plainWorker(name, scripts.jobs));
  const runtime = await startRuntime(workers);
  try {
    const address = await runtime.addressOf("jobs");
    const meter = await meterOf(runtime);
    const rows: Row[] = [];
    for (const group of groups)
      rows.push(...((await PURE_GROUPS[group]?.(meter, (job) => jobPath(address, job))) ?? []));
    return rows;
  } finally {
    await runtime.stop();
  }
}

/** Long samples, so that each has its part of the collector's work. */
const DEEP: Depth = { rounds: 15, sampleMs: 60 };

type Priced = readonly [job: string, name: string, bound: BoundName];
type Prices = ReadonlyMap<string, Measured>;

const REBUILDS: readonly Priced[] = [
  ["rebuild/60", "rebuild of 60 plantings, published before", "rebuild"],
  ["first-rebuild/60", "rebuild of 60 plantings, the first", "rebuild"],
  ["month-later/60", "rebuild of 60 plantings, a month later", "rebuild"],
  ["baseline/60", "baseline days of 60 plantings", "oneCall"],
  ["another-feed/60", "one more feed of 60 plantings", "oneCall"],
  ["placing/60", "tasks of 600 plantings fitted to people", "placing"],
];

const SIZES = [60, 120, 250, 500] as const;
const GROWN = SIZES.map((size) => `rebuild/${size}`);

/** Rebuilds of 60 plantings, and how the price of one grows with the garden. */
async function rebuildRows(meter: Meter, pathOf: PathOf): Promise<readonly Row[]> {
  const jobs = [...new Set([...REBUILDS.map(([job]) => job), ...GROWN])];
  const prices = await warmPrices(meter, jobs.map(pathOf), DEEP);
  return [...pricedRows(REBUILDS, prices), growthRow(prices)];
}

function growthRow(prices: Prices): Row {
  const exponent = (shares: readonly number[]) =>
    exponentOf(shares.map((share, at) => [SIZES[at] ?? Number.NaN, share]));
  return {
    ...ratioOf(prices, GROWN, exponent),
    ...{ name: "growth exponent of a rebuild, 60 to 500", bound: "rebuildGrowth" },
    note: noteOf(prices, GROWN),
  };
}

/** The power of x with which y grows: the slope of the least-squares line through the points' logarithms. */
export function exponentOf(points: readonly (readonly [x: number, y: number])[]): number {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)] as const);
  const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
  const [meanX, meanY] = [mean(logs.map(([x]) => x)), mean(logs.map(([, y]) => y))];
  const covariance = mean(logs.map(([x, y]) => (x - meanX) * (y - meanY)));
  return covariance / mean(logs.map(([x]) => (x - meanX) ** 2));
}

const READING: readonly Priced[] = [
  ["reading/60", "reading a plan of 60 plantings", "oneCall"],
  ["checking/60", "checking it, its season built once", "oneCall"],
];

/** Reading the text of a plan. */
async function readingRows(meter: Meter, pathOf: PathOf): Promise<readonly Row[]> {
  const paths = READING.map(([job]) => pathOf(job));
  return pricedRows(READING, await warmPrices(meter, paths, DEEP));
}

const EXTREMES: readonly Priced[] = [
  ["repeated/10000", "eight texts of one piece repeated 10,000 times, read", "extreme"],
  ["station/100", "a station's hundred years, read", "extreme"],
  ["differences/8000", "two texts of 8,000 lines, none alike, given up", "extreme"],
  ["room/5", "room in a bed, asked on five days", "askedRoom"],
];

/** What is far greater or stranger than a garden needs, so that nobody can keep a server busy with it. */
async function extremeRows(meter: Meter, pathOf: PathOf): Promise<readonly Row[]> {
  const paths = EXTREMES.map(([job]) => pathOf(job));
  return pricedRows(EXTREMES, await warmPrices(meter, paths));
}

const WRITERS = ["plain-writer", "writer", "new-feed", "same-feed"] as const;

/** Writing events beside the plainest writer, in a small feed and in a great one. */
async function writingRows(meter: Meter, pathOf: PathOf): Promise<readonly Row[]> {
  const small = WRITERS.map((writer) => `${writer}/250`);
  const great = WRITERS.map((writer) => `${writer}/2500`);
  const prices = await warmPrices(meter, [...small, ...great].map(pathOf), DEEP);
  const toPlain = ([plain = Number.NaN, ours = Number.NaN]: readonly number[]) => ours / plain;
  const growth = ([few = Number.NaN, many = Number.NaN]: readonly number[]) => many / 10 / few;
  return [
    {
      ...ratioOf(prices, small, toPlain),
      ...{ name: "writing 250 events, of the plainest writer", bound: "smallWriter" },
      note: noteOf(prices, small),
    },
    {
      ...ratioOf(prices, great, toPlain),
      ...{ name: "writing 2,500 events, of the plainest writer", bound: "greatWriter" },
      note: noteOf(prices, great),
    },
    {
      ...ratioOf(prices, ["writer/250", "writer/2500"], growth),
      ...{ name: "an event of 2,500, of one of 250", bound: "writerGrowth" },
    },
  ];
}

function pricedRows(rows: readonly Priced[], prices: Prices): readonly Row[] {
  return rows.map(([job, name, bound]) => ({ ...measuredAt(prices, job), name, bound }));
}

/** A figure made of several jobs' shares, in their order; failed where one of them is. */
function ratioOf(
  prices: Prices,
  jobs: readonly string[],
  ratio: (shares: readonly number[]) => number,
): Measured | { readonly kind: "ratio"; readonly ratio: number } {
  const measured = jobs.map((job) => measuredAt(prices, job));
  const failed = measured.find(({ kind }) => kind === "failed");
  if (failed) return failed;
  return { kind: "ratio", ratio: ratio(measured.map(shareOf)) };
}

function shareOf(measured: Measured): number {
  return measured.kind === "price" ? measured.price.share : Number.NaN;
}

/** What each of those jobs takes, in words. */
function noteOf(prices: Prices, jobs: readonly string[]): string {
  const parts = jobs.map((job) => {
    const measured = measuredAt(prices, job);
    return `${job} ${measured.kind === "price" ? measured.price.ms.toFixed(1) : "-"}`;
  });
  return `${parts.join(", ")} ms`;
}

function measuredAt(prices: Prices, job: string): Measured {
  return prices.get(job) ?? { kind: "failed", why: `${job} was not measured` };
}
