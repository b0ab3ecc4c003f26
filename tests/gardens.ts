import { buildSchedule, type Garden, horizonAt, type Schedule } from "../src/app/build.ts";
import { type Day, dayFromIso } from "../src/base/days/day.ts";
import { startOf } from "../src/base/days/instants.ts";
import { PRACTICES } from "../src/engine/practices/all.ts";
import type { PublishedState } from "../src/engine/schedule/scheduled-task.ts";
import type { Normals, Plan } from "../src/garden/model/plan.ts";
import { readPlan } from "../src/garden/plan/read.ts";

const HEAD = `garden: Quarry Lane
year: 2027
measures: inches and °F
place:
  clock: America/Denver
  latitude: 46.6
  last frost: 20 Apr, 6 May, 21 May
  first frost: about 2 Oct
  greenhouse: 20 trays, kept above 45 °F
  weather:
    low: [11, 14, 21, 28, 36, 43, 48, 46, 38, 29, 20, 12]
    high: [30, 35, 45, 55, 64, 73, 83, 81, 71, 57, 41, 31]
risk:
  plants we raised: 1 spring in 10
  seed in the ground: 1 spring in 2
`;

const PEOPLE = `people:
  Imre: { gardens: Wed 18-19 and Sat 9-12, home: weekdays from 17:30 and weekends }
  Oda: { gardens: Sun 10-12, home: every day but Tue }
`;

const BEDS = `beds:
  Bags:
    is: 6 grow bags, 16 in across, 14 in high
    crops:
      - potato: 18 plants, sprouted first
  Root bed:
    is: 12 x 4 ft
    crops:
      - carrot: 3 rows, under a board
      - beet: 2 rows
  Salad bed:
    is: 8 x 4 ft
    crops:
      - lettuce: 2 rows, every 14 days, 3 times
  South bed:
    is: 12 x 4 ft
    warmed by: black film
    crops:
      - tomato: 6 plants, from seed indoors
  Garlic bed:
    is: 8 x 4 ft
    crops:
      - garlic: 60 cloves, plant this October
`;

/** The canonical garden of tests, frozen: six crops, two people with hours, normals, no diary, no absences. */
export const QUARRY = HEAD + PEOPLE + BEDS;

/** The same beds and crops, and nobody named. */
export const ALONE = HEAD + BEDS;

/** Plans by their text, read once: a plan never changes. */
const READ = new Map<string, Plan>();

/** A text's plan, with some of its fields replaced where asked; throws where the text has a problem. */
export function planOf(text: string, overrides: Partial<Plan> | null = null): Plan {
  const plan = READ.get(text) ?? readWhole(text);
  READ.set(text, plan);
  return overrides ? { ...plan, ...overrides } : plan;
}

function readWhole(text: string): Plan {
  const { year } = /^year: (?<year>\d+)$/m.exec(text)?.groups ?? {};
  const at = { garden: "quarry-lane", file: `plans/quarry-lane/${year}.yaml` };
  const { plan, problems } = readPlan(text, at, PRACTICES);
  if (plan === null) throw new Error(JSON.stringify(problems, null, 2));
  return plan;
}

/** A garden of some years' texts, in year order. */
export function gardenOf(...texts: readonly string[]): Garden {
  return { id: "quarry-lane", plans: texts.map((text) => planOf(text)) };
}

/** Monthly means of lows and highs [°C], January first, as a plan that gives nothing more has them. */
export function normalsOf(lowC: readonly number[], highC: readonly number[]): Normals {
  return { lowC, highC, spreadK: null, rainMm: null };
}

/** A day written `2027-05-06`; throws on any other text. */
export function isoDay(text: string): Day {
  const day = dayFromIso(text);
  if (day === null) throw new RangeError(`no such day: ${text}`);
  return day;
}

/** When a garden is told: on which day (`2027-05-06`), at its first minute, and what was told before. */
export type When = { readonly on: string; readonly standing?: PublishedState };

/** What the garden of one year's text, or of several in year order, is told on a day. */
export function tellOf(text: string | readonly string[], { on, standing = {} }: When): Schedule {
  const garden = typeof text === "string" ? gardenOf(text) : gardenOf(...text);
  const clock = garden.plans[garden.plans.length - 1]?.site.clock ?? "UTC";
  return buildSchedule(garden, horizonAt(garden, startOf(isoDay(on), clock)), standing);
}
