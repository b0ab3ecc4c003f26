import { fuzz } from "./run.ts";

/*
 * `npm run fuzz` tries 12,000 inputs of every kind, made by a grammar and drawn by a seed, on all that reads from outside. `MINUTES=5` ends it
 * after that time, `SEED=7` draws those of another run again, `EACH=100` takes so many of a kind. It exits 1 where one is answered by an
 * exception, is half read, or takes longer than the bound.
 */

/** No input may take longer [ms of CPU]. Source: house rule; the platform's free plan gives a request 10, others 30,000. */
const MOST_MS = 250;
/** Memory that a run may take [MB]. Source: house rule. */
const MOST_MB = 1024;

const seed = Number(process.env.SEED ?? Date.now() % 1_000_000);
const each = Number(process.env.EACH ?? 12_000);
const end = Date.now() + Number(process.env.MINUTES ?? 60) * 60_000;
console.log(`SEED=${seed} EACH=${each}`);
const { kinds, slowest, failed } = fuzz(seed, each, () => Date.now() > end);
console.log("| kind | tried | failed | CPU ms, mean | most |\n| --- | --- | --- | --- | --- |");
for (const [kind, { tried, failed: bad, cpuMs, most }] of kinds)
  console.log(
    `| ${kind} | ${tried} | ${bad} | ${(cpuMs / Math.max(1, tried)).toFixed(2)} | ${most.toFixed(0)} |`,
  );
console.log(
  `\nslowest: ${slowest.map(({ kind, cpuMs }) => `${kind} ${cpuMs.toFixed(0)}`).join(", ")} ms`,
);
const megabytes = process.resourceUsage().maxRSS / 1024;
console.log(`memory: ${megabytes.toFixed(0)} MB`);
for (const { kind, wrong, input } of failed.slice(0, 10))
  console.log(`\n${kind}: ${JSON.stringify(input.slice(0, 600))}\n${wrong}`);
for (const { kind, cpuMs, input } of slowest.filter((tried) => tried.cpuMs > MOST_MS))
  console.log(`\n${kind}, ${cpuMs.toFixed(0)} ms: ${JSON.stringify(input.slice(0, 600))}`);
const isSlow = (slowest[0]?.cpuMs ?? 0) > MOST_MS;
process.exitCode = failed.length > 0 || isSlow || megabytes > MOST_MB ? 1 : 0;
