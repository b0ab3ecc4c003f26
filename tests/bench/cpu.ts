import { readdirSync, readFileSync } from "node:fs";

const MOST_WAIT_MS = 30_000;

/**
 * CPU time [ms] that the live threads of a process have used so far, the compiler's and the collector's included. Linux
 * only. A thread that runs at this moment lacks its last few ms. Source: Linux, Documentation/scheduler/sched-stats.rst,
 * /proc/PID/task/TID/schedstat, first field [ns].
 */
export function cpuMsOf(pid: number): number {
  const used = threadTexts(pid, "schedstat").map((text) => Number(text.split(" ")[0]));
  return used.reduce((sum, ns) => sum + ns, 0) / 1e6;
}

/** The same once the process rests, so that what an answer leaves running belongs to it and not to the next. Throws after half a minute. */
export async function restingCpuMsOf(pid: number): Promise<number> {
  const until = Date.now() + MOST_WAIT_MS;
  let before = Number.NaN;
  while (Date.now() < until) {
    const now = isResting(pid) ? cpuMsOf(pid) : Number.NaN;
    if (now === before) return now;
    before = now;
    await new Promise((resolve) => setTimeout(resolve, 1));
  }
  throw new Error(`process ${pid} does not come to rest`);
}

/** Whether no thread runs, waits for a core or waits for the disk. Source: proc(5), /proc/PID/task/TID/stat, third field. */
function isResting(pid: number): boolean {
  return threadTexts(pid, "stat").every((text) => /\) [ST] /.test(text));
}

/** A file of each thread; one that ends in between is left out. */
function threadTexts(pid: number, file: string): readonly string[] {
  const folder = `/proc/${pid}/task`;
  return readdirSync(folder).flatMap((thread) => {
    try {
      return [readFileSync(`${folder}/${thread}/${file}`, "utf8")];
    } catch {
      return [];
    }
  });
}
