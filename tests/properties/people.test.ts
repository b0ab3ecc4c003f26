import { describe, expect, test } from "vitest";
import type { Schedule } from "../../src/app/build.ts";
import { plus } from "../../src/base/days/day.ts";
import { householdOf } from "../../src/engine/schedule/household.ts";
import type { Absence, Hours, Person, Plan } from "../../src/garden/model/plan.ts";
import { drawnFor, samples } from "../depth.ts";
import { oneOf } from "../garden/plan/random.ts";
import { gardenOf, isoDay, planOf, QUARRY } from "../gardens.ts";
import { once } from "../once.ts";
import { CHOICES, dawn, toldAt, write } from "./feeds.ts";

const PLAN = planOf(QUARRY);
const now = dawn("2027-01-01");
const roll = drawnFor(2027);
const HOUSEHOLDS = samples(500, 80);
const upTo = (most: number) => Math.floor(roll() * (most + 1));

function anyHours(chance: number): readonly Hours[] {
  const hours: Hours[] = [];
  for (const weekday of [1, 2, 3, 4, 5, 6, 7] as const) {
    if (roll() > chance) continue;
    const from = 6 * 60 + upTo(28) * 30;
    hours.push({ weekday, from, to: Math.min(1440, from + 30 + upTo(8) * 30) });
  }
  return hours;
}

function anyPerson(key: string): Person {
  const name = key.charAt(0).toUpperCase() + key.slice(1);
  const leaveOut = roll() < 0.2 ? [oneOf(["lifting", "weed", "thin"], roll)] : [];
  return { key, name, gardens: anyHours(0.3), home: anyHours(0.6), leaveOut };
}

function anyAbsence(people: readonly Person[]): Absence {
  const from = plus(isoDay("2027-04-01"), upTo(180));
  const person = roll() < 0.3 ? null : oneOf(people, roll).key;
  return { person, from, to: plus(from, upTo(20)) };
}

function anyHousehold(): Pick<Plan, "people" | "away"> {
  const people = ["imre", "oda", "ada"].slice(0, 1 + upTo(2)).map(anyPerson);
  return { people, away: Array.from({ length: upTo(4) }, () => anyAbsence(people)) };
}

const homes = once(() =>
  Array.from({ length: HOUSEHOLDS }, () => {
    const plan: Plan = { ...PLAN, ...anyHousehold() };
    return { plan, told: toldAt({ id: "quarry-lane", plans: [plan] }, now) };
  }),
);

const wrong = (rule: (plan: Plan, each: Schedule["scheduled"][number]) => boolean) =>
  homes()
    .flatMap(({ plan, told }, home) =>
      told.scheduled
        .filter((each) => !rule(plan, each))
        .map(({ task, day, window, people }) => ({
          home,
          id: task.id,
          day,
          window,
          people,
          away: plan.away,
        })),
    )
    .slice(0, 5);

describe(`in ${HOUSEHOLDS} households`, () => {
  test("nobody is given work while away", () => {
    expect(
      wrong((plan, { day, people }) => {
        const household = householdOf(plan.people, plan.away);
        return plan.people.every(
          (person) => !people.includes(person.key) || household.absence(person, day) === null,
        );
      }),
    ).toEqual([]);
  });

  test("nothing is told before it may be done", () => {
    expect(wrong((_, { day, window }) => day >= window.earliest)).toEqual([]);
  });

  test("nothing is told after its last good day unless it says so", () => {
    expect(wrong((_, { day, window, note }) => day <= window.latest || note !== null)).toEqual([]);
  });

  test("work for one pair of hands falls to one", () => {
    expect(wrong((_, { task, people }) => task.rhythm !== "session" || people.length < 2)).toEqual(
      [],
    );
  });

  test("each set of events holds each task once, and no key twice", () => {
    for (const { told } of homes().slice(0, HOUSEHOLDS / 4))
      for (const set of ["sessions", "tasks"]) {
        const events = told.events.filter((event) => event.set === "both" || event.set === set);
        const tasks = events.flatMap((event) => event.tasks);
        expect(tasks.length).toBe(told.scheduled.length);
        expect(new Set(tasks).size).toBe(tasks.length);
        expect(new Set(events.map((event) => event.key)).size).toBe(events.length);
      }
  });

  test("telling again with what was told changes nothing", () => {
    for (const { plan, told } of homes().slice(0, HOUSEHOLDS / 4)) {
      const again = toldAt({ id: "quarry-lane", plans: [plan] }, now, told.publishedState);
      expect(again.publishedState).toEqual(told.publishedState);
      expect(again.events).toEqual(told.events);
    }
  });
});

describe("what was told is calm", () => {
  const text = (day: number) =>
    QUARRY.replace("beet: 2 rows", `beet: 2 rows, not before ${day} May`).replace(
      /people:[\s\S]*?beds:/,
      "beds:",
    );
  const bytes = (told: Schedule) => CHOICES.map((choice) => write(told, choice, now).text).join("");
  const first = once(() => toldAt(gardenOf(text(30)), now));
  const then = (day: number) => toldAt(gardenOf(text(day)), now, first().publishedState);

  test("a day that would move by two stays, and every byte with it", () => {
    expect(bytes(then(28))).toBe(bytes(first()));
    expect(then(28).publishedState).toEqual(first().publishedState);
  });

  test("a day that would move by four moves, and its chain with it", () => {
    const dueOf = (told: Schedule, id: string) =>
      told.scheduled.find(({ task }) => task.id === id)?.task.window.due;
    const moved = then(26);
    expect(bytes(moved)).not.toBe(bytes(first()));
    for (const id of ["2027/beet/sow-outdoors/1", "2027/beet/thin/1", "2027/beet/harvest/1"])
      expect(dueOf(moved, id), id).toBeLessThan(dueOf(first(), id) ?? 0);
  });
});
