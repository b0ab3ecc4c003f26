import {
  type YearReport,
  type YearReportInput,
  yearReport,
} from "../../../src/views/paper/year.ts";
import { isoDay, QUARRY, tellOf } from "../../gardens.ts";
import { firstPlan } from "../pictures/drawn.ts";

/** The canonical garden with a year of diary: deeds, stages, lows, and remarks of every kind. */
export const LIVED = `${QUARRY}diary:
  - 12 May: low 30 °F
  - 12 May: beets sown by Oda
  - 22 May: low 29 °F
  - 24 May: carrots up
  - 25 May: soil in South bed 58 °F
  - 2 June: moved two lettuces to the end of the bed
  - 3 June: slugs ate half of the beets
  - 13 June: carrots thinned
  - 1 July: gave up on the basil
  - 4 July: a cat slept in the onions
  - 10 Sep: first ripe tomatoes
  - 12 Sep: potatoes dug
  - 30 Sep: low 27 °F
`;

const PLAIN = (text: string) => text.replace(/^diary:\n[\s\S]*/m, "");

/** What a text's year is made from, looked back on from a day. */
export function backOf(text: string, on: string): YearReportInput {
  const { year } = tellOf(text, { on });
  const planned = tellOf(PLAIN(text), { on }).year;
  return { year, planned, plan: firstPlan(year), today: isoDay(on) };
}

/** The same as a report. */
export const reportOf = (text: string, on: string): YearReport => yearReport(backOf(text, on));
