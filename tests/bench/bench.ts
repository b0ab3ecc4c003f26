import { cpus, loadavg } from "node:os";
import { freshFolder } from "../rough/runtime.ts";
import { REFERENCE_MS } from "./bounds.ts";
import { PURE_GROUPS, pureRows } from "./pure-rows.ts";
import { SITE_GROUPS, siteRows } from "./site-rows.ts";
import { bundledScripts } from "./start.ts";
import { startRows } from "./start-rows.ts";
import { isMet, type Row, referenceMsIn, tableOf } from "./table.ts";

/*
 * `npm run bench` prints what every path costs in workerd: CPU time of the whole process, read from outside, and its share
 * of a reference calculation (reference.ts) that runs beside it. The share decides whether a bound (bounds.ts) is met.
 * It exits 1 where one is missed. Linux only; about three minutes on two cores.
 *
 * With ten programs waiting for each core, polls and first requests come out up to a quarter too high even as shares: each
 * finds the caches emptied by others, and the reference does not. The load is printed with the table.
 *
 * `npm run bench -- --only rebuild` measures that group alone, `--only rebuild writing` two of them. The groups are those
 * of PURE_GROUPS (the core alone), SITE_GROUPS (requests to the deployed worker) and `start` (loading it).
 */

const ALL = [...Object.keys(PURE_GROUPS), "start", ...Object.keys(SITE_GROUPS)];

await main(process.argv.slice(2));

async function main(words: readonly string[]): Promise<void> {
  const groups = groupsIn(words);
  const folder = freshFolder();
  try {
    report(await measuredRows(groups, folder.path), groups);
  } finally {
    folder.remove();
  }
}

/** The groups that are asked for, all where none is. Throws for one that is not there. */
function groupsIn(words: readonly string[]): readonly string[] {
  const asked = words.filter((word) => word !== "--only");
  const unknown = asked.filter((word) => !ALL.includes(word));
  if (unknown.length > 0)
    throw new Error(`no group ${unknown.join(", ")}; there are ${ALL.join(", ")}`);
  return asked.length > 0 ? asked : ALL;
}

async function measuredRows(groups: readonly string[], folder: string): Promise<readonly Row[]> {
  const scripts = bundledScripts(folder);
  const pure = groups.filter((group) => group in PURE_GROUPS);
  const site = groups.filter((group) => group in SITE_GROUPS);
  return [
    ...(pure.length > 0 ? await pureRows(pure, scripts) : []),
    ...(groups.includes("start") ? await startRows(scripts) : []),
    ...(site.length > 0 ? await siteRows(site, scripts) : []),
  ];
}

function report(rows: readonly Row[], groups: readonly string[]): void {
  const missed = rows.filter((row) => !isMet(row)).length;
  const left = ALL.filter((group) => !groups.includes(group));
  console.log(tableOf(rows));
  const here = referenceMsIn(rows).toFixed(1);
  console.log(
    `\nA bound in ms is for a machine on which the reference takes ${REFERENCE_MS} ms. Here it takes ${here} ms,`,
  );
  console.log("and each path is held to its share of it.");
  console.log("Spread: half of the width of the samples' middle half.");
  console.log(`Load: ${loadavg()[0]?.toFixed(1)} on ${cpus().length} cores.`);
  if (left.length > 0) console.log(`Not measured: ${left.join(", ")}.`);
  console.log(`${rows.length - missed} of ${rows.length} met.`);
  process.exitCode = missed > 0 ? 1 : 0;
}
