import autocannon from "autocannon";
import { laneText, linkAt, mustPublish } from "../rough/lane.ts";
import { bundled, freshFolder, type Runtime, startOther, startOurs } from "../rough/runtime.ts";
import { cpuSecondsOf } from "./cpu.ts";
import { type Measured, medianOf, tableOf, type Wish, wishesMissed } from "./table.ts";

const CONSTANT = `export default { fetch: () => new Response("ok\\n") };`;

/** What any worker must do whose object looks one thing up before it answers. */
const ONE_LOOK_UP = `import { DurableObject } from "cloudflare:workers";
export class Looking extends DurableObject {
  look() {
    return this.ctx.storage.sql.exec("SELECT ?1 AS said", "ok").one().said;
  }
}
export default {
  async fetch(request, { LOOKING }) {
    return new Response((await LOOKING.getByName("one").look()) + "\\n");
  },
};`;

/** The object that it asks. */
const LOOKING = { LOOKING: { className: "Looking", useSQLite: true } };

const SECONDS = 5;
const WARM_UP_SECONDS = 2;
const REPEATS = 3;
const CONNECTIONS = 10;

/** What is asked of which runtime, and how each answer must be. */
type Course = {
  readonly name: string;
  readonly runtime: Runtime;
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly status: number;
};

const WISHES: readonly Wish[] = [
  { name: "304", of: "constant", least: 1 / 2 },
  { name: "stored 200, gzip", of: "constant", least: 1 / 3 },
];

async function run({ runtime, url, headers, status }: Course, seconds: number): Promise<Measured> {
  const before = cpuSecondsOf(runtime.pid);
  const done = await autocannon({ url, headers, duration: seconds, connections: CONNECTIONS });
  const after = cpuSecondsOf(runtime.pid);
  const { count = 0 } = done.statusCodeStats?.[`${status}`] ?? {};
  const answered = done["1xx"] + done["2xx"] + done["3xx"] + done["4xx"] + done["5xx"];
  if (done.errors > 0 || done.timeouts > 0 || answered === 0 || count !== answered)
    throw new Error(`${url}: ${done.errors} errors; ${JSON.stringify(done.statusCodeStats)}`);
  const cpuMs = before === null || after === null ? null : ((after - before) * 1000) / answered;
  return { perSecond: answered / done.duration, cpuMs };
}

async function feedCourses(runtime: Runtime): Promise<readonly Course[]> {
  await mustPublish(runtime, "lane", laneText(10));
  const link = await linkAt(runtime, "lane", "helper");
  const url = `${link}tasks.ics`;
  const job = `${link}on/2027/beet-sort-1/thin/1`;
  const gzip = { "accept-encoding": "gzip" };
  const etag = (await fetch(url, { headers: gzip })).headers.get("etag") ?? "";
  return [
    { name: "304", runtime, url, headers: { ...gzip, "if-none-match": etag }, status: 304 },
    { name: "stored 200, gzip", runtime, url, headers: gzip, status: 200 },
    { name: "this week's page", runtime, url: link, headers: gzip, status: 200 },
    { name: "a job's page", runtime, url: job, headers: gzip, status: 200 },
  ];
}

/** Every course in turn, so often, so that what else the machine does falls on all alike. */
async function measure(courses: readonly Course[]): Promise<ReadonlyMap<string, Measured>> {
  for (const course of courses) await run(course, WARM_UP_SECONDS);
  const runs = new Map<string, Measured[]>(courses.map(({ name }) => [name, []]));
  for (let repeat = 0; repeat < REPEATS; repeat += 1)
    for (const course of courses) runs.get(course.name)?.push(await run(course, SECONDS));
  return new Map([...runs].map(([name, all]) => [name, medianOf(all)]));
}

async function main(): Promise<void> {
  const folder = freshFolder();
  const runtimes: Runtime[] = [];
  const keep = async (starting: Promise<Runtime>) => {
    const runtime = await starting;
    runtimes.push(runtime);
    return runtime;
  };
  try {
    const script = bundled(`${folder.path}/bundle`);
    const constant = await keep(startOther(CONSTANT, `${folder.path}/constant`));
    const looking = await keep(startOther(ONE_LOOK_UP, `${folder.path}/looking`, LOOKING));
    const ours = await keep(startOurs({ script, state: `${folder.path}/ours` }));
    const plain = { headers: {}, status: 200 };
    const measured = await measure([
      { name: "constant", runtime: constant, url: constant.origin, ...plain },
      ...(await feedCourses(ours)),
      { name: "one look-up", runtime: looking, url: looking.origin, ...plain },
    ]);
    console.log(tableOf(measured, ["constant", "one look-up"]));
    const missed = wishesMissed(measured, WISHES);
    for (const line of missed) console.error(line);
    process.exitCode = missed.length > 0 ? 1 : 0;
  } finally {
    for (const runtime of runtimes) await runtime.stop();
    folder.remove();
  }
}

await main();
