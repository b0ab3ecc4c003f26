import { type Day, plus, weekdayOf } from "../../base/index.ts";
import type { Person } from "../../garden/model/index.ts";
import type { Task } from "../practices/all.ts";
import { householdOnly, type Sentence, why } from "../practices/sentence.ts";
import type { Harm, Window } from "../practices/task.ts";
import { type Household, minutesOn } from "./household.ts";

/** Minutes of work already given to a person on a day, by `person|day`. */
export type Load = Map<string, number>;

/** The key of a person's day in a Load. */
export const loadKey = (person: string, day: Day): string => `${person}|${day}`;

/** A day and a person for some tasks, with notes on the choice. */
export type Choice = {
  readonly day: Day;
  readonly people: readonly string[];
  readonly note: Sentence | null;
};

/** Days after its last good day on which a task is still scheduled. */
const LOOK_ON_DAYS = 45;

/** A day and a person, and what speaks against them, the weightiest first. */
type Candidate = {
  readonly day: Day;
  readonly person: Person;
  /** Minutes over the hours. */
  readonly over: number;
  /** Days from the due day, none where it gathers with other work. */
  readonly apart: number;
  /** Minutes of work they have that day already. */
  readonly used: number;
  /** Days from the due day, half a day more on its worse side. */
  readonly away: number;
};

/** The people who may do a task: whose it is, and who does not leave such work out. */
export function eligible(household: Household, tasks: readonly Task[]): readonly Person[] {
  const whose = tasks.find((task) => task.whose !== null)?.whose;
  if (!whose && household.people.every((person) => person.leaveOut.length === 0))
    return household.people;
  const willing = household.people.filter(
    (person) =>
      (!whose || person.key === whose) &&
      !tasks.some(
        (task) =>
          task.kinds.some((kind) => person.leaveOut.includes(kind)) ||
          person.leaveOut.includes(task.practice),
      ),
  );
  return willing.length > 0 ? willing : household.people;
}

/** Groups of people to try in turn: whose it is first, then whoever else does such work. */
function peopleByPreference(
  household: Household,
  tasks: readonly Task[],
): readonly (readonly Person[])[] {
  const own = eligible(household, tasks);
  if (tasks.every(({ whose }) => whose === null)) return [own];
  const others = eligible(
    household,
    tasks.map((task) => ({ ...task, whose: null })),
  );
  return others.length > own.length ? [own, others] : [own];
}

/** A choice of somebody else than whose it is, with a note. */
function withStandInNote(choice: Choice, tasks: readonly Task[]): Choice {
  const whose = tasks.find((task) => task.whose !== null)?.whose;
  if (!whose || choice.people.includes(whose)) return choice;
  const note = householdOnly(
    why({ person: whose }, " is not there in time, so it falls to another."),
  );
  return { ...choice, note };
}

/** Below zero where `a` is the better one; a day on which they work anyway is better than one more. */
function compare(a: Candidate, b: Candidate): number {
  return (
    a.over - b.over ||
    a.apart - b.apart ||
    Number(b.used > 0) - Number(a.used > 0) ||
    a.used - b.used ||
    a.away - b.away ||
    a.day - b.day ||
    (a.person.key < b.person.key ? -1 : 1)
  );
}

/** The days of a span, both ends inclusive, nearest to a day first, the earlier of two as near. */
export function nearestFirst([from, to]: readonly [Day, Day], day: Day): readonly Day[] {
  const days: Day[] = [];
  for (let away = 0; day - away >= from || day + away <= to; away++) {
    if (day - away >= from && day - away <= to) days.push(plus(day, -away));
    if (away > 0 && day + away >= from && day + away <= to) days.push(plus(day, away));
  }
  return days;
}

/**
 * Somebody who names no hours works on few days: so many from its due day, a job joins one that has work already [days].
 * Source: house rule.
 */
const GATHER_DAYS: Readonly<Record<Harm, number>> = {
  tonight: 0,
  "this week": 2,
  "when you can": 5,
};

/** More work than this is too much for a day of theirs [minutes]. Source: house rule; an afternoon. */
const ENOUGH_MINUTES = 180;

/**
 * The best working day in a span: by minutes over the hours, then days from due, then a day already used, then who has
 * less to do.
 */
function bestOf(
  household: Household,
  people: readonly Person[],
  span: readonly [Day, Day],
  due: Day,
  minutes: number,
  better: Window["better"],
  load: Load,
  slack = 0,
): Candidate | null {
  let best: Candidate | null = null;
  for (const day of nearestFirst(span, due)) {
    const far = Math.abs(day - due);
    if (best && best.over === 0 && far > Math.max(slack, best.apart)) break;
    for (const person of people) {
      const free = minutesOn(household, person, day);
      const open = household.hasHours(person) ? free > 0 : household.about(person, day);
      if (!open) continue;
      const used = load.get(loadKey(person.key, day)) ?? 0;
      const over = household.hasHours(person) ? Math.max(0, used + minutes - free) : 0;
      if (best && over > best.over) continue;
      const wrongSide = (better === "later") === day < due ? 0.5 : 0;
      const away = far + wrongSide;
      const gathers = !household.hasHours(person) && used > 0 && used + minutes <= ENOUGH_MINUTES;
      const apart = gathers && away <= slack ? 0 : away;
      const candidate = { day, person, over, apart, used, away };
      if (best === null || compare(candidate, best) < 0) best = candidate;
    }
  }
  return best;
}

/** Whether a person would have had time on that day of the week. */
type IsFree = (person: Person, day: Day) => boolean;

