import { type DaySpan, earliest, latest } from "../../base/index.ts";
import type { Plan } from "../../garden/model/index.ts";
import { sayDays } from "../events/sentences.ts";

/** Days from the first to the last, both inclusive, and whose sheet it is; null: the household's. */
export type PersonDaySpan = DaySpan & { readonly person: string | null };

/**
 * Who is away in those days, a sentence each, in the plans' order: `Oda is away 19 to 23 June.` A person's own sheet
 * has only what concerns them.
 */
export function awayLines(
  plans: readonly Plan[],
  { from, to, person }: PersonDaySpan,
): readonly string[] {
  return plans.flatMap(({ away, people }) =>
    away
      .filter((each) => each.from <= to && each.to >= from)
      .filter((each) => person === null || each.person === null || each.person === person)
      .map((each) => {
        const name = people.find(({ key }) => key === each.person)?.name ?? "Everybody";
        return `${name} is away ${sayDays({ from: latest(each.from, from), to: earliest(each.to, to) })}.`;
      }),
  );
}
