import type { ScheduledTask } from "../../../src/engine/schedule/scheduled-task.ts";
import type { Year } from "../../../src/engine/year.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { type AwayReport, awayReports } from "../../../src/views/away/report.ts";
import { type AwayText, awayTexts } from "../../../src/views/away/texts.ts";
import { isoDay, planOf, QUARRY, tellOf } from "../../gardens.ts";

/** The canonical garden with more that cannot wait: beans and cucumbers, and drip in the root bed. */
export const LUSH = QUARRY.replace(
  "  Root bed:\n    is: 12 x 4 ft\n",
  "  Root bed:\n    is: 12 x 4 ft\n    drip: 12 gal an hour\n",
).replace(
  "  South bed:\n",
  "  Bean bed:\n    is: 12 x 4 ft\n    crops:\n      - bush bean: 2 rows\n      - cucumber: 3 plants\n  South bed:\n",
);

/** A garden's text with lines under `away:`. */
export const withAway = (text: string, ...lines: readonly string[]): string =>
  text.replace("beds:\n", `away:\n${lines.map((line) => `  - ${line}\n`).join("")}beds:\n`);

/** The same with nobody named. */
export const unnamed = (text: string): string => text.replace(/people:\n(?: {2}.*\n)+/, "");

/** When and for whom it is told. */
export type When = { readonly on?: string; readonly person?: string };

/** What the feed scheduled of a garden's text, its reports and their texts. */
export type Away = {
  readonly plan: Plan;
  readonly scheduled: readonly ScheduledTask[];
  readonly year: Year;
  readonly reports: readonly AwayReport[];
  readonly texts: readonly (readonly AwayText[])[];
};

/** A garden's absences told, as of 1 January where no day is given. */
export function awayOf(text: string, { on = "2027-01-01", person }: When = {}): Away {
  const plan = planOf(text);
  const { year, scheduled } = tellOf(text, { on });
  const reports = awayReports(plan, year, { person: person ?? null, today: isoDay(on) });
  const texts = reports.map((report) => awayTexts(report, plan, scheduled));
  return { plan, scheduled, year, reports, texts };
}

/** The lines of one list of an absence, the first where none is said; none where there is no such text. */
export function linesOf({ texts }: Away, list: AwayText["list"], number = 0): readonly string[] {
  return texts[number]?.find((each) => each.list === list)?.text.split("\n") ?? [];
}