const gardens: IsFree = (person, day) =>
  person.gardens.length === 0 || person.gardens.some(({ weekday }) => weekday === weekdayOf(day));

/**
 * A note for the household on the absence that kept the tasks from a day nearer to their due day, on which somebody
 * would have had time.
 */
function whoWasAway(
  household: Household,
  people: readonly Person[],
  { from: due, to: chosen, free }: { readonly from: Day; readonly to: Day; readonly free: IsFree },
): Sentence | null {
  const step = chosen > due ? 1 : -1;
  for (let day = due; day !== chosen; day = plus(day, step))
    for (const person of people) {
      const absence = free(person, day) ? household.absence(person, day) : null;
      if (absence)
        return householdOnly(
          why(
            "Moved from ",
            { day: due, weekday: true },
            ": ",
            absence.person === null ? "everybody" : { person: person.key },
            " is away till ",
            { day: absence.to },
            ".",
          ),
        );
    }
  return null;
}

/**
 * A day within the window and a person with the hours for it; where none is free, somebody at home; where
 * nobody is, the first working day after the window, and the choice says so. Never a day on which the person
 * is away, except where the gardener fixed a day on which everybody is.
 */
export function chooseSession(
  household: Household,
  tasks: readonly Task[],
  window: Window,
  load: Load,
): Choice {
  const minutes = tasks.reduce((sum, task) => sum + task.minutes, 0);
  const asked = peopleByPreference(household, tasks);
  for (const people of asked) {
    const slack = startsClock(tasks) ? 0 : Math.min(...tasks.map(({ harm }) => GATHER_DAYS[harm]));
    const choice = chooseAmong(household, people, { window, minutes, load, slack });
    if (choice) return withStandInNote(choice, tasks);
  }
  return chooseAfter(household, asked, { window, minutes, load });
}

/** Sowing and setting out keep their day, since later ones are counted from it. */
const startsClock = (tasks: readonly Task[]) =>
  tasks.some(({ sets }) => sets?.act === "start" || sets?.act === "set out");

/** `slack`: days from the due day within which somebody without hours does it with other work [days]. */
type SessionRequest = {
  readonly window: Window;
  readonly minutes: number;
  readonly load: Load;
  readonly slack?: number;
};

/** A day within the window: one with enough hours for one of these people, else one on which one of them is at home. */
function chooseAmong(
  household: Household,
  people: readonly Person[],
  { window, minutes, load, slack = 0 }: SessionRequest,
): Choice | null {
  const within = bestOf(
    household,
    people,
    [window.earliest, window.latest],
    window.due,
    minutes,
    window.better,
    load,
    slack,
  );
  if (within) {
    const note = whoWasAway(household, people, {
      from: window.due,
      to: within.day,
      free: gardens,
    });
    return { day: within.day, people: [within.person.key], note };
  }
  return atHome(household, people, window);
}

/** The first working day after the window of anybody who may do it, with the note that it is late. */
function chooseAfter(
  household: Household,
  asked: readonly (readonly Person[])[],
  { window, minutes, load }: SessionRequest,
): Choice {
  for (const people of asked) {
    const first = firstAfter(household, people, { last: window.latest, minutes, load });
    if (!first) continue;
    const note = householdOnly(
      why(
        "Nobody is free by ",
        { day: window.latest },
        ", the last good day; this is the first day after it.",
      ),
    );
    return { day: first.day, people: [first.person.key], note };
  }
  return {
    day: window.due,
    people: [],
    note: householdOnly(why("Nobody is free for this; ask a neighbour.")),
  };
}

/** The first working day after a day, and who of these has the hours for it. */
function firstAfter(
  household: Household,
  people: readonly Person[],
  { last, minutes, load }: { last: Day; minutes: number; load: Load },
): Candidate | null {
  for (let days = 1; days <= LOOK_ON_DAYS; days++) {
    const day = plus(last, days);
    const found = bestOf(household, people, [day, day], last, minutes, "later", load);
    if (found) return found;
  }
  return null;
}

/** Nobody gardens in the window, but somebody is at home: the nearest such day to the due one. */
function atHome(household: Household, people: readonly Person[], window: Window): Choice | null {
  for (const day of nearestFirst([window.earliest, window.latest], window.due)) {
    const person = people.find((each) => household.about(each, day));
    if (person) {
      const note =
        whoWasAway(household, people, { from: window.due, to: day, free: gardens }) ??
        householdOnly(
          why("Nobody has gardening hours while it matters, so it stands on a day at home."),
        );
      return { day, people: [person.key], note: window.earliest === window.latest ? null : note };
    }
  }
  return null;
}

/**
 * For work that anybody at home can do: the day nearest to the due day inside the window on which somebody is, for all
 * who are.
 */
export function chooseDaily(household: Household, tasks: readonly Task[], window: Window): Choice {
  for (const people of peopleByPreference(household, tasks)) {
    const choice = aboutOn(household, people, window);
    if (choice) return withStandInNote(choice, tasks);
  }
  return {
    day: window.due,
    people: [],
    note: householdOnly(why("Nobody is about then; ask a neighbour.")),
  };
}

function aboutOn(household: Household, people: readonly Person[], window: Window): Choice | null {
  const home = atHome(household, people, window);
  if (!home) return null;
  const all = people
    .filter((person) => household.about(person, home.day))
    .map((person) => person.key);
  return {
    day: home.day,
    people: all.length > 1 ? all.sort() : all,
    note: whoWasAway(household, people, {
      from: window.due,
      to: home.day,
      free: () => true,
    }),
  };
}
