import { readFileSync, statSync } from "node:fs";
import { basename } from "node:path";
import {
  fileUnitFrom,
  type Problem,
  type RowFilter,
  type StationRequest,
  sayProblem,
  siteWeather,
  wrong,
} from "../../app/index.ts";
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
  const { weather, notes, problems } = siteWeather(text, asked, {
    name: basename(file),
    latitude: given,
  });
  for (const line of notes) terminal.err(`${line}\n`);
  if (weather === null) return fail(problems, call);
  terminal.out(weather);
  return 0;
}

/** `site STATION.csv`: a weather file from a station's own days, on standard output; what was used, guessed and left out on standard error. */
export const SITE: Command = {
  takes: ["low", "high", "rain", "date", "where", "in", "latitude"],
  run,
};
