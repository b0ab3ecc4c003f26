import { restingCpuMsOf } from "./cpu.ts";
import type { Meter, Path } from "./measure.ts";
import { answered, looking } from "./site.ts";
import type { Runtime } from "./start.ts";

/** A job of worker.ts, `rebuild/60`, as a path; its runs happen in one request. */
export function jobPath(address: string, job: string): Path {
  const run = async (times: number) => {
    await answered(looking(`${address}${job}?times=${times}`));
  };
  return { name: job, run };
}

/** The meter of a runtime that has worker.ts among its workers under the name `reference`. */
export async function meterOf({ pid, addressOf }: Runtime): Promise<Meter> {
  const reference = jobPath(await addressOf("reference"), "reference/0");
  return { cpuMs: () => restingCpuMsOf(pid), reference };
}
