import { isoOf } from "../../src/base/days/day.ts";
import type { ScheduledTask } from "../../src/engine/schedule/scheduled-task.ts";
import { tellOf } from "../gardens.ts";
import { must } from "./ours.ts";
import { csvOf } from "./read.ts";

/** A place as a plan needs it: means of a month's lows and highs [°C], January first, and its frosts in words (`none`). */
export type GardenPlace = {
  readonly latitude: number;
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly last: string;
  readonly first: string;
};

const MONTHS = Array.from({ length: 12 }, (_, i) => i + 1);

const NAMES = "Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec".split(" ");

/** `about 18 Apr` for `04-18`. */
const inWords = (text: string): string => {
  const [month = 0, date = 0] = text.split("-").map(Number);
  return !month ? "none" : `about ${date} ${NAMES[month - 1]}`;
};

/** A station of the table of normals by the beginning of its name; its own frosts, or these where the table has none. */
export function stationCalled(
  name: string,
  frosts?: Pick<GardenPlace, "last" | "first">,
): GardenPlace {
  const row = must(
    csvOf("climate-normals.csv").find(({ station = "" }) => station.startsWith(name)),
  );
  const of = (what: string) => MONTHS.map((month) => Number(row[`${what}${month}`]));
  const { lat, last_frost_p50: last = "none", first_frost_p50: first = "none" } = row;
  const own = { last: inWords(last), first: inWords(first) };
  return { latitude: Number(lat), low: of("low"), high: of("high"), ...own, ...frosts };
}

/** What a garden of that place with those crops is told, all work assumed done. */
export function toldAt(place: GardenPlace, crops: readonly string[]): readonly ScheduledTask[] {
  const text = `garden: Source
year: 2027
measures: metric
place:
  clock: UTC
  latitude: ${place.latitude}
  last frost: ${place.last}
  first frost: ${place.first}
  weather:
    low: [${place.low}]
    high: [${place.high}]
risk:
  plants we raised: 1 spring in 2
  seed in the ground: 1 spring in 2
crops:
${crops.map((crop) => `  - ${crop}\n`).join("")}`;
  return tellOf(text, { on: "2027-01-02" }).scheduled;
}

/** Due days by what stands after the year in an id: `garlic/harvest/1`. */
export function dueAt(
  place: GardenPlace,
  crops: readonly string[],
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    toldAt(place, crops).map(({ task }) => [task.id.replace(/^\d+\//, ""), isoOf(task.window.due)]),
  );
}

/** The month of a day, 1 to 12; 0 where there is none. */
export const monthOf = (day: string | undefined): number => Number(day?.slice(5, 7) ?? 0);

/** How many months two lie apart, round the year. */
export function monthsApart(one: number, other: number): number {
  const apart = Math.abs(one - other) % 12;
  return Math.min(apart, 12 - apart);
}
