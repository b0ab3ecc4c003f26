import { bedsStanding, bedsWithJobs, type Event, type JobInBed } from "../../app/records.ts";
import { plus } from "../../base/index.ts";
import { eventsBetween } from "../store/events.ts";
import { cardsById } from "../store/tasks.ts";
import { notFound, pictureResponse } from "./answers.ts";
import { type GardenRequest, type GardenView, todayIn } from "./garden-request.ts";
import { keptCourse } from "./kept-year.ts";

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
    ? bedsWithJobs(course, today, openToday(gardenRequest).map(jobOf))
    : bedsStanding(course, today, "phone");
  return drawing === null ? notFound() : pictureResponse(drawing.svg);
}

const jobOf = ({ id, title }: { readonly id: string; readonly title: string }): JobInBed => ({
  task: id,
  title,
});

/** Whether an event is work of its day; a warning and a list before an absence name tasks that are not. */
const isWork = ({ kind }: Event) => kind !== "warning" && kind !== "away";

/** The cards of the jobs of today that are not done yet. */
function openToday(view: GardenView) {
  const today = todayIn(view);
  const range = { from: today, before: plus(today, 1), set: "tasks" } as const;
  const events = eventsBetween(view.context.sql, range).filter(isWork);
  const tasks = [...new Set(events.flatMap((event) => event.tasks))];
  return cardsById(view.context.sql, tasks).filter(({ done }) => done === null);
}
