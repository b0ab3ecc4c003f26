import { dayOrThrow, plus, sayDay } from "../../src/base/days/day.ts";
import { curveThrough } from "../../src/engine/climate/air.ts";
import { LOW_ON_FROST_DATE } from "../../src/engine/climate/rough-air.ts";
import type { Normals, Plan } from "../../src/garden/model/plan.ts";
import { normalsOf, planOf } from "../gardens.ts";
import { csvOf } from "./read.ts";

/** A station's published year: monthly means of lows and highs [°C], January first. */
export type StationClimate = Pick<Normals, "lowC" | "highC"> & {
  readonly name: string;
  readonly latitude: number;
  readonly clock: string;
  /** The usual frost dates as a plan has them, `none` for both where there is no frost; null where they are not published. */
  readonly frosts: readonly [last: string, first: string] | null;
};

const row = (cells: Readonly<Record<string, string>>, key: string) =>
  Array.from({ length: 12 }, (_, month) => Number(cells[`${key}${month + 1}`]));

/** Degrees of longitude to a zone's name: those of a station's gardener. */
function clockAt(country: string, latitude: number, longitude: number): string {
  if (country === "GB") return "Europe/London";
  if (country === "AU") return "Australia/Sydney";
  if (latitude > 55) return "America/Anchorage";
  if (longitude < -117.5) return "America/Los_Angeles";
  if (longitude < -102) return "America/Denver";
  return longitude < -85.5 ? "America/Chicago" : "America/New_York";
}

function dateOf(monthAndDate: string): string {
  const [month = 1, date = 1] = monthAndDate.split("-").map(Number);
  return sayDay(dayOrThrow(2027, month, date));
}

/** All stations of climate-normals.csv. */
export const CLIMATES: readonly StationClimate[] = csvOf("climate-normals.csv").map((cells) => {
  const [latitude, last, first] = [Number(cells.lat), cells.last_frost_p50, cells.first_frost_p50];
  return {
    ...{ name: cells.station ?? "", latitude, lowC: row(cells, "low"), highC: row(cells, "high") },
    clock: clockAt(cells.country ?? "", latitude, Number(cells.lon)),
    frosts:
      !last || !first ? null : last === "none" ? ["none", "none"] : [dateOf(last), dateOf(first)],
  };
});

/** Its published frost dates, else the days on which its mean low is that of other stations' frost dates. */
export function frostsOf({ frosts, lowC }: StationClimate): readonly [last: string, first: string] {
  if (frosts) return frosts;
  const low = curveThrough(lowC);
  const isMild = (day: number) => (low[day] ?? 0) >= LOW_ON_FROST_DATE.meanC;
  const days = Array.from({ length: 365 }, (_, day) => day);
  const [last, first] = [days.find(isMild), days.findLast(isMild)];
  const said = (day: number | undefined) => sayDay(plus(dayOrThrow(2027, 1, 1), day ?? 0));
  return [said(last), said(first)];
}

/** What a gardener there may tell: frost dates alone, these with both temperatures, or every monthly mean. */
export type Told = "frost dates" | "two numbers" | "means";

/** Both temperatures as a plan has them, to the whole degree as a gardener knows them. */
export function temperatureLines({ lowC, highC }: Pick<Normals, "lowC" | "highC">): string {
  const [hot, cold] = [Math.round(Math.max(...highC)), Math.round(Math.min(...lowC))];
  return `  hottest afternoons: ${hot} °C\n  coldest nights: ${cold} °C\n`;
}

/** The plan of a station's gardener who tells so much; `more`: further lines of the plan. */
export function planAt(station: StationClimate, told: Told, more = "crops: [carrot]\n"): Plan {
  const { clock, latitude, lowC, highC } = station;
  const [last, first] = frostsOf(station);
  const numbers = told === "two numbers" ? temperatureLines({ lowC, highC }) : "";
  const plan = planOf(
    `garden: Station\nyear: 2027\nmeasures: metric\nplace:\n  clock: ${clock}\n  latitude: ${latitude}\n` +
      `  last frost: ${last}\n  first frost: ${first}\n${numbers}${more}`,
  );
  return told === "means"
    ? { ...plan, site: { ...plan.site, normals: normalsOf(lowC, highC) } }
    : plan;
}
