import { describe, expect, test } from "vitest";
import { type Day, plus, weekdayOf } from "../../src/base/days/day.ts";
import type { Task } from "../../src/engine/practices/all.ts";
import type { Harm } from "../../src/engine/practices/task.ts";
import { householdOf, minutesOn } from "../../src/engine/schedule/household.ts";
import { HARM_WEIGHT, scheduleTasks } from "../../src/engine/schedule/schedule-tasks.ts";
import type { ScheduledTask } from "../../src/engine/schedule/scheduled-task.ts";
import type { Absence, Person } from "../../src/garden/model/plan.ts";
import { drawnForMeans, samples } from "../depth.ts";
import { hours, inDays, personOf, taskOf, windowOf } from "../engine/schedule/given.ts";
import { oneOf } from "../garden/plan/random.ts";
import { once } from "../once.ts";

const CASES = samples(10_000, 2_000);
const TASKS = 6;
/** Days past its last good day that a task is looked a place for, as placing does. */
const LOOK_ON_DAYS = 45;

const roll = drawnForMeans(415);
const upTo = (most: number) => Math.floor(roll() * (most + 1));

type Case = {
  readonly people: readonly Person[];
  readonly away: readonly Absence[];
  readonly tasks: readonly Task[];
};

function anyPerson(key: string): Person {
  const days = [1, 2, 3, 4, 5, 6, 7] as const;
  const gardens = Array.from({ length: 1 + upTo(1) }, () => {
    const from = 9 + upTo(8);
    return hours(oneOf(days, roll), from, from + 1 + upTo(1));
  });
  // At home when they garden and at no other time, so that nothing stands on a day without hours.
  return personOf(key, { gardens, home: gardens, leaveOut: roll() < 0.15 ? ["thin"] : [] });
}

function anyCase(): Case {
  const people = ["imre", "oda"].slice(0, 1 + upTo(1)).map(anyPerson);
  const away = Array.from({ length: upTo(2) }, (): Absence => {
    const from = inDays(upTo(14) - 7);
    return { person: roll() < 0.3 ? null : oneOf(people, roll).key, from, to: plus(from, upTo(8)) };
  });
  const tasks = Array.from({ length: TASKS }, (_, i) =>
    taskOf({
      id: `2027/beet/job/${i}`,
      practice: oneOf(["thin", "feed", "sow outdoors"], roll),
      harm: oneOf<Harm>(["tonight", "this week", "when you can"], roll),
      minutes: oneOf([10, 20, 30, 45, 60], roll),
      window: windowOf(upTo(3), upTo(5), "later", inDays(upTo(8))),
      // Of one practice and verb they would be drawn to one day, which is another matter.
      title: { verb: `Do ${i}`, object: "beets", where: "bed" },
    }),
  );
  return { people, away, tasks };
}

/** What a way of placing comes to: tasks that nobody has, harm-weighted days late, minutes over hours, and rules broken. */
type Worth = { readonly unplaced: number; readonly late: number; readonly over: number };

type Slot = { readonly day: Day; readonly person: Person };

/** Where a task can go at all: working days of those who may be asked inside its window, else the first after it. */
function slotsOf({ people, away }: Case, task: Task): readonly Slot[] {
  const household = householdOf(people, away);
  const willing = people.filter(({ leaveOut }) => !leaveOut.includes(task.practice));
  const asked = willing.length > 0 ? willing : people;
  const on = (day: Day) =>
    asked.flatMap((person) => (minutesOn(household, person, day) > 0 ? [{ day, person }] : []));
  const span = (from: Day, to: Day) =>
    Array.from({ length: to - from + 1 }, (_, i) => plus(from, i));
  const { earliest, latest } = task.window;
  const within = span(earliest, latest).flatMap(on);
  if (within.length > 0) return within;
  const after = span(plus(latest, 1), plus(latest, LOOK_ON_DAYS)).find((day) => on(day).length > 0);
  return after === undefined ? [] : on(after);
}

