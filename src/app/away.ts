import { type Day, joinWords } from "../base/index.ts";
import type { Year } from "../engine/index.ts";
import type { Plan } from "../garden/model/index.ts";
import { type AwayText, awayReports, awayTexts, sayDays, voiceOf } from "../views/index.ts";

export type { AwayText } from "../views/index.ts";

/** An absence in words: `Oda away, 19 to 23 June`, and its texts in the order they are read. */
export type AbsenceText = { readonly head: string; readonly texts: readonly AwayText[] };

/** Whose absences, by the person's key, null for all; of which of the year's plans; and which day is today. */
export type AbsenceQuery = {
  readonly person: string | null;
  readonly plans: readonly Plan[];
  readonly today: Day;
};

/** Each absence from today on: what to do before, what waits, the neighbour's list, and what to look at after. */
export function absences(
  year: Year,
  { person, plans, today }: AbsenceQuery,
): readonly AbsenceText[] {
  return plans.flatMap((plan) =>
    awayReports(plan, year, { person, today }).map((report) => ({
      head: `${whoIsAway(report.leave.away, plan)}, ${sayDays(report.leave)}`,
      texts: awayTexts(report, plan, year.scheduled),
    })),
  );
}

/** `Oda away`, or that everybody is. */
function whoIsAway(away: readonly string[], plan: Plan): string {
  if (away.length === plan.people.length) return "Everybody away";
  return `${joinWords(away.map(voiceOf(plan, "household").nameOf))} away`;
}
