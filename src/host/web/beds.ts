import { bedsStanding, bedsWithJobs, type Event, type JobInBed } from "../../app/records.ts";
import { plus } from "../../base/index.ts";
import { eventsBetween } from "../store/events.ts";
import { cardsById } from "../store/tasks.ts";
import { notFound, pictureResponse } from "./answers.ts";
import { type GardenRequest, type GardenView, todayIn } from "./garden-request.ts";
import { keptCourse } from "./kept-year.ts";
import { bedsOf } from "./link-offers.ts";
import type { BedsOfToday } from "./pages/beds.tsx";

/** Where the drawing of the beds is, under the link. */
export const BEDS_PICTURE = "beds.svg";

/**
 * The beds from above as they stand today, or those that have a job today with what is to be done in each (`?for=jobs`), drawn
 * without the engine. 404 where there is no such bed.
 */
export async function answerBeds(gardenRequest: GardenRequest): Promise<Response> {
  const course = await keptCourse(gardenRequest.context);
  const today = todayIn(gardenRequest);
  const forJobs = new URL(gardenRequest.request.url).searchParams.get("for") === "jobs";
  const drawing = forJobs
    ? bedsWithJobs(course, today, openToday(gardenRequest).open.map(jobOf))
    : bedsStanding(course, today, "phone");
  return drawing === null ? notFound() : pictureResponse(drawing.svg);
}

const jobOf = ({ id, title }: { readonly id: string; readonly title: string }): JobInBed => ({
  task: id,
  title,
});

/** Whether an event is work of its day; a warning and a list before an absence name tasks that are not. */
const isWork = ({ kind }: Event) => kind !== "warning" && kind !== "away";

/** Today's work, and the cards of its jobs that are not done yet. */
function openToday(view: GardenView) {
  const today = todayIn(view);
  const range = { from: today, before: plus(today, 1), set: "tasks" } as const;
  const events = eventsBetween(view.context.sql, range).filter(isWork);
  const tasks = [...new Set(events.flatMap((event) => event.tasks))];
  const open = cardsById(view.context.sql, tasks).filter(({ done }) => done === null);
  return { events, open };
}

/** The drawing of today's jobs for a page; null where none is in a bed. */
export function bedsOfToday(view: GardenView): BedsOfToday | null {
  const { events, open } = openToday(view);
  const ids = new Set(open.map(({ id }) => id));
  const left = events.filter(({ tasks }) => tasks.some((task) => ids.has(task)));
  const keys = new Set(left.flatMap(({ beds }) => beds));
  const names = bedsOf(view.stored)
    .filter(({ key }) => keys.has(key))
    .map(({ name }) => name);
  if (names.length === 0) return null;
  const heightPx = REST_PX + Math.ceil(names.length / 2) * ROW_PX;
  return { src: `${view.base}${BEDS_PICTURE}?for=jobs`, names, heightPx };
}

/** About how high a drawing is for its foot, and for two beds side by side [px]. */
const [REST_PX, ROW_PX] = [110, 150];
