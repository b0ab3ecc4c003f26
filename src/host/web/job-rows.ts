import { chooseEvents, type Event, type TaskCard, UNDO } from "../../app/records.ts";
import {
  type Day,
  joinWords,
  minuteAt,
  plus,
  sayDay,
  sayMinute,
  sayWeekday,
  shortWeekday,
} from "../../base/index.ts";
import { eventPath } from "../links/feeds.ts";
import { answerBefore, newestAnswers, type StoredLine } from "../store/diary.ts";
import { eventsBetween } from "../store/events.ts";
import { zoneOf } from "../store/gardens.ts";
import { cardsById } from "../store/tasks.ts";
import { changesFromAnswer } from "./answer-changes.ts";
import { type GardenView, todayIn } from "./garden-request.ts";
import { sayPerson } from "./link-offers.ts";
import type { JobShown, Keeping } from "./pages/job-row.tsx";
import {
  answersSinceBuild,
  nameOf,
  placeOf,
  saidOf,
  tapsOf,
  undoTaps,
  withAnswer,
} from "./taps.ts";

/**
 * A job as a page shows it, with what places it: its day, whose it is (keys; empty: everybody), and when it was answered [ms
 * since 1970 UTC], 0 where nothing was said lately.
 */
export type PlacedJob = {
  readonly job: JobShown;
  readonly day: Day;
  readonly people: readonly string[];
  readonly saidAt: number;
};

/** Whether like tasks that are told together are one job, and whether each leads to its page. */
export type RowOptions = { readonly together: boolean; readonly leads: boolean };

/** A task with what was answered to it, and how it is told among all jobs. */
type FoundTask = {
  readonly card: TaskCard;
  readonly answer: StoredLine | null;
  readonly event: Event | null;
};

/**
 * Tasks by their ids as jobs, in walking order: those that are told together and are open are one, and those that one tap
 * answered are one. What has no card any more is left out.
 */
export function jobRows(
  view: GardenView,
  ids: readonly string[],
  options: RowOptions = { together: true, leads: true },
): readonly PlacedJob[] {
  const groups = new Map<string, FoundTask[]>();
  for (const found of foundIn(view, ids)) {
    const key = groupOf(found, options, view.link.role === "reader");
    groups.set(key, [...(groups.get(key) ?? []), found]);
  }
  return [...groups.values()].map((group) => {
    const [first] = group;
    if (!first) throw new RangeError("a job needs a task");
    return {
      job: isAnswered(first, todayIn(view))
        ? answeredJob(view, first, group)
        : openJob(view, first, group, options),
      day: first.card.day,
      people: whoseOf(first),
      saidAt: first.answer?.saidAt ?? 0,
    };
  });
}

/** Whose a job is; one that was put off or left stays with whoever said so, though it may be another's on its next day. */
function whoseOf({ card, answer }: FoundTask): readonly string[] {
  const isPutOff = card.done === null && answer !== null && !answer.text.startsWith(UNDO);
  return isPutOff && answer.person !== null ? [answer.person] : card.people;
}

function foundIn(view: GardenView, ids: readonly string[]): readonly FoundTask[] {
  const { context, stored } = view;
  const since = answersSinceBuild(context);
  const newest = newestAnswers(context.sql, ids);
  const cards = cardsById(context.sql, ids);
  const events = eventsOfTasks(view, cards);
  return cards.map((card) => ({
    card: withAnswer(card, since.get(card.id), stored),
    answer: newest.get(card.id) ?? null,
    event: events.get(card.id) ?? null,
  }));
}

/** How each task is told among all jobs, one day at a time, as the holder of the link may read it. */
function eventsOfTasks(
  { context, link }: GardenView,
  cards: readonly TaskCard[],
): ReadonlyMap<string, Event> {
  const reader = link.role === "reader";
  const choice = { of: "household", kind: "tasks", bed: null, quiet: false, reader } as const;
  const found = new Map<string, Event>();
  for (const day of new Set(cards.map((card) => card.day))) {
    const events = eventsBetween(context.sql, { from: day, before: plus(day, 1), set: "tasks" });
    for (const event of chooseEvents(events, choice))
      for (const id of event.tasks) found.set(id, event);
  }
  return found;
}

