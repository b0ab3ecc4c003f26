import { type Problem, sayCount, suggestion } from "../../base/index.ts";
import type { Absence, Person } from "../model/plan.ts";
import { type CalendarDays, daysIn } from "./calendar-file.ts";
import { diagnostic } from "./codes.ts";
import { type DayReadContext, readSpan } from "./dates.ts";
import { doubtOutsideSeason, personKey } from "./people.ts";
import { itemsOf, sliceWords, type Tree, type Words } from "./tree.ts";
import type { CompanionFiles } from "./weather.ts";

/** What reading absences needs: the season of the days, the garden's clock, and the files beside the plan. */
export type AbsenceReadContext = DayReadContext & {
  readonly clock: string;
  readonly beside: CompanionFiles;
};

/**
 * Who is away and when, in the order of the file, both days inclusive; `Oda, oda.ics` stands for every event of an
 * iCalendar file beside the plan. Problems: `nobody-called`, `calendar-missing`, `calendar-wrong`,
 * `calendar-too-large`, those of days; doubts: `outside-season`, `calendar-unread`.
 */
export function readAway(
  tree: Tree | null,
  people: readonly Person[],
  reading: AbsenceReadContext,
): readonly Absence[] {
  return itemsOf(tree).flatMap((item) => {
    if (item.kind !== "words") return [];
    const comma = item.words.text.search(/[,:]/);
    const who = sliceWords(item.words, 0, comma < 0 ? item.words.text.length : comma);
    const when = comma < 0 ? null : sliceWords(item.words, comma + 1);
    if (when === null || when.text === "") {
      reading.problems.push(
        diagnostic(
          "day-unclear",
          who.at,
          "No days stand here",
          "Write who and when: Oda, 19 to 23 Jun",
        ),
      );
      return [];
    }
    const person = personNamed(who, people, reading);
    if (/\.ics$/i.test(when.text))
      return person === undefined ? [] : fromCalendar(person, when, reading);
    const span = readSpan(when, reading);
    if (person === undefined || span === null) return [];
    doubtOutsideSeason(span, when, reading);
    return [{ person, ...span }];
  });
}

/** Every absence that a calendar beside the plan has for the plan's season. */
function fromCalendar(
  person: string | null,
  named: Words,
  { season, problems, clock, beside }: AbsenceReadContext,
): readonly Absence[] {
  const name = named.text;
  const names = Object.keys(beside.texts).filter((each) => /\.ics$/i.test(each));
  const text = names.includes(name) ? beside.texts[name] : undefined;
  if (text === undefined) {
    const advice = suggestion(name, names, "Put it beside the plan, or write the days here");
    problems.push(
      diagnostic("calendar-missing", named.at, `There is no ${name.slice(0, 60)}`, advice),
    );
    return [];
  }
  if (!season) return [];
  const days = daysIn(text, clock, season);
  tellOfCalendar(days, named, problems);
  return (days?.spans ?? []).map((span) => ({ person, ...span }));
}

/** What can't be read of a calendar. */
function tellOfCalendar(days: CalendarDays | null, { text, at }: Words, problems: Problem[]): void {
  const name = text.slice(0, 60);
  if (days === null)
    problems.push(
      diagnostic(
        "calendar-wrong",
        at,
        `${name} is no calendar file`,
        "Export it as iCalendar, or write the days here",
      ),
    );
  if (days?.tooMuch)
    problems.push(
      diagnostic(
        "calendar-too-large",
        at,
        `${name} has more repeating events than are read`,
        "Export only the calendar of your days away, or write the days here",
      ),
    );
  if (days && days.unread > 0)
    problems.push(
      diagnostic(
        "calendar-unread",
        at,
        `${sayCount(days.unread, "event")} of ${name} ${days.unread === 1 ? "comes" : "come"} round by hours or by weeks of the year`,
        "Those days are not read; write them here",
      ),
    );
}

function personNamed(
  words: Words,
  people: readonly Person[],
  reading: DayReadContext,
): string | null | undefined {
  if (/^(?:everybody|everyone|all|all of us|both|both of us|we)$/i.test(words.text)) return null;
  return personKey(words, people, reading) ?? undefined;
}
