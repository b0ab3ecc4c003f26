import {
  anotherFeedJob,
  baselineJob,
  checkingJob,
  firstRebuildJob,
  monthLaterJob,
  placingJob,
  readingJob,
  rebuildJob,
} from "./engine-jobs.ts";
import { differencesJob, repeatedJob, roomJob, stationJob } from "./extreme-jobs.ts";
import { reference } from "./reference.ts";
import { newFeedJob, plainWriterJob, sameFeedJob, writerJob } from "./writer-jobs.ts";

/** Each kind of job for a size: so many plantings, or so many events. What it returns is one run of it. */
const JOBS: Readonly<Record<string, (size: number) => () => unknown>> = {
  reference: () => reference,
  reading: readingJob,
  checking: checkingJob,
  baseline: baselineJob,
  "first-rebuild": firstRebuildJob,
  rebuild: rebuildJob,
  "month-later": monthLaterJob,
  "another-feed": anotherFeedJob,
  placing: placingJob,
  repeated: repeatedJob,
  station: stationJob,
  room: roomJob,
  differences: differencesJob,
  "plain-writer": plainWriterJob,
  writer: writerJob,
  "new-feed": newFeedJob,
  "same-feed": sameFeedJob,
};

const made = new Map<string, () => unknown>();

/** Runs `/rebuild/60` so many `?times=`. What a job needs is prepared at its first request. */
export default {
  fetch(request: Request): Response {
    const { pathname, searchParams } = new URL(request.url);
    const run = jobAt(pathname);
    if (run === null) return new Response(`no job ${pathname}\n`, { status: 404 });
    const times = Number(searchParams.get("times"));
    for (let done = 0; done < times; done++) run();
    return new Response("done\n");
  },
};

function jobAt(path: string): (() => unknown) | null {
  const [, name = "", size = ""] = path.split("/");
  const run = made.get(path) ?? JOBS[name]?.(Number(size)) ?? null;
  if (run !== null) made.set(path, run);
  return run;
}