function worthOf(given: Case, slots: readonly (Slot | null)[]): Worth {
  const household = householdOf(given.people, given.away);
  const load = new Map<string, number>();
  let [unplaced, late, over] = [0, 0, 0];
  slots.forEach((slot, i) => {
    const task = given.tasks[i];
    if (!slot || !task) {
      unplaced += 1;
      return;
    }
    late += HARM_WEIGHT[task.harm] * Math.max(0, slot.day - task.window.latest);
    const key = `${slot.person.key}|${slot.day}`;
    const free = minutesOn(household, slot.person, slot.day);
    const before = load.get(key) ?? 0;
    load.set(key, before + task.minutes);
    over += Math.max(0, before + task.minutes - free) - Math.max(0, before - free);
  });
  return { unplaced, late, over };
}

const isLess = (a: Worth, b: Worth) =>
  a.unplaced - b.unplaced || a.late - b.late || a.over - b.over;

/** The best of all ways, tried one by one. */
function bruteForce(given: Case): Worth {
  const all = given.tasks.map((task) => slotsOf(given, task));
  let best: Worth | null = null;
  const chosen: (Slot | null)[] = [];
  const go = (i: number) => {
    const slots = all[i];
    if (!slots) {
      const worth = worthOf(given, chosen);
      if (best === null || isLess(worth, best) < 0) best = worth;
      return;
    }
    for (const slot of slots.length > 0 ? slots : [null]) {
      chosen[i] = slot;
      go(i + 1);
    }
  };
  go(0);
  return best ?? { unplaced: TASKS, late: 0, over: 0 };
}

function placedIn({ people, away, tasks }: Case): readonly ScheduledTask[] {
  return scheduleTasks(tasks, {
    household: householdOf(people, away),
    publishedState: {},
    weatherAsOf: null,
    done: new Map(),
    baseline: {},
    doneBefore: new Map(),
    load: new Map(),
    days: new Map(),
  });
}

/** Ours, read as slots; a person at home without hours is none, since all give hours here. */
function slotsIn(given: Case, placed: readonly ScheduledTask[]): readonly (Slot | null)[] {
  return placed.map(({ day, people }) => {
    const person = given.people.find(({ key }) => key === people[0]);
    return person ? { day, person } : null;
  });
}

const drawn = once(() => Array.from({ length: CASES }, anyCase));

describe(`${CASES} cases of six jobs, against every way to place them`, () => {
  const compared = once(() =>
    drawn().map((given) => {
      const placed = placedIn(given);
      const ours = worthOf(given, slotsIn(given, placed));
      return { given, placed, ours, best: bruteForce(given) };
    }),
  );

  test("are hard enough: some have no place, some are late, many are over their hours", () => {
    expect(compared().filter(({ best }) => best.late > 0).length).toBeGreaterThan(CASES / 20);
    expect(compared().filter(({ best }) => best.over > 0).length).toBeGreaterThan(CASES / 5);
  });

  test("leave nothing unplaced that could be placed", () => {
    expect(compared().filter(({ ours, best }) => ours.unplaced > best.unplaced)).toEqual([]);
  });

  test("are no more than 5 % later, weighed by harm", () => {
    const sum = (of: "ours" | "best") =>
      compared().reduce((total, each) => total + each[of].late, 0);
    expect(sum("ours") / sum("best")).toBeLessThanOrEqual(1.05);
  });

  test("keep to the window, to who is there and to what is left out wherever that can be", () => {
    const broken = compared().flatMap(({ given, placed }) =>
      placed.filter((each) => {
        const slots = slotsOf(given, each.task);
        const own = slots.some(
          ({ day, person }) => day === each.day && person.key === each.people[0],
        );
        return slots.length > 0 && !own;
      }),
    );
    expect(broken.map(({ task }) => task.id)).toEqual([]);
  });

  test("take a tenth more minutes over the hours than need be at the most", () => {
    const sum = (of: "ours" | "best") =>
      compared().reduce((total, each) => total + each[of].over, 0);
    expect(sum("ours") / sum("best")).toBeLessThanOrEqual(1.1);
  });
});

test("the days drawn fall on every day of the week", () => {
  const days = new Set(
    drawn().flatMap(({ tasks }) => tasks.map(({ window }) => weekdayOf(window.due))),
  );
  expect(days.size).toBe(7);
});
