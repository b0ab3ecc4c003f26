import type { FeedChoice } from "../calendar/choose.ts";
import { plus, sayDay, WEEKDAYS, weekdayOf } from "../days/day.ts";
import { dayAt } from "../days/instants.ts";
import type { Told } from "../feed.ts";
import { eventPath } from "../links/feeds.ts";
import type { Link } from "../links/segment.ts";
import type { Placed } from "../schedule/placed.ts";
import { gardenIn, type StoredGarden, zoneOf } from "../store/gardens.ts";
import type { Event } from "../words/event.ts";
import { sayPieces, voiceOf } from "../words/sentences.ts";
import type { Job, TaskPart } from "./pages.tsx";
import type { Shell } from "./shell.ts";
import { tapsOf } from "./taps.ts";

const DAYS_SHOWN = 14;

/** A garden as a page tells it to the holder of a link, whose path is `base`. */
export type Telling = {
  readonly shell: Shell;
  readonly stored: StoredGarden;
  readonly link: Link;
  readonly base: string;
};

/** The garden as it is told at this instant; nothing of it is kept. */
export function tellNow({ shell, stored }: Telling): Told {
  const garden = gardenIn(stored);
  const horizon = shell.core.horizonAt(garden, shell.now());
  return shell.core.tell(garden, horizon, stored.standing);
}

/**
 * The next two weeks of what the link's own feed shows, today first; where they are empty, the one job that comes
 * next, with `soon` false. The season's own line is not among them.
 */
export function comingUp(
  telling: Telling,
  { events }: Told,
): { readonly soon: boolean; readonly jobs: readonly Job[] } {
  const { shell, stored, link } = telling;
  const today = dayAt(shell.now(), zoneOf(stored));
  const ahead = shell.core
    .choose(events, choiceOf(link))
    .filter(({ kind }) => kind !== "season")
    .filter(({ day }) => day >= today)
    .sort((a, b) => a.day - b.day);
  const near = ahead.filter(({ day }) => day < plus(today, DAYS_SHOWN));
  const shown = near.length > 0 ? near : ahead.slice(0, 1);
  return { soon: near.length > 0, jobs: shown.map((event) => jobOf(telling, event)) };
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
  const said = `${WEEKDAYS[weekdayOf(event.day) - 1]} ${sayDay(event.day)}`;
  if (event.when.kind === "all day") return said;
  const digits = { hour: "2-digit", minute: "2-digit", timeZone: zoneOf(telling.stored) } as const;
  const hour = new Intl.DateTimeFormat("en-GB", digits);
  return `${said}, ${hour.format(event.when.from)} to ${hour.format(event.when.to)}`;
}

/**
 * A task of an event as its page tells it to the household: the days on which it does no harm, both inclusive, and why
 * then, nearest reason first.
 */
export function partOf({ stored }: Telling, placed: Placed): TaskPart {
  const { task, window } = placed;
  const plan = stored.plans.at(-1)?.plan;
  const voice = plan && voiceOf(plan, "household");
  const { earliest, latest } = window;
  return {
    title: `${task.title.verb} ${task.title.object}`,
    window: placed.done
      ? ""
      : earliest === latest
        ? `Its day is ${sayDay(latest)}.`
        : `Any day from ${sayDay(earliest)} to ${sayDay(latest)} does no harm.`,
    why: voice ? task.because().map((pieces) => sayPieces(pieces, voice)) : [],
    taps: voice && task.rhythm !== "warning" ? tapsOf(placed, voice.nameOf) : null,
  };
}
