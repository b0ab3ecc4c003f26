import type { BoundName } from "./bounds.ts";
import { type Meter, type Path, type Price, warmPrices } from "./measure.ts";
import type { Row } from "./table.ts";

/** What makes a path of a job of worker.ts, by the job's address. */
export type JobPath = (job: string) => Path;

type Priced = readonly [job: string, name: string, bound: BoundName];

const REBUILDS: readonly Priced[] = [
  ["rebuild/60", "rebuild of 60 plantings, published before", "rebuild"],
  ["first-rebuild/60", "rebuild of 60 plantings, the first", "rebuild"],
  ["month-later/60", "rebuild of 60 plantings, a month later", "rebuild"],
  ["baseline/60", "baseline days of 60 plantings", "oneCall"],
  ["another-feed/60", "one more feed of 60 plantings", "oneCall"],
  ["placing/60", "tasks of 600 plantings fitted to people", "placing"],
];

const SIZES = [60, 120, 250, 500] as const;

/** Rebuilds of 60 plantings, and how the price of one grows with the garden. */
export async function rebuildRows(meter: Meter, pathOf: JobPath): Promise<readonly Row[]> {
  const grown = SIZES.map((size) => `rebuild/${size}`);
  const jobs = [...new Set([...REBUILDS.map(([job]) => job), ...grown])];
  const prices = await warmPrices(meter, jobs.map(pathOf));
  return [...pricedRows(REBUILDS, prices), growthRow(prices)];
}

function growthRow(prices: ReadonlyMap<string, Price>): Row {
  const points = SIZES.map((size) => ({ size, ...priceAt(prices, `rebuild/${size}`) }));
  const note = points.map(({ size, ms }) => `${size}: ${ms.toFixed(1)}`).join(", ");
  const ratio = exponentOf(points.map(({ size, share }) => [size, share]));
  return {
    ...{ kind: "ratio", ratio, note: `${note} ms` },
    ...{ name: "growth exponent of a rebuild, 60 to 500", bound: "rebuildGrowth" },
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
  ["checking/60", "the same with its season's doubts", "oneCall"],
];

/** Reading the text of a plan. */
export async function readingRows(meter: Meter, pathOf: JobPath): Promise<readonly Row[]> {
  const prices = await warmPrices(
    meter,
    READING.map(([job]) => pathOf(job)),
  );
  return pricedRows(READING, prices);
}

const WRITERS = ["plain-writer", "writer", "new-feed", "same-feed"] as const;

/** Writing events beside the plainest writer, in a small feed and in a great one. */
export async function writingRows(meter: Meter, pathOf: JobPath): Promise<readonly Row[]> {
  const jobs = [250, 2500].flatMap((count) => WRITERS.map((writer) => `${writer}/${count}`));
  const prices = await warmPrices(meter, jobs.map(pathOf));
  const share = (job: string) => priceAt(prices, job).share;
  const ratio = (count: number) => share(`writer/${count}`) / share(`plain-writer/${count}`);
  const growth = share("writer/2500") / 10 / share("writer/250");
  const noteOf = (count: number) =>
    `${WRITERS.map((writer) => `${writer} ${priceAt(prices, `${writer}/${count}`).ms.toFixed(1)}`).join(", ")} ms`;
  return [
    {
      ...{ kind: "ratio", name: "writing 250 events, of the plainest writer" },
      ...{ ratio: ratio(250), bound: "smallWriter", note: noteOf(250) },
    },
    {
      ...{ kind: "ratio", name: "writing 2,500 events, of the plainest writer" },
      ...{ ratio: ratio(2500), bound: "greatWriter", note: noteOf(2500) },
    },
    {
      ...{ kind: "ratio", name: "an event of 2,500, of one of 250" },
      ...{ ratio: growth, bound: "writerGrowth" },
    },
  ];
}

function pricedRows(rows: readonly Priced[], prices: ReadonlyMap<string, Price>): readonly Row[] {
  return rows.map(([job, name, bound]) => {
    return { kind: "price", name, bound, price: priceAt(prices, job) };
  });
}

function priceAt(prices: ReadonlyMap<string, Price>, job: string): Price {
  const price = prices.get(job);
  if (price === undefined) throw new Error(`${job} was not measured`);
  return price;
}
