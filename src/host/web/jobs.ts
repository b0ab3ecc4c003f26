import { type Day, plus, sayDay, WEEKDAYS, weekdayOf } from "../../base/days/day.ts";
import type { ScheduledTask } from "../../engine/schedule/scheduled-task.ts";
import type { FeedChoice } from "../../views/calendar/choose-events.ts";
import type { Event } from "../../views/events/event.ts";
import { sayPieces, voiceOf } from "../../views/events/sentences.ts";
import { eventPath } from "../links/feeds.ts";
import type { Link } from "../links/segment.ts";
import { eventsIn, zoneOf } from "../store/gardens.ts";
import { buildScheduleNow, type GardenView, todayIn } from "./garden-request.ts";
import type { TaskPart } from "./pages/job.tsx";
import type { ComingJobs, JobSummary } from "./pages/week.tsx";
import { isStale } from "./render.ts";
import { tapsOf } from "./taps.ts";

/** The garden's events at this instant: as they were last told and kept, where that still holds, else told now. */
export function eventsNow(view: GardenView): readonly Event[] {
  const { context, stored } = view;
  const holds = stored.schedule && !isStale(context, stored.revision, stored.schedule);
  return (holds && eventsIn(stored)) || buildScheduleNow(view).events;
}

/**
 * What the link's own feed shows of the seven days from today and of the seven after; where both are empty, the one job
 * that comes next. The season's own line is not among them.
 */
export function comingUp(view: GardenView, events: readonly Event[]): ComingJobs {
  const { context, link } = view;
  const today = todayIn(view);
  const ahead = context.core
    .choose(events, choiceOf(link))
    .filter(({ kind, day }) => kind !== "season" && day >= today)
    .sort((a, b) => a.day - b.day);
  const between = (from: number, to: number) =>
    ahead.filter(({ day }) => day >= plus(today, from) && day < plus(today, to));
  const [week, weekAfter] = [between(0, 7), between(7, 14)];
  const later = week.length + weekAfter.length === 0 ? ahead.slice(0, 1) : [];
  const jobs = (found: readonly Event[]) => found.map((event) => jobSummaryOf(view, event));
  return { week: jobs(week), weekAfter: jobs(weekAfter), later: jobs(later) };
}

function choiceOf({ role, person }: Link): FeedChoice {
  const rest = { bed: null, quiet: false, reader: role === "reader" };
  if (role === "reader") return { of: "household", kind: "tasks", ...rest };
  return { of: person === null ? "household" : { person }, kind: "sessions", ...rest };
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

function sayWhen(view: GardenView, event: Event): string {
  const said = `${weekday(event.day)} ${sayDay(event.day)}`;
  if (event.when.kind === "all day") return said;
  const digits = { hour: "2-digit", minute: "2-digit", timeZone: zoneOf(view.stored) } as const;
  const hour = new Intl.DateTimeFormat("en-GB", digits);
  return `${said}, ${hour.format(event.when.from)} to ${hour.format(event.when.to)}`;
}

/** A task that an event had when it was told before, with the day it stands on now. */
export function movedPartOf(view: GardenView, scheduled: ScheduledTask): TaskPart {
  const now = scheduled.done ? "" : `Now on ${weekday(scheduled.day)} ${sayDay(scheduled.day)}.`;
  return { ...partOf(view, scheduled), now };
}

const weekday = (day: Day) => WEEKDAYS[weekdayOf(day) - 1] ?? "";

/**
 * A task of an event as its page tells it to the household: the days on which it does no harm, both inclusive, and why
 * then, nearest reason first.
 */
export function partOf({ stored }: GardenView, scheduled: ScheduledTask): TaskPart {
  const { task, window } = scheduled;
  const plan = stored.plans.at(-1)?.plan;
  const voice = plan && voiceOf(plan, "household");
  const { earliest, latest } = window;
  return {
    title: `${task.title.verb} ${task.title.object}`,
    now: "",
    window: scheduled.done
      ? ""
      : earliest === latest
        ? `Its day is ${sayDay(latest)}.`
        : `Any day from ${sayDay(earliest)} to ${sayDay(latest)} does no harm.`,
    why: voice ? task.because.map((pieces) => sayPieces(pieces, voice)) : [],
    taps: voice && task.rhythm !== "warning" ? tapsOf(scheduled, voice.nameOf) : null,
  };
}
