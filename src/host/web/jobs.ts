import { type Day, plus, sayDay, WEEKDAYS, weekdayOf } from "../../base/days/day.ts";
import type { ScheduledTask } from "../../engine/schedule/scheduled-task.ts";
import type { FeedChoice } from "../../views/calendar/choose-events.ts";
import type { Event } from "../../views/events/event.ts";
import { sayPieces, voiceOf } from "../../views/events/sentences.ts";
import { eventPath } from "../links/feeds.ts";
import type { Link } from "../links/segment.ts";
import { eventsIn, zoneOf } from "../store/gardens.ts";
import type { TaskPart } from "./pages/job.tsx";
import type { Coming, Job } from "./pages/week.tsx";
import { isStale } from "./render.ts";
import { tapsOf } from "./taps.ts";
import { type Telling, tellNow, todayIn } from "./visit.ts";

/** The garden's events at this instant: as they were last told and kept, where that still holds, else told now. */
export function eventsNow(telling: Telling): readonly Event[] {
  const { shell, stored } = telling;
  const holds = stored.told && !isStale(shell, stored.revision, stored.told);
  return (holds && eventsIn(stored)) || tellNow(telling).events;
}

/**
 * What the link's own feed shows of the seven days from today and of the seven after; where both are empty, the one job
 * that comes next. The season's own line is not among them.
 */
export function comingUp(telling: Telling, events: readonly Event[]): Coming {
  const { shell, link } = telling;
  const today = todayIn(telling);
  const ahead = shell.core
    .choose(events, choiceOf(link))
    .filter(({ kind, day }) => kind !== "season" && day >= today)
    .sort((a, b) => a.day - b.day);
  const between = (from: number, to: number) =>
    ahead.filter(({ day }) => day >= plus(today, from) && day < plus(today, to));
  const [week, weekAfter] = [between(0, 7), between(7, 14)];
  const later = week.length + weekAfter.length === 0 ? ahead.slice(0, 1) : [];
  const jobs = (found: readonly Event[]) => found.map((event) => jobOf(telling, event));
  return { week: jobs(week), weekAfter: jobs(weekAfter), later: jobs(later) };
}

function choiceOf({ role, person }: Link): FeedChoice {
  const rest = { bed: null, quiet: false, reader: role === "reader" };
  if (role === "reader") return { of: "household", kind: "tasks", ...rest };
  return { of: person === null ? "household" : { person }, kind: "sessions", ...rest };
}

/** One event as the holder of the link may read it. */
export function jobOf(telling: Telling, event: Event): Job {
  const reader = telling.link.role === "reader";
  return {
    title: event.title,
    when: sayWhen(telling, event),
    text: reader ? event.readerText : event.text,
    href: reader ? null : `${telling.base}${eventPath(event.key)}`,
  };
}

function sayWhen(telling: Telling, event: Event): string {
  const said = `${weekday(event.day)} ${sayDay(event.day)}`;
  if (event.when.kind === "all day") return said;
  const digits = { hour: "2-digit", minute: "2-digit", timeZone: zoneOf(telling.stored) } as const;
  const hour = new Intl.DateTimeFormat("en-GB", digits);
  return `${said}, ${hour.format(event.when.from)} to ${hour.format(event.when.to)}`;
}

/** A task that an event had when it was told before, with the day it stands on now. */
export function movedPartOf(telling: Telling, placed: ScheduledTask): TaskPart {
  const now = placed.done ? "" : `Now on ${weekday(placed.day)} ${sayDay(placed.day)}.`;
  return { ...partOf(telling, placed), now };
}

const weekday = (day: Day) => WEEKDAYS[weekdayOf(day) - 1] ?? "";

/**
 * A task of an event as its page tells it to the household: the days on which it does no harm, both inclusive, and why
 * then, nearest reason first.
 */
export function partOf({ stored }: Telling, placed: ScheduledTask): TaskPart {
  const { task, window } = placed;
  const plan = stored.plans.at(-1)?.plan;
  const voice = plan && voiceOf(plan, "household");
  const { earliest, latest } = window;
  return {
    title: `${task.title.verb} ${task.title.object}`,
    now: "",
    window: placed.done
      ? ""
      : earliest === latest
        ? `Its day is ${sayDay(latest)}.`
        : `Any day from ${sayDay(earliest)} to ${sayDay(latest)} does no harm.`,
    why: voice ? task.because().map((pieces) => sayPieces(pieces, voice)) : [],
    taps: voice && task.rhythm !== "warning" ? tapsOf(placed, voice.nameOf) : null,
  };
}
