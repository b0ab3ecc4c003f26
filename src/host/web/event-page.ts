import { sayWeekday } from "../../base/index.ts";
import { readEventPath } from "../links/feeds.ts";
import { eventOf, formerTasksOf } from "../store/events.ts";
import { hasTask } from "../store/tasks.ts";
import { notFound, pageResponse } from "./answers.ts";
import { daysAhead } from "./days-ahead.ts";
import { frameOf, type GardenRequest, withYear } from "./garden-request.ts";
import { hoursOf, jobRows, type PlacedJob } from "./job-rows.ts";
import { type EventPageProps, eventPage, gonePage } from "./pages/event.tsx";
import { answerTap } from "./taps.ts";

/** An event's own page, or what is answered on it written down. */
export async function answerEvent(gardenRequest: GardenRequest, path: string): Promise<Response> {
  const key = readEventPath(path);
  if (key === null) return notFound();
  await withYear(gardenRequest);
  const { pathname } = new URL(gardenRequest.request.url);
  return gardenRequest.request.method === "POST"
    ? answerTap(gardenRequest, pathname)
    : showEvent(gardenRequest, key, pathname);
}

/**
 * Found by the event's key or by a task in it, since like tasks are told together, with what a phone that was out of reach
 * still shows in it. One that is no more says so, with what comes next.
 */
function showEvent(gardenRequest: GardenRequest, key: string, to: string): Response {
  const frame = frameOf(gardenRequest);
  const shown = shownOf(gardenRequest, key, to);
  if (shown !== null) return pageResponse(200, eventPage(frame, shown));
  return pageResponse(404, gonePage(frame, daysAhead(gardenRequest)));
}

function shownOf(gardenRequest: GardenRequest, key: string, to: string): EventPageProps | null {
  const { sql } = gardenRequest.context;
  const event = eventOf(sql, key);
  const tasks = event?.tasks ?? [];
  // One that was just had back, or was left this year, is in no event.
  const alone = event === null && hasTask(sql, key) ? [key] : [];
  const had = formerTasksOf(sql, key).filter((task) => !tasks.includes(task));
  const rows = jobRows(gardenRequest, [...new Set([...tasks, ...alone, ...had])], {
    ...{ together: true, leads: false },
  });
  if (event === null && rows.length === 0) return null;
  const [only] = rows.length === 1 ? rows : [];
  const isAlone = event === null || event.tasks.length === 1;
  const hours = hoursOf(gardenRequest, event);
  return {
    title:
      (isAlone ? only?.job.title : null) ?? event?.title ?? "These jobs have moved or are done",
    when: event === null ? "" : `${sayWeekday(event.day)}${hours === "" ? "" : `, ${hours}`}`,
    jobs: rows.map((placed) => (event && placed.day === event.day ? placed.job : moved(placed))),
    text: only ? "" : (event?.text ?? ""),
    to,
  };
}

/** A job that the event had before, with the day it stands on now. */
function moved({ job, day }: PlacedJob): PlacedJob["job"] {
  if (job.kind === "answered") return job;
  return { ...job, facts: [`now on ${sayWeekday(day)}`, ...job.facts] };
}
