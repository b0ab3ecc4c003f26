import { readFileSync } from "node:fs";
import { planOf } from "../gardens.ts";
import { knownBefore, observedIn, STATIONS, type Station, YEARS } from "../hindcast/station.ts";
import { callsADay, weatherCosts } from "./costs.ts";
import { type Asked, askedIn, LEADS } from "./dates.ts";
import { type Moved, movesIn } from "./moves.ts";
import { type Warned, warnedIn } from "./nights.ts";

/*
 * What knowing the season so far and ten days ahead is worth: every station year of the open series, lived through with
 * forecasts made of the true days and errors as forecasts have them. `npm run -s ahead` prints it.
 */
const TWELVE = readFileSync(new URL("../golden/twelve.yaml", import.meta.url), "utf8");
const ALL = STATIONS.flatMap((station) => YEARS.map((year) => ({ station, year })));

const mean = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;
const cells = (...all: readonly (string | number)[]) =>
  all.map((cell, i) => (i === 0 ? String(cell).padEnd(16) : String(cell).padStart(10))).join("");

/** The twelve plantings of the trade at a station, in a year of which only the others are known. */
function twelveAt(station: Station, year: number) {
  const { lastFrost, firstFrost, normals } = knownBefore(station, year);
  const text = TWELVE.replace("2027", String(year))
    .replace("America/Denver", station.clock)
    .replace("46.6", String(station.latitude))
    .replace(/last frost: .*/, `last frost: ${lastFrost}`)
    .replace(/first frost: .*/, `first frost: ${firstFrost}`);
  const plan = planOf(text);
  return { ...plan, site: { ...plan.site, normals } };
}

function datesTable(asked: readonly Asked[]): readonly string[] {
  const stages = ["all", ...new Set(asked.map(({ stage }) => stage))];
  return stages.map((name) => {
    const of = LEADS.map((lead) => {
      const here = asked.filter(
        (each) => each.lead === lead && (name === "all" || each.stage === name),
      );
      return `${mean(here.map(({ byCurve }) => byCurve)).toFixed(1)} ${mean(here.map(({ byWeather }) => byWeather)).toFixed(1)}`;
    });
    return cells(name, ...of);
  });
}

const nightsRow = (name: string, of: Warned) =>
  cells(
    name,
    ...[of.nights, of.twoAhead, of.oneAhead, of.sameDay, of.missed, of.standing],
    ...[of.losing, of.standingLosing, of.inVain, of.farInVain],
  );

const sumOf = (all: readonly Warned[]): Warned =>
  Object.fromEntries(
    (Object.keys(all[0] ?? {}) as (keyof Warned)[]).map((key) => [
      key,
      all.reduce((sum, each) => sum + each[key], 0),
    ]),
  ) as Warned;

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;

console.log(
  "Days off, by the curve alone and with the weather known, so many days before it came:",
);
console.log(cells("", ...LEADS));
for (const row of datesTable(ALL.flatMap(({ station, year }) => askedIn(station, year))))
  console.log(row);

console.log("\nNights on which cold asked for work in a garden of twelve plantings:");
console.log(
  cells(
    "",
    ...["nights", "2 ahead", "1 ahead", "same day", "missed", "standing"],
    ...["killing", "standing", "in vain", "by 2 °F"],
  ),
);
const warned = ALL.map(({ station, year }) => {
  const seed = `${station.name} ${year}`;
  const of = warnedIn(twelveAt(station, year), observedIn(station, year), seed);
  console.log(nightsRow(seed, of));
  return of;
});
console.log(nightsRow("all", sumOf(warned)));

console.log(
  "\nEntries still to come that changed in a month, a build every day: median and most of the year's months",
);
console.log(cells("", "moved", "most", "1 a ladder", "most", "retold", "most"));
for (const { station, year } of ALL) {
  const seed = `${station.name} ${year}`;
  const months = movesIn(twelveAt(station, year), observedIn(station, year), seed);
  const of = (kind: keyof Moved) => months.map((each) => each[kind]);
  const both = (kind: keyof Moved) => [median(of(kind)), Math.max(...of(kind))] as const;
  console.log(cells(seed, ...both("entries"), ...both("things"), ...both("retold")));
}

const { answerBytes, keptBytes, readMs } = weatherCosts();
console.log("\nWhat the weather costs, and calls a day with a place of its own for each garden:");
console.log(cells("", "answer", "kept", "read"));
console.log(
  cells(
    "",
    ...[answerBytes, keptBytes].map((bytes) => `${Math.round(bytes / 1000)} kB`),
    `${readMs.toFixed(1)} ms`,
  ),
);
for (const gardens of [1, 100, 2500, 100_000])
  console.log(cells(`${gardens} gardens`, callsADay(gardens)));
