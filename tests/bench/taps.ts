import { textOf } from "../rough/calls.ts";
import type { Meter } from "./measure.ts";
import { firstJob } from "./pages.ts";
import { answered, linkPath, looking } from "./site.ts";

/** An answer that can be given: the page of the job, and the task on it. */
export type Tap = { readonly url: string; readonly task: string };

/** The first answer that the week's page of a garden leads to. Throws where there is none. */
export async function firstTap(address: string, garden: string): Promise<Tap> {
  const url = `${address}${await firstJob(address, await linkPath(garden, "helper"))}`;
  const page = textOf(await answered(looking(url)));
  const task = /name="task" value="([^"]+)"/.exec(page)?.[1];
  if (task === undefined) throw new Error("the job's page has no answer to give");
  return { url, task };
}

/**
 * CPU time [ms] until the answer to a tap is there. The runtime is stopped as soon as it has come, so that the rebuild behind
 * it is not counted; what little of that runs before the stop is.
 */
export async function tapCost(pid: number, { cpuMs }: Meter, { url, task }: Tap): Promise<number> {
  const before = await cpuMs();
  const headers = { "content-type": "application/x-www-form-urlencoded" };
  const body = new URLSearchParams({ task, say: "done" }).toString();
  await answered({ url, sent: { method: "POST", headers, body }, status: 303 });
  process.kill(pid, "SIGSTOP");
  try {
    return (await cpuMs()) - before;
  } finally {
    process.kill(pid, "SIGCONT");
  }
}
