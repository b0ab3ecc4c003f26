import type { Day, Minute } from "../../base/index.ts";
import { householdOnly, how, type Sentence } from "../practices/sentence.ts";
import type { Household } from "./household.ts";

/** Plants are carried out no earlier than ten, when nights' cold is gone, and are in by eight. Source: house rule. */
const OUT_FROM: Minute = 600;
const IN_BY: Minute = 1200;
/** Breakfast, where nobody is home between then and the evening. Source: house rule. */
const BREAKFAST: Minute = 450;
const LAST_OF_EVENING: Minute = 1320;
/** Carrying trays takes about so long [minutes]. */
export const CARRY: Minute = 15;

/** Who carries out and who brings in, and when; `shade`: what to do where nobody is home in between. */
export type Carrying = {
  readonly out: { readonly at: Minute; readonly people: readonly string[] };
  readonly back: { readonly at: Minute; readonly people: readonly string[] };
  readonly shade: Sentence | null;
};

function homeAt(household: Household, day: Day, minute: Minute): readonly string[] {
  return household.people
    .filter((person) => household.homeAt(person, day, minute))
    .map((person) => person.key)
    .sort();
}

/** Carryings by household, then day and duration, cached, because all plants of a ladder need the same. */
const carryingCache = new WeakMap<Household, Map<string, Carrying>>();

/**
 * The first half hour from ten on at which somebody is home to carry out, with somebody home again to bring in
 * after so many minutes, by eight in the evening. Where there is none, full shade from breakfast until the
 * first who comes home. Nobody named: ten o'clock.
 */
export function carryingOn(household: Household, day: Day, lasts: Minute): Carrying {
  const days = carryingCache.get(household) ?? new Map<string, Carrying>();
  carryingCache.set(household, days);
  const key = `${day}|${lasts}`;
  const known = days.get(key);
  if (known) return known;
  const carrying = lookForHands(household, day, lasts);
  days.set(key, carrying);
  return carrying;
}

function lookForHands(household: Household, day: Day, lasts: Minute): Carrying {
  if (household.people.length === 0) {
    return {
      out: { at: OUT_FROM, people: [] },
      back: { at: OUT_FROM + lasts, people: [] },
      shade: null,
    };
  }
  for (let at = OUT_FROM; at + lasts <= IN_BY; at += 30) {
    const [out, back] = [homeAt(household, day, at), homeAt(household, day, at + lasts)];
    if (out.length > 0 && back.length > 0)
      return { out: { at, people: out }, back: { at: at + lasts, people: back }, shade: null };
  }
  return shadeAllDay(household, day);
}

function shadeAllDay(household: Household, day: Day): Carrying {
  for (let at = OUT_FROM; at <= LAST_OF_EVENING; at += 30) {
    const people = homeAt(household, day, at);
    if (people.length === 0) continue;
    const shade = householdOnly(
      how("Nobody is home in between: full shade, out of the wind, all day, well watered."),
    );
    return { out: { at: BREAKFAST, people }, back: { at, people }, shade };
  }
  const nobody = householdOnly(
    how("Nobody is about: ask a neighbour, or leave them in full shade."),
  );
  return { out: { at: BREAKFAST, people: [] }, back: { at: IN_BY, people: [] }, shade: nobody };
}
