import type { Event } from "../../app/records.ts";
import { dayAt, joinWords, MS_PER_DAY, plus, sayCount, sayWeekday } from "../../base/index.ts";
import { damageNotes } from "../store/damage.ts";
import { answeredSince } from "../store/diary.ts";
import { zoneOf } from "../store/gardens.ts";
import { cardsById } from "../store/tasks.ts";
import { pageResponse } from "./answers.ts";
import { bedsOfToday } from "./beds.ts";
import { chosenBetween, chosenFrom, daysAhead, eventsSoon, setOf } from "./days-ahead.ts";
import { forecastOf } from "./forecast.ts";
import {
  frameOf,
  type GardenRequest,
  type GardenView,
  todayIn,
  withYear,
} from "./garden-request.ts";
import { hoursOf, jobRows, type PlacedJob, sayMinutes } from "./job-rows.ts";
import { householdOf } from "./link-offers.ts";
import type { JobShown } from "./pages/job-row.tsx";
import { type JobSection, type Notice, todayPage } from "./pages/today.tsx";
import { quietTime } from "./quiet.ts";
import { answerTap } from "./taps.ts";

/** Where the garden's own page sends its answers, under the link. */
export const SAID = "said";

/** The garden's own page: today, and the days to come. */
export async function answerToday(gardenRequest: GardenRequest): Promise<Response> {
  await withYear(gardenRequest);
  const { base, link } = gardenRequest;
  const soon = eventsSoon(gardenRequest);
  const { sections, waiting, answered } = jobsOfToday(gardenRequest, soon);
  const weeks = daysAhead(gardenRequest, soon);
  const isQuiet = weeks.every((days) => days.every(({ jobs }) => jobs.length === 0));
  const rest = isQuiet ? quietTime(gardenRequest) : null;
  const calendar =
    link.role === "owner"
      ? { words: "Links for everybody's phone", href: `${base}links` }
      : { words: "Put it in my calendar", href: `${base}calendar` };
  const shown = {
    day: sayWeekday(todayIn(gardenRequest)),
    notices: [...damageTold(gardenRequest), ...noticesOf(gardenRequest, soon)],
    lead: [...leadOf(gardenRequest, sections, answered), ...(rest ? [rest.words] : [])],
    ...{ sections: [...sections, ...waiting], answered, calendar, to: `${base}${SAID}` },
    beds: link.role === "reader" ? null : bedsOfToday(gardenRequest),
    tonight: tonightOf(gardenRequest),
    weeks: isQuiet ? [] : weeks,
    quiet: rest?.quiet ?? null,
  };
  return pageResponse(200, todayPage(frameOf(gardenRequest), shown));
}

/** An answer that was tapped on the garden's own page. */
export async function answerSaid(gardenRequest: GardenRequest): Promise<Response> {
  await withYear(gardenRequest);
  return answerTap(gardenRequest, gardenRequest.base);
}

/** As long after it was answered a job keeps its place on the page [ms], so that nothing moves under a thumb. Source: house rule. */
const STAYS_MS = 10 * 60_000;

/** What was taken back stays where it was tapped if it is due in so many days; a job of next month is none of today's. */
const NEAR_DAYS = 7;

/** Work that is nobody's to answer: it is told above the jobs. */
const isNotice = ({ kind }: Event) => kind === "warning" || kind === "away";

/** Today's jobs by whose they are, what waits from earlier days, and what was answered too long ago to stand among them. */
function jobsOfToday(
  view: GardenView,
  soon: readonly Event[],
): {
  readonly sections: readonly JobSection[];
  readonly waiting: readonly JobSection[];
  readonly answered: readonly JobShown[];
} {
  const { context, link } = view;
  const today = todayIn(view);
  const own = chosenBetween(view, { from: today, before: plus(today, 1), set: "tasks" }, null);
  const planned = own.filter((event) => !isNotice(event)).flatMap(({ tasks }) => tasks);
  const recent =
    link.role === "reader" ? [] : answeredSince(context.sql, context.now() - MS_PER_DAY);
  const all = jobRows(view, [...new Set([...planned, ...openTasks(view, soon), ...recent])]);
  const stays = ({ saidAt }: PlacedJob) => context.now() - saidAt < STAYS_MS;
  const isNear = ({ day }: PlacedJob) => day <= plus(today, NEAR_DAYS);
  const isShown = (placed: PlacedJob) =>
    placed.job.kind === "open"
      ? placed.day <= today || (stays(placed) && isNear(placed))
      : stays(placed);
  const isOver = (placed: PlacedJob) =>
    placed.job.kind === "answered" && !stays(placed) && isOfToday(placed, view);
  const isLate = ({ job, day }: PlacedJob) => job.kind === "open" && day < today;
  const shown = all.filter(isShown);
  return {
    sections: sectionsOf(
      view,
      shown.filter((placed) => !isLate(placed)),
    ),
    waiting: waitingSections(shown.filter(isLate).map(({ job }) => job)),
    answered: all.filter(isOver).map(({ job }) => job),
  };
}

/** Work of earlier days that the household is still asked about, by its tasks. */
function openTasks(view: GardenView, soon: readonly Event[]): readonly string[] {
  if (view.link.role === "reader") return [];
  return chosenFrom(view, soon, { set: setOf(view), person: view.link.person })
    .filter(({ kind }) => kind === "open")
    .flatMap(({ tasks }) => tasks);
}

/** Whether a job that was answered belongs to today: it was done today, or its answer was given today. */
function isOfToday({ job, day, saidAt }: PlacedJob, view: GardenView): boolean {
  const today = todayIn(view);
  return job.kind === "answered" && (day === today || dayAt(saidAt, zoneOf(view.stored)) === today);
}

