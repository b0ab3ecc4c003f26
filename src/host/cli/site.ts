import { readFileSync, statSync } from "node:fs";
import { basename } from "node:path";
import { type Problem, sayProblem } from "../../base/problems/problem.ts";
import type { RowFilter } from "../../garden/station/columns.ts";
import { reportOn } from "../../garden/station/report.ts";
import { readStation, type Station, type StationRequest } from "../../garden/station/station.ts";
import { wrong } from "../../garden/station/table.ts";
import { fileUnitFrom } from "../../garden/station/units.ts";
import { frozenThrough, unlikelyIn } from "../../garden/station/unlikely.ts";
import {
  figuresOf,
  monthsMissing,
  type SiteFigures,
  weatherFile,
} from "../../garden/station/weather-file.ts";
import {
  type Call,
  type Command,
  type Exit,
  type Options,
  rejectExtraWords,
  WrongUsage,
} from "./call.ts";

/** The largest file that is read [bytes]. Source: house rule: a hundred years of days with every column NOAA has. */
const MOST_BYTES = 100_000_000;

/** The text of a station's file, or why there is none. */
function textOf(file: string): string | Problem {
  const at = { file, line: 1, column: 1 };
  const size = statSync(file, { throwIfNoEntry: false });
  if (size?.isDirectory())
    return wrong("no-station", at, "It is a folder, not a station's file", "Name a file in it");
  if (!size?.isFile())
    return wrong("no-station", at, "There is no such file", "Name a station's file");
  if (size.size > MOST_BYTES)
    return wrong("no-station", at, "It is larger than 100 MB", "Give one station's days alone");
  return readFileSync(file, "utf8");
}

function whereOf({ where = [] }: Options): readonly RowFilter[] {
  return where.map((each) => {
    const at = each.indexOf("=");
    if (at < 1)
      throw new WrongUsage(`--where ${each}: a column and its value, such as location=Seattle`);
    return { column: each.slice(0, at).trim(), value: each.slice(at + 1).trim() };
  });
}

function unitOf({ in: unitName }: Options): StationRequest["unit"] {
  if (unitName === undefined) return null;
  const unit = fileUnitFrom(unitName);
  if (unit === null) throw new WrongUsage(`--in ${unitName}: °F, °C or tenths`);
  return unit;
}

function latitudeOf({ latitude }: Options): number | null {
  if (latitude === undefined) return null;
  const degrees = latitude.trim() === "" ? Number.NaN : Number(latitude);
  if (!(Math.abs(degrees) <= 90))
    throw new WrongUsage(`--latitude ${latitude}: degrees, south negative, such as 46.6`);
  return degrees;
}

function askedOf(file: string, options: Options): StationRequest {
  const { date, low, high, rain } = options;
  const columns = {
    ...(date === undefined ? {} : { date }),
    ...(low === undefined ? {} : { low }),
    ...(high === undefined ? {} : { high }),
    ...(rain === undefined ? {} : { rain }),
  };
  return { file, columns, where: whereOf(options), unit: unitOf(options) };
}

/** What keeps a station's figures from being written. */
function stopping(station: Station, { months }: SiteFigures, file: string): Problem | null {
  const missing = monthsMissing(months);
  if (missing.length === 0) return frozenThrough(station, file);
  const is = `No year has four days in five of ${missing.length === 12 ? "any month" : missing.join(", ")}`;
  const at = { file, line: 1, column: 1 };
  return wrong("month-missing", at, is, "Give a record with every month in it");
}

function fail(problems: readonly Problem[], { terminal }: Call): Exit {
  for (const problem of problems) terminal.err(`${sayProblem(problem)}\n`);
  return 1;
}

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const { rest, options, terminal } = call;
  const [file] = rest;
  if (file === undefined) throw new WrongUsage("which station's file?");
  const given = latitudeOf(options);
  const asked = askedOf(file, options);
  const text = textOf(file);
  if (typeof text !== "string") return fail([text], call);
  const { station, problems } = readStation(text, asked);
  if (!station) return fail(problems, call);
  const figures = figuresOf(station, given);
  const stop = stopping(station, figures, file);
  const report = stop === null ? reportOn(station, figures, given) : [];
  const odd = stop?.code === "month-missing" ? [] : unlikelyIn(station, figures);
  for (const line of [...report, ...odd]) terminal.err(`${line}\n`);
  if (stop !== null) return fail([stop], call);
  terminal.out(weatherFile(station, figures, basename(file)));
  return 0;
}

/** `site STATION.csv`: a weather file from a station's own days, on standard output; what was used, guessed and left out on standard error. */
export const SITE: Command = {
  takes: ["low", "high", "rain", "date", "where", "in", "latitude"],
  run,
};