function groupOf({ card, answer, event }: FoundTask, { together }: RowOptions, reader: boolean) {
  if (!together) return card.id;
  if (answer !== null && !answer.text.startsWith(UNDO) && (card.done || event === null))
    return `${answer.saidAt} ${answer.text} ${answer.person}`;
  if (card.done || event === null) return card.id;
  // Jobs of one bed are one; what is carried out together goes out whatever bed it waits for. A reader has the event's text.
  const bed = reader || card.minutes === null ? "" : card.bed;
  return `${event.key} ${bed}`;
}

/** Whether a task is done, left this year, or was answered today in another way that still holds. */
function isAnswered({ card, answer }: FoundTask, today: Day): boolean {
  if (card.done) return true;
  if (answer === null || answer.text.startsWith(UNDO) || answer.text === "done") return false;
  return answer.text === "left this year" || answer.day === today;
}

function answeredJob(view: GardenView, first: FoundTask, group: readonly FoundTask[]): JobShown {
  const { card, answer } = first;
  const ids = group.map((found) => found.card.id);
  const said = card.done ? "done" : (answer?.text ?? "done");
  const by = { day: answer?.day ?? card.day, by: nameOf(answer?.person ?? null, view.stored) };
  const now = said === "not yet" && card.day > by.day ? ` Now on ${sayWeekday(card.day)}.` : "";
  return {
    kind: "answered",
    at: placeOf(card.id),
    title: titleOf(group),
    said: `${saidOf(said, card.done ?? by)}${now}`,
    done: said === "done",
    undo: card.answers.length === 0 ? null : undoTaps(ids, said),
    moved: movedBy(view, group),
  };
}

/** That somebody took back what somebody else had said of a task, in a sentence, while nothing newer is said of it; else empty. */
function takenBackOf({ context, stored }: GardenView, { card, answer }: FoundTask): string {
  if (answer === null || !answer.text.startsWith(UNDO)) return "";
  const before = answerBefore(context.sql, card.id, answer.id);
  if (before === null || before.person === answer.person) return "";
  const [by, of] = [sayPerson(stored, answer.person), sayPerson(stored, before.person)];
  return `On ${sayDay(answer.day)} ${by} took back what ${of} had said: ${before.text}.`;
}

/** What the newest answer to a job's tasks has moved beside them. */
function movedBy(view: GardenView, group: readonly FoundTask[]) {
  const answers = group.flatMap(({ card, answer }) => (answer ? [[card.id, answer] as const] : []));
  return changesFromAnswer(
    view,
    group.map(({ card }) => card.id),
    new Map(answers),
  );
}

function openJob(
  view: GardenView,
  first: FoundTask,
  group: readonly FoundTask[],
  { leads }: RowOptions,
): JobShown {
  const { card, event } = first;
  const reader = view.link.role === "reader";
  const cards = group.map((found) => found.card);
  return {
    kind: "open",
    at: placeOf(card.id),
    title: titleOf(group),
    facts: factsOf(view, first, cards),
    keeps: keepingOf(cards, todayIn(view)),
    text: reader ? (event?.readerText ?? "") : group.length > 1 ? "" : card.text,
    why: leads ? [] : whyLines(cards),
    takenBack: takenBackOf(view, first),
    moved: movedBy(view, group),
    href: reader || !leads ? null : `${view.base}${eventPath(event?.key ?? card.id)}`,
    taps: reader ? null : tapsOf(cards),
    each: reader || group.length < 2 ? [] : eachOf(cards),
  };
}

/** Why on this day and from when to when, a sentence each. */
function whyLines(cards: readonly TaskCard[]): readonly string[] {
  const lines = cards.flatMap(({ earliest, latest, why }) => [
    earliest === latest
      ? `Its day is ${sayDay(latest)}.`
      : `Right from ${sayDay(earliest)} to ${sayDay(latest)}.`,
    ...why,
  ]);
  return [...new Set(lines)];
}

