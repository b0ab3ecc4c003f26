import { dayOrThrow } from "../../../src/base/days/day.ts";
import { PRACTICES } from "../../../src/engine/practices/all.ts";
import type { Plan } from "../../../src/garden/model/plan.ts";
import { type PlanResult, readPlan } from "../../../src/garden/plan/read.ts";

/** The garden of these tests, frozen here: the one in plans/ grows. */
export const TEXT = `garden: Quarry Lane
year: 2027
measures: inches and °F
place:
  clock: America/Denver
  latitude: 46.6
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
  colder than the forecast by: 3 °F
  greenhouse: 20 trays, kept above 45 °F
  weather:
    low: [11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]
    high: [30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]
risk:
  plants we raised: 1 spring in 10
  seed in the ground: 1 spring in 2
people:
  Imre: { gardens: Wed 18-19 and Sat 9-12, home: weekdays from 17:30 and weekends, leave out: lifting }
  Oda: { gardens: Sun 10-12, home: every day but Tue }
away:
  - Oda, 19 to 23 Jun
beds:
  Bags:
    is: 6 grow bags, 16 in across, 14 in high
    crops:
      - potato: early red, 18 plants, sprouted first
  Root bed:
    is: 12 x 4 ft
    crops:
      - carrot: 3 rows, under a board
      - beet: 10 ft, between the carrot rows
  South bed:
    is: 12 x 4 ft
    warmed by: black film
    crops:
      - tomato: 6 plants, from seed indoors, 72 days, not before 8 Jun
      - lettuce: 2 rows, every 14 days, 4 times, for Oda, without thinning
  Garlic bed:
    is: 8 x 4 ft
    crops:
      - garlic: 60 cloves, in since 14 Oct 2026
      - name: second garlic
        crop: garlic
        cloves: 60
        plant: this October
        after: the garlic
diary:
  - 24 May: carrots up
  - 25 May: soil in South bed 58 °F
`;

/** The least plan, with some crops. */
export function least(
  crops: string,
  place = "last frost: about 6 May\n  first frost: about 2 Oct",
): string {
  return `garden: Small\nyear: 2027\nplace:\n  clock: America/Denver\n  ${place}\n${crops}`;
}

/** A text read as the garden of these tests. */
export function read(text: string, beside: Readonly<Record<string, string>> = {}): PlanResult {
  return readPlan(
    text,
    { garden: "quarry-lane", file: "plans/quarry-lane/2027.yaml", beside },
    PRACTICES,
  );
}

/** The plan of a text that must have no problem. */
export function planOf(text: string): Plan {
  const { plan, problems } = read(text);
  if (plan === null) throw new Error(JSON.stringify(problems));
  return plan;
}

/** The canonical garden, read. */
export const PLAN: Plan = planOf(TEXT);

/** `code@line:column` of each problem, in order. */
export function told(
  text: string,
  beside: Readonly<Record<string, string>> = {},
): readonly string[] {
  return read(text, beside).problems.map(({ code, at }) => `${code}@${at.line}:${at.column}`);
}

/** A day of 2027. */
export const on = (month: number, date: number) => dayOrThrow(2027, month, date);
