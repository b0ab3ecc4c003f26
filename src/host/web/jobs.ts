import { chooseEvents, type Event, type FeedChoice, type TaskCard } from "../../app/records.ts";
import { type Day, minuteAt, plus, sayDay, sayMinute, sayWeekday } from "../../base/index.ts";
import { eventPath } from "../links/feeds.ts";
import type { Link } from "../links/segment.ts";
import { eventsBetween } from "../store/events.ts";
import { zoneOf } from "../store/gardens.ts";
import { type GardenView, todayIn } from "./garden-request.ts";
import type { TaskPart } from "./pages/job.tsx";
import type { ComingJobs, JobSummary } from "./pages/week.tsx";
import { tapsOf } from "./taps.ts";

/** As far ahead as the one job after the next two weeks is looked for [days]. */
const FAR_AHEAD = 4000;

/**
 * What the link's own feed shows of the seven days from today and of the seven after; where both are empty, the one job
 * that comes next. The season's own line is not among them.
 */
export function comingUp(view: GardenView): ComingJobs {
  const today = todayIn(view);
  const next = plus(today, 7);
  const chosen = chosenBetween(view, today, plus(next, 7));
  const later =
    chosen.length === 0 ? chosenBetween(view, plus(next, 7), plus(today, FAR_AHEAD)) : [];
  const jobs = (events: readonly Event[]) => events.map((event) => jobSummaryOf(view, event));
  return {
    week: jobs(chosen.filter(({ day }) => day < next)),
    weekAfter: jobs(chosen.filter(({ day }) => day >= next)),
    later: jobs(later.slice(0, 1)),
  };
}

function chosenBetween(view: GardenView, from: Day, before: Day): readonly Event[] {
  const set = view.link.role === "reader" ? "tasks" : "sessions";
  const events = eventsBetween(view.context.sql, { from, before, set });
  return chooseEvents(events, choiceOf(view.link, set)).filter(({ kind }) => kind !== "season");
}

function choiceOf({ role, person }: Link, kind: "tasks" | "sessions"): FeedChoice {
  const of = role === "reader" || person === null ? "household" : { person };
  return { of, kind, bed: null, quiet: false, reader: role === "reader" };
}

/** One event as the holder of the link may read it. */
export function jobSummaryOf(view: GardenView, event: Event): JobSummary {
  const reader = view.link.role === "reader";
  return {
    title: event.title,
    when: sayWhen(view, event),
    text: reader ? event.readerText : event.text,
    href: reader ? null : `${view.base}${eventPath(event.key)}`,
  };
}

/** The same where an answer came after the build that told it: without what it says of being done, which the parts say as it is. */
export function summaryBeforeBuild(summary: JobSummary): JobSummary {
  const isOfDone = (line: string) => line.startsWith("✓ ") || line.startsWith("Done ");
  const lines = summary.text.split("\n").filter((line) => !isOfDone(line));
  return { ...summary, title: summary.title.replace(/^✓ /, ""), text: lines.join("\n") };
}

function sayWhen(view: GardenView, event: Event): string {
  const said = sayWeekday(event.day);
  if (event.when.kind === "all day") return said;
  const zone = zoneOf(view.stored);
  const hour = (instant: number) => sayMinute(minuteAt(instant, zone));
  return `${said}, ${hour(event.when.from)} to ${hour(event.when.to)}`;
}

/** A task that an event had before it changed, with the day it stands on now. */
export function movedPartOf(card: TaskCard): TaskPart {
  const now = card.done ? "" : `Now on ${sayWeekday(card.day)}.`;
  return { ...partOf(card), now };
}

/**
 * A task of an event as its page tells it to the household: the days on which it does no harm, both inclusive, and why
 * then, nearest reason first.
 */
export function partOf(card: TaskCard): TaskPart {
  const { title, why, done, earliest, latest } = card;
  const harmless =
    earliest === latest
      ? `Its day is ${sayDay(latest)}.`
      : `Any day from ${sayDay(earliest)} to ${sayDay(latest)} does no harm.`;
  return { title, now: "", window: done ? "" : harmless, why, taps: tapsOf(card) };
}
