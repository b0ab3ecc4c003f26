import { sayCount, sayDay } from "../../base/index.ts";
import type { FrostSide } from "../plan/nights.ts";
import type { NightDates } from "./frost-record.ts";
import { gapsIn } from "./gaps.ts";
import { MISSING_NIGHTS } from "./record.ts";
import type { Station } from "./station.ts";
import type { SiteFigures } from "./weather-file.ts";

const UNITS = {
  "°C": "°C and mm",
  "°F": "°F and inches",
  tenths: "tenths of °C and of mm",
} as const;

const BY = {
  said: "as you said",
  head: "as the column says",
  values: "guessed from the highs; say otherwise with --in",
} as const;

function sayRead({ columnsRead: read, unit, unitBy }: Station): string {
  const rain = read.rain === null ? "no rain" : `${read.rain} as the rain`;
  return `Read ${read.low} as the low, ${read.high} as the high, ${rain}, in ${UNITS[unit]} (${BY[unitBy]}).`;
}

function sayDays({ days }: Station): string {
  const [first, last] = [days[0], days.at(-1)].map((one) => (one ? sayDay(one.day, true) : ""));
  const { days: missing, longest } = gapsIn(days);
  const run =
    longest &&
    `the longest run is ${sayCount(longest.days, "day")} from ${sayDay(longest.from, true)}`;
  const gaps = run ? `${sayCount(missing, "day")} without a low or a high, ${run}` : "none missing";
  return `${first} to ${last}: ${gaps}.`;
}

function sayHalf({ south }: SiteFigures, { latitude }: Station, given: number | null): string {
  const warmer = south ? "January is the warmer" : "July is the warmer, or neither";
  const by = given !== null ? "as you said" : latitude !== null ? "by the file's latitude" : warmer;
  return `Counted for a place ${south ? "south" : "north"} of the equator (${by}).`;
}

/**
 * Where winters are cut off, for one and for several: the search for a last night ends at the start of the record, that
 * for a first night at its end.
 */
const CUT_OFF = {
  last: ["winter begins before the record", "winters begin before the record"],
  first: ["winter runs past the record's end", "winters run past the record's end"],
} as const;

function sayUncounted({ leftOut, cutOff }: NightDates, side: FrostSide): string {
  const missing = `; ${sayCount(leftOut, "year")} left out with ${MISSING_NIGHTS} or more nights missing`;
  const cut = `; ${cutOff} ${CUT_OFF[side][cutOff === 1 ? 0 : 1]}`;
  return `${leftOut > 0 ? missing : ""}${cutOff > 0 ? cut : ""}`;
}

function sayNights(what: string, dates: NightDates, side: FrostSide): string {
  const { years, without } = dates;
  const left = sayUncounted(dates, side);
  if (years === 0) return `${what}: no year counts${left}. Its dates are left out of the file.`;
  const none =
    without === years ? "none had one" : without > 0 ? `${without} had none` : "each had one";
  return `${what}: ${sayCount(years, "year")}, ${none}${left}.`;
}

/**
 * What a station's figures were made from, for whoever runs the command: one line each on columns and unit, days and
 * gaps, months left out, the hemisphere, and the years behind the frost dates. `given` is the latitude from the command
 * [degrees].
 */
export function reportOn(
  station: Station,
  figures: SiteFigures,
  given: number | null,
): readonly string[] {
  const { months, frost } = figures;
  const left = `${sayCount(months.leftOut, "month")} left out of the means, under four days in five there.`;
  const few = frost.last[32].years < 10 ? ["Ten years or more make surer dates."] : [];
  return [
    sayRead(station),
    sayDays(station),
    ...(months.leftOut > 0 ? [left] : []),
    sayHalf(figures, station, given),
    sayNights("Last frost", frost.last[32], "last"),
    sayNights("First frost", frost.first[32], "first"),
    sayNights("First night at 28 °F", frost.first[28], "first"),
    ...(months.spreadK ? [] : ["Spread is left out: it wants three years of each month."]),
    ...few,
  ];
}
