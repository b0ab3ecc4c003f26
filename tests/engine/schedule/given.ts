import { type Day, dayOrThrow, plus } from "../../../src/base/days/day.ts";
import type { Task } from "../../../src/engine/practices/all.ts";
import { how } from "../../../src/engine/practices/sentence.ts";
import type { Window } from "../../../src/engine/practices/task.ts";
import { householdOf } from "../../../src/engine/schedule/household.ts";
import type { SchedulingInput } from "../../../src/engine/schedule/schedule-tasks.ts";
import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import type { Absence, Hours, Person } from "../../../src/garden/model/plan.ts";

/** Saturday 8 May 2027, the day most of these tests turn about. */
export const SATURDAY: Day = dayOrThrow(2027, 5, 8);

/** The day that many days after SATURDAY. */
export const inDays = (days: number): Day => plus(SATURDAY, days);

/** A window round SATURDAY, so many days before and after. */
export function windowOf(
  before: number,
  later: number,
  better: Window["better"] = "later",
  due = SATURDAY,
): Window {
  return { earliest: plus(due, -before), due, latest: plus(due, later), better };
}

/** Thinning beets in the root bed on SATURDAY, a week either way; what is given stands instead. */
export function taskOf(given: Partial<Task> = {}): Task {
  return {
    id: "2027/beet/thin/1",
    subject: { kind: "planting", key: "2027/beet" },
    bed: "root-bed",
    crop: "beet",
    practice: "thin",
    step: "1",
    window: windowOf(7, 7),
    harm: "this week",
    rhythm: "session",
    minutes: 20,
    kinds: [],
    indoors: false,
    timed: null,
    title: { verb: "Thin", object: "beets", where: "bed" },
    say: [how("To one every three inches.")],
    because: [],
    basis: ["age"],
    needs: [],
    brings: [],
    round: null,
    under: null,
    together: null,
    hangsOn: [],
    after: [],
    sets: null,
    certainty: "expected",
    whose: null,
    ...given,
  };
}

/** A task placed on SATURDAY with nobody named; what is given stands instead. */
export function placedOf(
  given: Partial<ScheduledTask> = {},
  task: Partial<Task> = {},
): ScheduledTask {
  const it = taskOf(task);
  return {
    task: it,
    day: it.window.due,
    window: it.window,
    people: [],
    at: null,
    usual: null,
    lastYear: null,
    done: null,
    told: null,
    note: null,
    ...given,
  };
}

/** Hours on a weekday, Monday 1, from one full hour to another. */
export const hours = (weekday: Hours["weekday"], from: number, to: number): Hours => ({
  weekday,
  from: from * 60,
  to: to * 60,
});

/** Somebody without gardening hours who is always at home; what is given stands instead. */
export function personOf(key: string, given: Partial<Person> = {}): Person {
  const name = key.charAt(0).toUpperCase() + key.slice(1);
  return { key, name, gardens: [], home: [], leaveOut: [], ...given };
}

/** Gardens on Saturdays from nine to twelve, at home from half past five on weekdays and at weekends. */
export const IMRE: Person = personOf("imre", {
  gardens: [hours(6, 9, 12)],
  home: [
    ...([1, 2, 3, 4, 5] as const).map((weekday) => ({ weekday, from: 1050, to: 1440 })),
    hours(6, 0, 24),
    hours(7, 0, 24),
  ],
});

/** Gardens on Sundays from ten to twelve, always at home but on Tuesdays. */
export const ODA: Person = personOf("oda", {
  gardens: [hours(7, 10, 12)],
  home: ([1, 3, 4, 5, 6, 7] as const).map((weekday) => hours(weekday, 0, 24)),
});

/** Placing with these people and absences, nothing told before and nothing done. */
export function placingOf(
  people: readonly Person[],
  away: readonly Absence[] = [],
  given: Partial<SchedulingInput> = {},
): SchedulingInput {
  return {
    household: householdOf(people, away),
    publishedState: {},
    weatherAsOf: null,
    done: new Map(),
    baseline: {},
    doneBefore: new Map(),
    load: new Map(),
    days: new Map(),
    ...given,
  };
}
