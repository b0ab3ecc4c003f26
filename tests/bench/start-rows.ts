import { meterOf } from "./jobs.ts";
import { collectorOf, costOf, type Measured, type Sample } from "./measure.ts";
import { AHEAD_MS } from "./site.ts";
import {
  constantWorker,
  deployedWorker,
  plainWorker,
  type Scripts,
  startRuntime,
} from "./start.ts";
import type { Row } from "./table.ts";

const ISOLATES = 20;
const ROUNDS = 3;

/** What loading our script into an isolate takes, beyond one that has the same bindings and only answers. */
export async function startRows(scripts: Scripts): Promise<readonly Row[]> {
  const name = "start-up of an isolate";
  const collector = collectorOf([name]);
  for (let round = 0; round < ROUNDS; round++)
    await collector.sample(name, () => startSample(scripts));
  const failed: Measured = { kind: "failed", why: "it was not measured" };
  return [{ ...(collector.measured().get(name) ?? failed), name, bound: "startUp" }];
}

async function startSample({ jobs, deployed }: Scripts): Promise<Sample> {
  const reference = plainWorker("reference", jobs);
  const isolates = Array.from({ length: ISOLATES }, (_, index) => `isolate-${index}`);
  const ours = isolates.map((name) => deployedWorker(name, deployed, AHEAD_MS));
  const constants = isolates.map(constantWorker);
  const constant = await started([reference, ...constants]);
  const whole = await started([reference, ...ours]);
  const ms = (whole.startCpuMs - constant.startCpuMs) / ISOLATES;
  return { ms, referenceMs: (whole.referenceMs + constant.referenceMs) / 2 };
}

/** The reference runs this often before it is measured, and this often while it is. */
const REFERENCE_RUNS = 20;

/** Starts these workers and stops them: CPU time [ms] until all are ready, and of one run of the reference, warm. */
async function started(workers: Parameters<typeof startRuntime>[0]) {
  const runtime = await startRuntime(workers);
  try {
    const meter = await meterOf(runtime);
    await meter.reference.run(REFERENCE_RUNS);
    const referenceMs = await costOf(meter, meter.reference, REFERENCE_RUNS);
    return { startCpuMs: runtime.startCpuMs, referenceMs };
  } finally {
    await runtime.stop();
  }
}
