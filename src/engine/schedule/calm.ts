import { type Day, earliest, latest, plus } from "../../base/index.ts";
import type { Basis } from "../growth/anchors.ts";
import type { Task } from "../practices/all.ts";
import { HELD_UP } from "../practices/ladder.ts";
import type { Window } from "../practices/task.ts";
import type { PublishedTask } from "./scheduled-task.ts";

/**
 * A new day nearer than this to the published one does not move it. Source: house rule; nobody reads a feed whose dates
 * keep changing.
 */
export const CALM_DAYS = 3;

/**
 * What becomes of a published day: whether it stays, and since when the weather has called for another although it does (null: it
 * does not).
 */
export type StayOrMove = { readonly stays: boolean; readonly calledSince: Day | null };

const STAYS: StayOrMove = { stays: true, calledSince: null };
const MOVES: StayOrMove = { stays: false, calledSince: null };

/**
 * Whether what was published is still valid: the task's due day has moved by less than CALM_DAYS, and the published day
 * is still inside the window. Other tasks and people's hours never move a published day. In a garden that knows its weather as of
 * a day, forecasts move what nobody has seen or set, see byWeather.
 */
export function standingOf(
  published: PublishedTask,
  { window, basis, kinds }: Pick<Task, "window" | "basis" | "kinds">,
  weatherAsOf: Day | null,
): StayOrMove {
  if (weatherAsOf === null || isSet(basis)) return isInside(published, window) ? STAYS : MOVES;
  if (basis.includes("seen")) return isCalm(published, window, weatherAsOf) ? STAYS : MOVES;
  return byWeather(published, { window, kinds }, weatherAsOf);
}

/** What a day hangs on that the weather can move. */
const BY_WEATHER: readonly Basis[] = ["soil", "warmth", "heat", "cold"];

/** Whether the gardener set the day, and nothing of it hangs on the weather. */
const isSet = (basis: readonly Basis[]) =>
  basis.includes("given") && !basis.some((each) => BY_WEATHER.includes(each));

function isInside({ day, window: was }: PublishedTask, { earliest, due, latest }: Window): boolean {
  return day >= earliest && day <= latest && Math.abs(due - was.due) < CALM_DAYS;
}

/**
 * Days for which the weather must have called for another day before one is told, and how near a day is that comes too early, so
 * that it is told at once. Source: house rule, tried on eight station years (tests/ahead): most such calls are taken back by the
 * next forecasts.
 */
const [CALLED_DAYS, NEAR_DAYS] = [3, 3];

/**
 * A day that has passed stays: it was told, and counts as done. Any other moves once the weather has called for it three days
 * running, and at once where it would come too early and is near, or its plants are not hardened off by then.
 */
function byWeather(
  published: PublishedTask,
  { window, kinds }: Pick<Task, "window" | "kinds">,
  asOf: Day,
): StayOrMove {
  const { day, calledSince = asOf } = published;
  if (day < asOf || isCalm(published, window, asOf)) return STAYS;
  const early = day < window.earliest && (day - asOf <= NEAR_DAYS || kinds.includes(HELD_UP));
  return early || asOf - calledSince >= CALLED_DAYS ? MOVES : { stays: true, calledSince };
}

/** What a day must gain to be brought forward, and the most that a day far ahead may be off [days]. Source: house rule. */
const [LEAST_GAIN_DAYS, MOST_OFF_DAYS] = [10, 14];

/**
 * Whether a published day may stay though every forecast moves the due day a little. What is far ahead may be off by a quarter of
 * the time there is, a fortnight at most. What is near stays while it is inside its window, and is brought forward only where
 * that gains ten days. Source: house rule.
 */
function isCalm({ day }: PublishedTask, window: Window, weatherAsOf: Day): boolean {
  const ahead = Math.min(Math.round((window.due - weatherAsOf) / 4), MOST_OFF_DAYS);
  const off = Math.max(CALM_DAYS, ahead) - CALM_DAYS;
  const inside = day >= window.earliest - off && day <= window.latest + off;
  return inside && day - window.due < Math.max(LEAST_GAIN_DAYS, ahead);
}

/** How much later than it must be a job is put off that this year's weather has put off before [days]. Source: house rule. */
const ONCE_FOR_ALL_DAYS = 4;

/**
 * The window in which a job that was published is scheduled again in a garden that knows its weather as of a day. What has to wait is
 * put off a few days more than it must, so that a cold spring does not put it off again every other day; and nothing that was still to
 * come moves into days that are over. Unchanged where it was not published.
 */
export function movedWindow(
  published: PublishedTask | undefined,
  { window, kinds }: Pick<Task, "window" | "kinds">,
  weatherAsOf: Day | null,
): Window {
  if (weatherAsOf === null || published === undefined) return window;
  const waits = published.day < window.due && !kinds.includes(HELD_UP);
  const due = waits ? earliest(plus(window.due, ONCE_FOR_ALL_DAYS), window.latest) : window.due;
  return published.day < weatherAsOf
    ? { ...window, due }
    : notBefore({ ...window, due }, weatherAsOf);
}

const notBefore = (window: Window, day: Day): Window => ({
  ...window,
  earliest: latest(window.earliest, day),
  due: latest(window.due, day),
  latest: latest(window.latest, day),
});
