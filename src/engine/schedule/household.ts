import { type Day, type Minute, weekdayOf } from "../../base/index.ts";
import type { Absence, Hours, Person } from "../../garden/model/index.ts";

/** Who is where, day by day, as scheduling needs it. */
export type Household = {
  readonly people: readonly Person[];
  /** The person's gardening hours on a day, in order; empty while away. */
  readonly gardening: (person: Person, day: Day) => readonly Hours[];
  /** Whether the person has gardening hours at all; somebody without any can be given work on any day. */
  readonly hasHours: (person: Person) => boolean;
  readonly homeAt: (person: Person, day: Day, minute: Minute) => boolean;
  /** Whether the person is at home at some time of the day, and not away. */
  readonly about: (person: Person, day: Day) => boolean;
  /** Whether anybody is at home; where nobody is named, whether the plan does not say that everybody is away. */
  readonly around: (day: Day) => boolean;
  /** The absence that covers a person's day, or null. */
  readonly absence: (person: Person, day: Day) => Absence | null;
};

/** Hours by weekday, Monday at 1, cached by list. */
const weeks = new WeakMap<readonly Hours[], readonly (readonly Hours[])[]>();

function onDay(hours: readonly Hours[], day: Day): readonly Hours[] {
  let week = weeks.get(hours);
  if (!week) {
    week = [0, 1, 2, 3, 4, 5, 6, 7].map((weekday) =>
      hours.filter((each) => each.weekday === weekday),
    );
    weeks.set(hours, week);
  }
  return week[weekdayOf(day)] ?? [];
}

/** The household of some people and their absences; the first and last day of an absence are days away. */
export function householdOf(people: readonly Person[], away: readonly Absence[]): Household {
  const absence = (person: Person, day: Day) =>
    away.find(
      (each) =>
        (each.person === null || each.person === person.key) && day >= each.from && day <= each.to,
    ) ?? null;
  const about = (person: Person, day: Day) =>
    absence(person, day) === null &&
    (person.home.length === 0 ||
      onDay(person.home, day).length > 0 ||
      onDay(person.gardens, day).length > 0);
  return {
    people,
    absence,
    about,
    hasHours: (person) => person.gardens.length > 0,
    gardening: (person, day) => {
      const hours = onDay(person.gardens, day);
      return hours.length > 0 && absence(person, day) ? [] : hours;
    },
    homeAt: (person, day, minute) =>
      absence(person, day) === null &&
      (person.home.length === 0 ||
        [...onDay(person.home, day), ...onDay(person.gardens, day)].some(
          (hours) => minute >= hours.from && minute < hours.to,
        )),
    around: (day) =>
      people.length === 0
        ? !away.some((each) => each.person === null && day >= each.from && day <= each.to)
        : people.some((person) => about(person, day)),
  };
}

/** Minutes of gardening a person has on a day. */
export function minutesOn(household: Household, person: Person, day: Day): number {
  return household.gardening(person, day).reduce((sum, hours) => sum + hours.to - hours.from, 0);
}