function eachOf(cards: readonly TaskCard[]) {
  return cards.flatMap((card) => {
    const taps = tapsOf([card]);
    return taps === null ? [] : [{ title: card.fullTitle, text: card.text, taps }];
  });
}

/** A job's title without its bed; of several tasks what is done to all of them, and of what is carried out and in again what its event says. */
function titleOf(group: readonly FoundTask[]): string {
  const [first] = group;
  const isCarried = group.length > 1 && group.every(({ card }) => card.minutes === null);
  if (isCarried && first?.event?.tasks.length === group.length) return first.event.title;
  const titles = group.map(({ card }) => withoutBed(card.fullTitle, card.bed));
  return joinTitles([...new Set(titles)]);
}

/** Titles that begin and end alike as one: `Thin carrots and beets again`; those that do not, one after another. */
export function joinTitles(titles: readonly string[]): string {
  const words = titles.map((title) => title.split(" "));
  const shortest = Math.min(...words.map(({ length }) => length)) - 1;
  const alike = (at: (all: readonly string[]) => string | undefined) =>
    words.every((all) => at(all) === at(words[0] ?? []));
  let head = 0;
  while (head < shortest && alike((all) => all[head])) head += 1;
  let tail = 0;
  while (head + tail < shortest && alike((all) => all.at(-1 - tail))) tail += 1;
  if (titles.length < 2 || head === 0) return joinWords(titles);
  const objects = words.map((all) => all.slice(head, all.length - tail).join(" "));
  const [first = []] = words;
  const end = first.slice(first.length - tail);
  return [...first.slice(0, head), joinWords(objects), ...end].join(" ");
}

const withoutBed = (title: string, bed: string) =>
  bed !== "" && title.endsWith(`, ${bed}`) ? title.slice(0, -bed.length - 2) : title;

function factsOf(
  view: GardenView,
  { card, event }: FoundTask,
  cards: readonly TaskCard[],
): readonly string[] {
  const beds = [...new Set(cards.flatMap(({ bed }) => (bed === "" ? [] : [bed])))];
  const minutes = cards.reduce((sum, each) => sum + (each.minutes ?? 0), 0);
  const late = card.day < todayIn(view) ? "still open" : "";
  return [joinWords(beds), hoursOf(view, event), sayMinutes(minutes), late].filter(
    (fact) => fact !== "",
  );
}

/** From when to when, on the garden's clock; empty for what has no hours. */
export function hoursOf({ stored }: Pick<GardenView, "stored">, event: Event | null): string {
  if (event?.when.kind !== "timed") return "";
  const { from, to } = event.when;
  const hour = (instant: number) => sayMinute(minuteAt(instant, zoneOf(stored)));
  return `${hour(from)} to ${hour(to)}`;
}

/** `20 min`, beyond an hour and a half in half hours; empty for none. */
export function sayMinutes(minutes: number): string {
  if (minutes <= 90) return minutes === 0 ? "" : `${minutes}\u00a0min`;
  const halves = Math.ceil(minutes / 30);
  return `${Math.floor(halves / 2)}${halves % 2 === 1 ? "½" : ""} hours`;
}

/** Days ahead for which a weekday helps. Source: house rule; further on a date alone is clearer. */
const NEAR_DAYS = 10;

/** How long the first of some jobs keeps from a day on; null where that is over or there is nothing to keep. */
function keepingOf(cards: readonly TaskCard[], today: Day): Keeping | null {
  if (cards.some(({ minutes }) => minutes === null)) return null;
  const latest = Math.min(...cards.map((card) => card.latest));
  const soonest = cards.find((card) => card.latest === latest)?.latest;
  if (soonest === undefined || soonest < today) return null;
  const left = soonest - today;
  return {
    days: left + 1,
    words: left === 0 ? "today only" : `till ${dayWords(soonest, left)}`,
  };
}

function dayWords(day: Day, ahead: number): string {
  if (ahead === 1) return "tomorrow";
  return ahead < NEAR_DAYS ? `${shortWeekday(day)} ${sayDay(day)}` : sayDay(day, ahead > 330);
}
