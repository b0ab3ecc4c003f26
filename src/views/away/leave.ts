import { type Day, type DaySpan, latest, plus } from "../../base/index.ts";
import { householdOf } from "../../engine/index.ts";
import type { Absence, Plan } from "../../garden/model/index.ts";

/** An absence of one or more of the household, and who stays at home. */
export type Leave = DaySpan & {
  /** Keys of those who go, in the plan's order; empty where the plan names nobody. */
  readonly away: readonly string[];
  /** Keys of those who are at home on some day of it, in the plan's order. */
  readonly home: readonly string[];
  /** The parts of it with everybody away, in order; empty where somebody is always at home. */
  readonly alone: readonly DaySpan[];
};

/** Whether a day lies in a span. */
export const isIn = (day: Day, { from, to }: DaySpan): boolean => day >= from && day <= to;

/**
 * The plan's absences that are not over on a day, by their first day. Absences of equal days are one; those that only
 * overlap stay separate, each with the days on which nobody is at home. None where the plan has none.
 */
export function leavesOf(plan: Plan, today: Day): readonly Leave[] {
  const byDays = new Map<string, Absence[]>();
  for (const absence of plan.away.filter(({ to }) => to >= today)) {
    const days = `${absence.from}|${absence.to}`;
    byDays.set(days, [...(byDays.get(days) ?? []), absence]);
  }
  return [...byDays.values()]
    .flatMap((absences) => leaveOf(plan, absences))
    .sort((a, b) => a.from - b.from || a.to - b.to);
}

function leaveOf(plan: Plan, absences: readonly Absence[]): readonly Leave[] {
  const [first] = absences;
  if (!first) return [];
  const { from, to } = first;
  const { people, absence } = householdOf(plan.people, plan.away);
  const goes = (key: string) => absences.some(({ person }) => person === null || person === key);
  const days = daysWithin({ from, to });
  const away = people.filter(({ key }) => goes(key)).map(({ key }) => key);
  const home = people
    .filter((person) => days.some((day) => absence(person, day) === null))
    .map(({ key }) => key);
  const empty = days.filter((day) => people.every((person) => absence(person, day) !== null));
  return [{ from, to, away, home, alone: joinIntoSpans(empty) }];
}

/** Every day of a span, in order. */
export function daysWithin({ from, to }: DaySpan): readonly Day[] {
  return Array.from({ length: to - from + 1 }, (_, i) => plus(from, i));
}

/** Rising days as spans without a gap. */
function joinIntoSpans(days: readonly Day[]): readonly DaySpan[] {
  const spells: DaySpan[] = [];
  for (const day of days) {
    const last = spells.at(-1);
    if (last && last.to === plus(day, -1)) spells[spells.length - 1] = { ...last, to: day };
    else spells.push({ from: day, to: day });
  }
  return spells;
}

/** Whether nobody stays at home on the day they go, so that they do the last tasks. */
export const goesLast = ({ alone, from }: Leave): boolean => !alone[0] || alone[0].from === from;

/** Whether nobody was at home until they came back, so that they take the first look. */
export const comesFirst = ({ alone, to }: Leave): boolean => (alone.at(-1)?.to ?? to) === to;

/** How many days of a span nobody is at home [days]. */
export function daysAlone({ alone }: Leave, span: DaySpan): number {
  let days = 0;
  for (const { from, to } of alone)
    days += Math.max(0, Math.min(to, span.to) - latest(from, span.from) + 1);
  return days;
}
