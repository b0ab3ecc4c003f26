import type { Absence, Person } from "../model/plan.ts";
import { spansIn } from "./calendar-file.ts";
import { tell } from "./codes.ts";
import { type DayReading, readSpan } from "./dates.ts";
import { offer } from "./nearest.ts";
import { doubtOutside, personKey } from "./people.ts";
import { itemsOf, part, type Tree, type Words } from "./tree.ts";
import type { Beside } from "./weather.ts";

/** What absences are read with: the days' season, the garden's clock, and the files beside the plan. */
export type AwayReading = DayReading & { readonly clock: string; readonly beside: Beside };

/**
 * Who is away and when, in the order of the file, both days inclusive; `Oda, oda.ics` is all of an iCalendar file beside
 * the plan. Problems: `nobody-called`, `calendar-missing`, `calendar-wrong`, those of days; doubt: `outside-season`.
 */
export function readAway(
  tree: Tree | null,
  people: readonly Person[],
  reading: AwayReading,
): readonly Absence[] {
  return itemsOf(tree).flatMap((item) => {
    if (item.kind !== "words") return [];
    const comma = item.words.text.search(/[,:]/);
    const who = part(item.words, 0, comma < 0 ? item.words.text.length : comma);
    const when = comma < 0 ? null : part(item.words, comma + 1);
    if (when === null || when.text === "") {
      reading.told.push(
        tell("day-unclear", who.at, "No days stand here", "Write who and when: Oda, 19 to 23 Jun"),
      );
      return [];
    }
    const person = personNamed(who, people, reading);
    if (/\.ics$/i.test(when.text))
      return person === undefined ? [] : fromCalendar(person, when, reading);
    const span = readSpan(when, reading);
    if (person === undefined || span === null) return [];
    doubtOutside(span, when, reading);
    return [{ person, ...span }];
  });
}

/** Every absence that a calendar beside the plan has for the plan's season. */
function fromCalendar(
  person: string | null,
  named: Words,
  { season, told, clock, beside }: AwayReading,
): readonly Absence[] {
  const name = named.text;
  const names = Object.keys(beside.texts).filter((each) => /\.ics$/i.test(each));
  const text = names.includes(name) ? beside.texts[name] : undefined;
  if (text === undefined) {
    const advice = offer(name, names, "Put it beside the plan, or write the days here");
    told.push(tell("calendar-missing", named.at, `There is no ${name.slice(0, 60)}`, advice));
    return [];
  }
  const spans = season ? spansIn(text, clock, season) : [];
  if (spans === null) {
    const is = `${name.slice(0, 60)} is no calendar file`;
    told.push(
      tell("calendar-wrong", named.at, is, "Export it as iCalendar, or write the days here"),
    );
  }
  return (spans ?? []).map((span) => ({ person, ...span }));
}

function personNamed(
  words: Words,
  people: readonly Person[],
  reading: DayReading,
): string | null | undefined {
  if (/^(?:everybody|everyone|all|all of us|both|both of us|we)$/i.test(words.text)) return null;
  return personKey(words, people, reading) ?? undefined;
}
