import { readFileSync } from "node:fs";

/** Ticks of a second in which Linux tells a process's time to programs. Source: proc(5), sysconf(_SC_CLK_TCK) on Linux. */
const TICKS_A_SECOND = 100;

/** What a process has worked so far [s], in its own code and in the system for it; null where the machine has no /proc. */
export function cpuSecondsOf(pid: number): number | null {
  try {
    return secondsIn(readFileSync(`/proc/${pid}/stat`, "utf8"));
  } catch {
    return null;
  }
}

/** The same from the text of such a file; its second field, in brackets, may hold anything. */
export function secondsIn(stat: string): number {
  const fields = stat.slice(stat.lastIndexOf(")") + 2).split(" ");
  const [user, system] = [Number(fields[11]), Number(fields[12])];
  return (user + system) / TICKS_A_SECOND;
}