/** Jobs that are shown of those that wait. Source: house rule; a page that was left alone for months is still a page. */
const MOST_WAITING = 12;

/** What waits from earlier days: of many, those that can wait least and are not too late, in walking order. */
function waitingSections(jobs: readonly JobShown[]): readonly JobSection[] {
  if (jobs.length === 0) return [];
  const left = (job: JobShown) =>
    job.kind === "open" && job.keeps ? job.keeps.days : Number.POSITIVE_INFINITY;
  const first = new Set(jobs.toSorted((a, b) => left(a) - left(b)).slice(0, MOST_WAITING));
  const more = jobs.length - first.size;
  return [
    {
      ...{ name: "Still waiting", folded: false, jobs: jobs.filter((job) => first.has(job)) },
      rest: more === 0 ? "" : `${sayCount(more, "more job")} can wait, or it is too late for them.`,
    },
  ];
}

/** Jobs under the names of those whose they are, one's own first. */
function sectionsOf(view: GardenView, jobs: readonly PlacedJob[]): readonly JobSection[] {
  const { person } = view.link;
  const names = new Map(householdOf(view.stored).map(({ key, name }) => [key, name]));
  const groups = new Map<string, PlacedJob[]>();
  for (const placed of jobs) {
    const own = person !== null && (placed.people.length === 0 || placed.people.includes(person));
    const whose = own ? OWN : placed.people.map((key) => names.get(key) ?? key).join("+");
    groups.set(whose, [...(groups.get(whose) ?? []), placed]);
  }
  const alone = names.size < 2;
  const named = [...groups].sort(([a], [b]) => rankOf(a) - rankOf(b) || (a < b ? -1 : 1));
  return named.map(([whose, group]) => ({
    name: alone ? "" : sectionName(whose),
    folded: person !== null && whose !== OWN,
    jobs: group.map(({ job }) => job),
    rest: "",
  }));
}

const OWN = "own";

/** One's own first, what anybody may do behind it, then the others by name. */
const rankOf = (whose: string) => (whose === OWN ? 0 : whose === "" ? 1 : 2);

function sectionName(whose: string): string {
  if (whose === OWN) return "Yours today";
  return whose === "" ? "For anybody" : `For ${joinWords(whose.split("+"))}`;
}

/** What today comes to: how many jobs of one's own and how long they take, or that all is done or nothing is due; and what to take along. */
function leadOf(
  view: GardenView,
  sections: readonly JobSection[],
  answered: readonly JobShown[],
): readonly string[] {
  const own = sections.filter(({ folded }) => !folded).flatMap(({ jobs }) => jobs);
  const open = own.filter(({ kind }) => kind === "open");
  if (open.length === 0) {
    const some = own.length > 0 || answered.length > 0;
    return [some ? "All done for today." : "Nothing to do today."];
  }
  const tasks = open.flatMap((job) => (job.kind === "open" ? (job.taps?.tasks ?? []) : []));
  const cards = cardsById(view.context.sql, tasks);
  const minutes = sayMinutes(cards.reduce((sum, card) => sum + (card.minutes ?? 0), 0));
  const hours = hoursToday(view);
  const long = minutes === "" ? "" : `, about ${minutes}`;
  const things = [...new Set(cards.flatMap(({ needs }) => needs))];
  return [
    `${sayCount(open.length, "job")}${long}${hours === "" ? "" : `, from ${hours}`}.`,
    ...(things.length === 0 ? [] : [`Take: ${joinWords(things)}.`]),
  ];
}

/** The hours of one's own session today; empty where there is none. */
function hoursToday(view: GardenView): string {
  const today = todayIn(view);
  const { person } = view.link;
  if (person === null) return "";
  const events = chosenBetween(
    view,
    { from: today, before: plus(today, 1), set: "sessions" },
    person,
  );
  const session = events.find(({ kind, when }) => kind === "session" && when.kind === "timed");
  return hoursOf(view, session ?? null);
}

/** What was found to be damaged in what is stored, for an owner. */
function damageTold({ context, link }: GardenView): readonly Notice[] {
  if (link.role !== "owner") return [];
  return damageNotes(context.sql, context.now()).map(({ what }) => {
    return { title: what, text: "", look: "note", more: null };
  });
}

function noticesOf(view: GardenView, soon: readonly Event[]): readonly Notice[] {
  const today = todayIn(view);
  const { link, base } = view;
  const events = soon.filter(({ day }) => day === today);
  const own = chosenFrom(view, events, { set: setOf(view), person: link.person });
  return own.filter(isNotice).map(({ title, text, readerText, categories }) => {
    const cold = categories.some((category) => COLD.has(category));
    return {
      ...{ title, text: link.role === "reader" ? readerText : text },
      look: cold ? "warning" : "note",
      more:
        cold && link.role !== "reader"
          ? { words: "Frost tonight, bed by bed", href: `${base}frost` }
          : null,
    };
  });
}

/** Warnings that must be seen first, by their categories. */
const COLD: ReadonlySet<string> = new Set(["frost tonight", "first frost"]);

function tonightOf(gardenRequest: GardenRequest): string {
  if (gardenRequest.link.role === "reader") return "";
  // What the night asks for stands on the page of the frost, which may load the engine for it.
  const [night] = forecastOf(gardenRequest, () => "")?.shown.nights ?? [];
  return night?.name === "Tonight" ? `${night.low} by the forecast.` : "";
}
