import { join } from "node:path";
import { call } from "../rough/calls.ts";
import { freshFolder } from "../rough/runtime.ts";
import { REFERENCE_MS } from "./bounds.ts";
import { restingCpuMsOf } from "./cpu.ts";
import { type Meter, type Path, warmPrices } from "./measure.ts";
import { type JobPath, readingRows, rebuildRows, writingRows } from "./pure-rows.ts";
import { bundle, startRuntime } from "./start.ts";
import { isMet, type Row, tableOf } from "./table.ts";

/*
 * `npm run bench` prints what every path costs in workerd: CPU time of the whole process, read from outside, and its share
 * of a reference calculation (reference.ts) that runs beside it. The share decides whether a bound (bounds.ts) is met.
 * It exits 1 where one is missed. Linux only; about three minutes on two cores.
 *
 * `npm run bench -- --only rebuild` measures that group alone, `--only rebuild writing` two of them. GROUPS has all names.
 */

type Group = (meter: Meter, pathOf: JobPath) => Promise<readonly Row[]>;

const GROUPS: Readonly<Record<string, Group>> = {
  rebuild: rebuildRows,
  reading: readingRows,
  writing: writingRows,
};

await main(process.argv.slice(2));

async function main(words: readonly string[]): Promise<void> {
  const groups = groupsIn(words);
  const folder = freshFolder();
  const script = bundle("tests/bench/worker.ts", join(folder.path, "jobs"));
  const runtime = await startRuntime(["reference", "jobs"].map((name) => ({ name, script })));
  try {
    const reference = pathAt(await runtime.addressOf("reference"), "reference/0");
    const jobs = await runtime.addressOf("jobs");
    const meter = { cpuMs: () => restingCpuMsOf(runtime.pid), reference };
    const rows: Row[] = [];
    for (const group of groups)
      rows.push(...((await GROUPS[group]?.(meter, (job) => pathAt(jobs, job))) ?? []));
    await report(meter, rows, groups);
  } finally {
    await runtime.stop();
    folder.remove();
  }
}

/** The groups that are asked for, all where none is. Throws for one that is not there. */
function groupsIn(words: readonly string[]): readonly string[] {
  const asked = words.filter((word) => word !== "--only");
  const unknown = asked.filter((word) => !Object.hasOwn(GROUPS, word));
  if (unknown.length > 0)
    throw new Error(`no group ${unknown.join(", ")}; there are ${Object.keys(GROUPS).join(", ")}`);
  return asked.length > 0 ? asked : Object.keys(GROUPS);
}

/** A job of worker.ts as a path; its runs happen in one request. */
function pathAt(address: string, job: string): Path {
  const run = async (times: number) => {
    const { status } = await call(`${address}${job}?times=${times}`);
    if (status !== 200) throw new Error(`${job} answered ${status}`);
  };
  return { name: job, run };
}

async function report(meter: Meter, rows: readonly Row[], groups: readonly string[]) {
  const { ms = Number.NaN, spread = Number.NaN } =
    (await warmPrices(meter, [meter.reference])).get(meter.reference.name) ?? {};
  const missed = rows.filter((row) => !isMet(row));
  const left = Object.keys(GROUPS).filter((group) => !groups.includes(group));
  console.log(tableOf(rows));
  console.log(
    `\nThe reference takes ${ms.toFixed(2)} ms here (spread ${Math.round(spread * 100)} %). A bound in ms is for a machine on which it takes ${REFERENCE_MS} ms,`,
  );
  console.log(
    "so each is held as a share of the reference. Spread: half of the middle half of the samples.",
  );
  if (left.length > 0) console.log(`Not measured: ${left.join(", ")}.`);
  console.log(`${rows.length - missed.length} of ${rows.length} met.`);
  process.exitCode = missed.length > 0 ? 1 : 0;
}
