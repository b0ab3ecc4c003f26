import type { BoundName } from "./bounds.ts";
import { meterOf } from "./jobs.ts";
import {
  collectorOf,
  costOf,
  type Measured,
  type Meter,
  type Path,
  samplerOf,
  warmPrices,
} from "./measure.ts";
import { DAILY, OCCASIONAL, type Page, pagePath } from "./pages.ts";
import { firstPoll, nextPoll } from "./polls.ts";
import { AHEAD_MS, looking, publish, type Request, repeated } from "./site.ts";
import {
  constantWorker,
  deployedWorker,
  plainWorker,
  type Runtime,
  type Scripts,
  startRuntime,
} from "./start.ts";
import type { Row } from "./table.ts";
import { firstTap, tapCost } from "./taps.ts";

/** A running site: the address of a worker that is warm, and of the next one that nobody has asked yet. */
type Site = {
  readonly runtime: Runtime;
  readonly meter: Meter;
  readonly warm: string;
  readonly fresh: () => Promise<string>;
};

type Group = (site: Site) => Promise<readonly Row[]>;

/** Groups of rows that are requests to the deployed worker. */
export const SITE_GROUPS: Readonly<Record<string, Group>> = {
  polls: pollRows,
  pages: pageRows,
  occasional: occasionalRows,
  first: firstRows,
  taps: tapRows,
};

/** Numbers of plantings of the gardens that are asked. */
const SIZES = [60, 200, 500] as const;
const FRESH_SAMPLES = 5;
/** For every daily page of every size, and a poll. */
const FRESH_WORKERS = (SIZES.length * DAILY.length + 1) * FRESH_SAMPLES;
const TAPS = 15;

/** The rows of some of those groups, measured in one runtime. */
export async function siteRows(
  groups: readonly string[],
  { jobs, deployed }: Scripts,
): Promise<readonly Row[]> {
  const freshWorkers = groups.includes("first") ? FRESH_WORKERS : 0;
  const fresh = Array.from({ length: freshWorkers }, (_, index) => `fresh-${index}`);
  const runtime = await startRuntime([
    plainWorker("reference", jobs),
    constantWorker("constant"),
    ...["warm", ...fresh].map((name) => deployedWorker(name, deployed, AHEAD_MS)),
  ]);
  try {
    const site = await siteIn(runtime, fresh);
    const rows: Row[] = [];
    for (const group of groups) rows.push(...((await SITE_GROUPS[group]?.(site)) ?? []));
    return rows;
  } finally {
    await runtime.stop();
  }
}

async function siteIn(runtime: Runtime, freshWorkers: readonly string[]): Promise<Site> {
  const meter = await meterOf(runtime);
  const warm = await runtime.addressOf("warm");
  for (const size of SIZES) {
    await publish(warm, gardenOf(size), size);
    await meter.cpuMs();
  }
  const left = [...freshWorkers];
  return { runtime, meter, warm, fresh: () => runtime.addressOf(left.shift() ?? "one too many") };
}

const gardenOf = (size: number) => `garden-${size}`;

/** A request with its row: `ask` makes it for the worker at an address. */
type Asked = {
  readonly name: string;
  readonly bound: BoundName;
  readonly ask: (address: string) => Promise<Request>;
};

/** Polls of a stored calendar, by a client that has it and by one that does not. */
function pollRows(site: Site): Promise<readonly Row[]> {
  const asked = SIZES.flatMap((size): readonly Asked[] => [
    {
      ...{ name: `poll 304, ${size} plantings`, bound: "poll" },
      ask: (address) => nextPoll(address, gardenOf(size), site.warm),
    },
    {
      ...{ name: `poll 200 gzip, ${size} plantings`, bound: "poll" },
      ask: (address) => firstPoll(address, gardenOf(size)),
    },
  ]);
  return warmRows(site, [nothing(site), ...asked]);
}

/** What HTTP itself takes here: a worker that does nothing but answer. */
function nothing({ runtime }: Site): Asked {
  const ask = async () => looking(await runtime.addressOf("constant"));
  return { name: "a constant, for comparison", bound: "poll", ask };
}

/** The daily pages of each garden, warm. */
function pageRows(site: Site): Promise<readonly Row[]> {
  return warmRows(site, dailyPages(site, "page"));
}

/** What is looked at now and then, of the smallest garden. */
function occasionalRows(site: Site): Promise<readonly Row[]> {
  const [size] = SIZES;
  return warmRows(
    site,
    OCCASIONAL.map((page) => askedPage(site, page, size)),
  );
}

/** The daily pages and a poll, each as the first request of an isolate, with an object of its own. */
async function firstRows(site: Site): Promise<readonly Row[]> {
  const [size] = SIZES;
  const poll: Asked = {
    ...{ name: `poll 304, ${size} plantings`, bound: "firstPage" },
    ask: (address) => nextPoll(address, gardenOf(size), site.warm),
  };
  const asked = [poll, ...dailyPages(site, "firstPage")];
  const collector = collectorOf(asked.map(({ name }) => name));
  const sampler = samplerOf(site.meter);
  for (let sample = 0; sample < FRESH_SAMPLES; sample++)
    for (const { name, ask } of asked)
      await collector.sample(name, async () => {
        const request = await ask(await site.fresh());
        return sampler(() =>
          costOf(
            site.meter,
            pathOf(name, async () => request),
            1,
          ),
        );
      });
  const measured = collector.measured();
  return asked.map(({ name, bound }) => rowAt(measured, name, bound, `first: ${name}`));
}

/** What the answer to a tap takes; each a garden's first for a while, so that nothing runs behind an earlier one. */
async function tapRows({ runtime, meter, warm }: Site): Promise<readonly Row[]> {
  const [size] = SIZES;
  const name = `the answer to a tap, ${size} plantings`;
  const collector = collectorOf([name]);
  const sampler = samplerOf(meter);
  for (let garden = 0; garden < TAPS; garden++)
    await collector.sample(name, async () => {
      await publish(warm, `tapped-${garden}`, size);
      await meter.cpuMs();
      const tap = await firstTap(warm, `tapped-${garden}`);
      return sampler(() => tapCost(runtime.pid, meter, tap));
    });
  return [rowAt(collector.measured(), name, "tap")];
}

function dailyPages(site: Site, bound: BoundName): readonly Asked[] {
  return DAILY.flatMap((page) => SIZES.map((size) => askedPage(site, { ...page, bound }, size)));
}

function askedPage({ warm }: Site, page: Page, size: number): Asked {
  return {
    ...{ name: `${page.name}, ${size} plantings`, bound: page.bound },
    ask: async (address) => looking(`${address}${await pagePath(warm, gardenOf(size), page)}`),
  };
}

async function warmRows({ meter, warm }: Site, asked: readonly Asked[]): Promise<readonly Row[]> {
  const paths = asked.map(({ name, ask }) => {
    let request: Promise<Request> | null = null;
    return pathOf(name, () => {
      request ??= ask(warm);
      return request;
    });
  });
  const measured = await warmPrices(meter, paths);
  return asked.map(({ name, bound }) => rowAt(measured, name, bound));
}

/** A request as a path; what it is made of is asked for at its first run. */
function pathOf(name: string, request: () => Promise<Request>): Path {
  return { name, run: async (times) => repeated(await request(), times) };
}

function rowAt(
  measured: ReadonlyMap<string, Measured>,
  name: string,
  bound: BoundName,
  title = name,
): Row {
  const why = "it was not measured";
  return { ...(measured.get(name) ?? { kind: "failed", why }), name: title, bound };
}
