import { wholeGarden } from "../../garden/model/years.ts";
import type { Event } from "../../views/events/event.ts";
import { updateFormerTasks } from "../../views/events/former-tasks.ts";
import { inBedOrder } from "../../views/events/sessions.ts";
import { readEventPath } from "../links/feeds.ts";
import { eventsIn, gardenIn } from "../store/gardens.ts";
import { changesFromAnswer } from "./answer-changes.ts";
import { notFound, pageResponse } from "./answers.ts";
import {
  buildScheduleNow,
  frameOf,
  type GardenRequest,
  type LinkRequest,
} from "./garden-request.ts";
import { comingUp, eventsNow, jobSummaryOf, movedPartOf, partOf } from "./jobs.ts";
import { gonePage, jobPage } from "./pages/job.tsx";
import { weekPage } from "./pages/week.tsx";
import { logged, render } from "./render.ts";
import { answerTap, restoreTaps } from "./taps.ts";

/** The garden's own page: this week and the next. */
export function answerHome(gardenRequest: GardenRequest): Response {
  const calendar = gardenRequest.link.role === "owner" ? "links" : "calendar";
  const coming = comingUp(gardenRequest, eventsNow(gardenRequest));
  return pageResponse(200, weekPage(frameOf(gardenRequest), { coming, calendar }));
}

/** An event's own page, or what is answered on it; written down, the garden's feeds are told anew behind the answer. */
export async function answerEvent(gardenRequest: GardenRequest, path: string): Promise<Response> {
  const key = readEventPath(path);
  if (key === null) return notFound();
  if (gardenRequest.request.method !== "POST") return showEvent(gardenRequest, key);
  const answer = await answerTap(gardenRequest);
  if (answer.status === 303) renderStaleFeeds(gardenRequest);
  return answer;
}

/** Writes the garden's stale feeds behind the answer. */
export function renderStaleFeeds({ context, link: { garden }, behind }: LinkRequest): void {
  behind(logged(garden, () => render(context, garden, "stale")));
}

/** Tasks that an event had when it was told before, the last telling among them, whose change may not be kept yet. */
function hadBefore(
  { context, stored }: GardenRequest,
  is: readonly Event[],
  key: string,
): readonly string[] {
  const was = eventsIn(stored) ?? [];
  return updateFormerTasks(stored.before, { was, is, now: context.now() })[key]?.tasks ?? [];
}

/**
 * Found by the event's key or by a task in it, since like tasks are told together, with what a phone that was out of reach
 * still shows in it. One that is no more says so, with what comes next.
 */
function showEvent(gardenRequest: GardenRequest, key: string): Response {
  const schedule = buildScheduleNow(gardenRequest);
  const event =
    schedule.events.find((event) => event.key === key) ??
    schedule.events.find(({ tasks }) => tasks.includes(key)) ??
    null;
  const tasks = event?.tasks ?? [];
  const had = hadBefore(gardenRequest, schedule.events, key).filter(
    (task) => !tasks.includes(task),
  );
  const plan = wholeGarden(gardenIn(gardenRequest.stored).plans);
  const scheduled = (ids: readonly string[]) =>
    inBedOrder(
      schedule.scheduled.filter(({ task }) => ids.includes(task.id)),
      plan,
    );
  const parts = [
    ...scheduled(tasks).map((one) => partOf(gardenRequest, one)),
    ...scheduled(had).map((one) => movedPartOf(gardenRequest, one)),
  ];
  const moved = changesFromAnswer(gardenRequest, [key, ...tasks, ...had], schedule.scheduled);
  const left = event === null ? restoreTaps(gardenRequest.stored.lines, key) : null;
  if (event === null && parts.length === 0) {
    return pageResponse(
      404,
      gonePage(frameOf(gardenRequest), {
        coming: comingUp(gardenRequest, schedule.events),
        left,
        moved,
      }),
    );
  }
  const job = event && jobSummaryOf(gardenRequest, event);
  return pageResponse(200, jobPage(frameOf(gardenRequest), { job, parts, moved, left }));
}
