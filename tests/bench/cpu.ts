import { readdirSync, readFileSync } from "node:fs";

/** Two readings closer than this [ms] count as one: nothing but a timer has run in between. */
const STILL_MS = 0.02;
const MOST_READINGS = 50;

/**
 * CPU time [ms] that the live threads of a process have used so far, its compiler's and collector's threads included.
 * A thread that runs at this moment lacks its last few ms. Linux only. Source: Documentation/scheduler/sched-stats.rst,
 * /proc/PID/task/TID/schedstat, first field, in ns.
 */
export function cpuMsOf(pid: number): number {
  const threads = readdirSync(`/proc/${pid}/task`);
  return threads.reduce((sum, thread) => sum + nanoseconds(pid, thread), 0) / 1e6;
}

function nanoseconds(pid: number, thread: string): number {
  try {
    return Number(readFileSync(`/proc/${pid}/task/${thread}/schedstat`, "utf8").split(" ")[0]);
  } catch {
    // It ended between the two calls.
    return 0;
  }
}

/** The same once the process rests, so that what an answer leaves running belongs to it and not to the next; at the latest after 50 ms. */
export async function restingCpuMsOf(pid: number): Promise<number> {
  let before = cpuMsOf(pid);
  for (let reading = 0; reading < MOST_READINGS; reading++) {
    await new Promise((resolve) => setTimeout(resolve, 1));
    const now = cpuMsOf(pid);
    if (now - before < STILL_MS) return now;
    before = now;
  }
  return before;
}
