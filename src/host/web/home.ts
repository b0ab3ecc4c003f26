import { wholeGarden } from "../../garden/plan/years.ts";
import type { Event } from "../../views/events/event.ts";
import { updateFormerTasks } from "../../views/events/former-tasks.ts";
import { inBedOrder } from "../../views/events/sessions.ts";
import { readEventPath } from "../links/feeds.ts";
import { eventsIn, gardenIn } from "../store/gardens.ts";
import { notFound, page } from "./answers.ts";
import { comingUp, eventsNow, jobOf, movedPartOf, partOf } from "./jobs.ts";
import { movedBy } from "./moved.ts";
import { gonePage, jobPage } from "./pages/job.tsx";
import { weekPage } from "./pages/week.tsx";
import { logged, render } from "./render.ts";
import { answerTap, leftTaps } from "./taps.ts";
import { frameOf, type Knock, tellNow, type Visit } from "./visit.ts";

/** The garden's own page: this week and the next. */
export function answerHome(visit: Visit): Response {
  const calendar = visit.link.role === "owner" ? "links" : "calendar";
  const coming = comingUp(visit, eventsNow(visit));
  return page(200, weekPage(frameOf(visit), { coming, calendar }));
}

/** An event's own page, or what is answered on it; written down, the garden's feeds are told anew behind the answer. */
export async function answerEvent(visit: Visit, path: string): Promise<Response> {
  const key = readEventPath(path);
  if (key === null) return notFound();
  if (visit.request.method !== "POST") return showEvent(visit, key);
  const answer = await answerTap(visit);
  if (answer.status === 303) tellAgain(visit);
  return answer;
}

/** Writes the garden's stale feeds behind the answer. */
export function tellAgain({ shell, link: { garden }, behind }: Knock): void {
  behind(logged(garden, () => render(shell, garden, "stale")));
}

/** Tasks that an event had when it was told before, the last telling among them, whose change may not be kept yet. */
function hadBefore({ shell, stored }: Visit, is: readonly Event[], key: string): readonly string[] {
  const was = eventsIn(stored) ?? [];
  return updateFormerTasks(stored.before, { was, is, now: shell.now() })[key]?.tasks ?? [];
}

/**
 * Found by the event's key or by a task in it, since like tasks are told together, with what a phone that was out of reach
 * still shows in it. One that is no more says so, with what comes next.
 */
function showEvent(visit: Visit, key: string): Response {
  const told = tellNow(visit);
  const event =
    told.events.find((event) => event.key === key) ??
    told.events.find(({ tasks }) => tasks.includes(key)) ??
    null;
  const tasks = event?.tasks ?? [];
  const had = hadBefore(visit, told.events, key).filter((task) => !tasks.includes(task));
  const plan = wholeGarden(gardenIn(visit.stored).plans);
  const placed = (ids: readonly string[]) =>
    inBedOrder(
      told.scheduled.filter(({ task }) => ids.includes(task.id)),
      plan,
    );
  const parts = [
    ...placed(tasks).map((one) => partOf(visit, one)),
    ...placed(had).map((one) => movedPartOf(visit, one)),
  ];
  const moved = movedBy(visit, [key, ...tasks, ...had], told.scheduled);
  const left = event === null ? leftTaps(visit.stored.lines, key) : null;
  if (event === null && parts.length === 0) {
    return page(
      404,
      gonePage(frameOf(visit), { coming: comingUp(visit, told.events), left, moved }),
    );
  }
  const job = event && jobOf(visit, event);
  return page(200, jobPage(frameOf(visit), { job, parts, moved, left }));
}
