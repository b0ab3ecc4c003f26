import { type Event, type TaskCard, UNDO } from "../../app/records.ts";
import { sayDay } from "../../base/index.ts";
import { readEventPath } from "../links/feeds.ts";
import { damageNotes } from "../store/damage.ts";
import { answerBefore, newestAnswers, type StoredLine } from "../store/diary.ts";
import { eventOf, formerTasksOf } from "../store/events.ts";
import { cardsById } from "../store/tasks.ts";
import { changesFromAnswer } from "./answer-changes.ts";
import { notFound, pageResponse } from "./answers.ts";
import { frameOf, type GardenRequest, withYear } from "./garden-request.ts";
import { comingUp, jobSummaryOf, movedPartOf, partOf, summaryBeforeBuild } from "./jobs.ts";
import { sayPerson } from "./link-offers.ts";
import { gonePage, type JobPageProps, jobPage } from "./pages/job.tsx";
import { type JobSummary, weekPage } from "./pages/week.tsx";
import { answersSinceBuild, answerTap, restoreTaps, withAnswer } from "./taps.ts";

/** The garden's own page: this week and the next. */
export async function answerHome(gardenRequest: GardenRequest): Promise<Response> {
  await withYear(gardenRequest);
  const calendar = gardenRequest.link.role === "owner" ? "links" : "calendar";
  const coming = comingUp(gardenRequest);
  const told = toldToOwner(gardenRequest);
  return pageResponse(200, weekPage(frameOf(gardenRequest), { coming, calendar, told }));
}

/** What was found to be damaged, for an owner. */
function toldToOwner({ context, link }: GardenRequest): readonly string[] {
  if (link.role !== "owner") return [];
  return damageNotes(context.sql, context.now()).map(({ what }) => what);
}

/** An event's own page, or what is answered on it written down. */
export async function answerEvent(gardenRequest: GardenRequest, path: string): Promise<Response> {
  const key = readEventPath(path);
  if (key === null) return notFound();
  await withYear(gardenRequest);
  return gardenRequest.request.method === "POST"
    ? answerTap(gardenRequest)
    : showEvent(gardenRequest, key);
}

/**
 * Found by the event's key or by a task in it, since like tasks are told together, with what a phone that was out of reach
 * still shows in it. One that is no more says so, with what comes next.
 */
function showEvent(gardenRequest: GardenRequest, key: string): Response {
  const shown = jobIn(gardenRequest, key);
  const frame = frameOf(gardenRequest);
  if (shown.job !== null || shown.parts.length > 0) return pageResponse(200, jobPage(frame, shown));
  const coming = comingUp(gardenRequest);
  return pageResponse(404, gonePage(frame, { ...shown, coming }));
}

function summaryOf(
  gardenRequest: GardenRequest,
  event: Event,
  since: ReturnType<typeof answersSinceBuild>,
): JobSummary {
  const summary = jobSummaryOf(gardenRequest, event);
  return event.tasks.some((task) => since.has(task)) ? summaryBeforeBuild(summary) : summary;
}

function jobIn(gardenRequest: GardenRequest, key: string): JobPageProps {
  const { sql } = gardenRequest.context;
  const event = eventOf(sql, key);
  const tasks = event?.tasks ?? [];
  const had = formerTasksOf(sql, key).filter((task) => !tasks.includes(task));
  const since = answersSinceBuild(gardenRequest.context);
  // A job that was just had back is in no event till the next build.
  const own = event === null && since.has(key) ? [key] : tasks;
  const all = [key, ...tasks, ...had];
  const newest = newestAnswers(sql, all);
  const cards = cardsOf(gardenRequest, [...own, ...had], { newest, since });
  const cardsOfJob = (ids: readonly string[]) => cards.filter(({ id }) => ids.includes(id));
  return {
    job: event && summaryOf(gardenRequest, event, since),
    parts: [...cardsOfJob(own).map(partOf), ...cardsOfJob(had).map(movedPartOf)],
    moved: changesFromAnswer(gardenRequest, all, newest),
    left: restoreTaps(newest.get(key) ?? null),
    takenBack: takenBackIn(gardenRequest, newest),
  };
}

/** That somebody took back what somebody else had said of a job, a sentence each, while nothing newer is said of it. */
function takenBackIn(
  { context, stored }: GardenRequest,
  newest: ReadonlyMap<string, StoredLine>,
): readonly string[] {
  return [...newest].flatMap(([task, { id, text, person, day }]) => {
    const before = text.startsWith(UNDO) ? answerBefore(context.sql, task, id) : null;
    if (before === null || before.person === person) return [];
    const [by, of] = [sayPerson(stored, person), sayPerson(stored, before.person)];
    return [`On ${sayDay(day)} ${by} took back what ${of} had said: ${before.text}.`];
  });
}

/** The newest answer to each task of a page, and to each the newest that no build knows yet. */
type Answered = {
  readonly newest: ReadonlyMap<string, StoredLine>;
  readonly since: ReadonlyMap<string, StoredLine>;
};

/** The cards of some tasks with what was answered since the last build; those left this year have none. */
function cardsOf(
  { context, stored }: GardenRequest,
  ids: readonly string[],
  { newest, since }: Answered,
): readonly TaskCard[] {
  return cardsById(context.sql, ids)
    .filter(({ id }) => newest.get(id)?.text !== "left this year")
    .map((card) => withAnswer(card, since.get(card.id), stored));
}
