import { readFileSync, statSync } from "node:fs";
import { basename } from "node:path";
import {
  fileUnitFrom,
  type Problem,
  type RowFilter,
  readWeather,
  readYears,
  type StationRequest,
  sayProblem,
  wrong,
} from "../../app/index.ts";
import { fileSource } from "../weather/file-source.ts";
import { networkSource } from "../weather/network-source.ts";
import type { SourceAnswer, YearsBehind } from "../weather/source.ts";
import { roundedPlace } from "../weather/terms.ts";
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

/** The place of `--at 46.6,-112.0` [degrees]. */
function placeOf(at: string): { readonly latitude: number; readonly longitude: number } {
  const [latitude, longitude, ...more] = at.split(",").map((part) => Number(part.trim() || "x"));
  const isPlace =
    more.length === 0 && Math.abs(latitude ?? 91) <= 90 && Math.abs(longitude ?? 181) <= 180;
  if (!isPlace || latitude === undefined || longitude === undefined)
    throw new WrongUsage(`--at ${at}: latitude and longitude in degrees, such as 46.6,-112.0`);
  return { latitude, longitude };
}

/** The years behind a place, from Open-Meteo's archive, in place of a station's file. */
async function ofPlace(call: Call, at: string): Promise<Exit> {
  rejectExtraWords(0, call);
  const { fetch, now, err } = call.terminal;
  const ports = { fetch, now: now(), contact: null, readWeather, readYears };
  const source = networkSource("Open-Meteo", ports);
  const answer = await source.yearsBehind(roundedPlace({ ...placeOf(at), clock: "UTC" }));
  if (answer.kind === "good") err(`${source.attribution}\n`);
  else if (answer.kind === "failed") err("Open-Meteo's archive could not be read.\n");
  return write(answer, call);
}

function run(call: Call): Exit | Promise<Exit> {
  const { at } = call.options;
  return at === undefined ? ofFile(call) : ofPlace(call, at);
}

function ofFile(call: Call): Exit {
  rejectExtraWords(1, call);
  const { rest, options } = call;
  const [file] = rest;
  if (file === undefined) throw new WrongUsage("which station's file?");
  const given = latitudeOf(options);
  const asked = askedOf(file, options);
  const text = textOf(file);
  if (typeof text !== "string") return fail([text], call);
  const source = fileSource({ text, request: asked, name: basename(file), latitude: given });
  return write(source.yearsBehind(), call);
}

/** The weather file to standard output, what was assumed and left out, or what was wrong, to standard error. */
function write(answer: SourceAnswer<YearsBehind>, { terminal }: Call): Exit {
  if (answer.kind !== "good") {
    terminal.err(`${answer.kind === "failed" ? answer.fault : "nothing new"}\n`);
    return 1;
  }
  for (const line of answer.value.notes) terminal.err(`${line}\n`);
  terminal.out(answer.value.file);
  return 0;
}

/** `site STATION.csv`: a weather file from a station's own days, or from the years behind a place (`--at 46.6,-112.0`), on standard output; what was used, guessed and left out on standard error. */
export const SITE: Command = {
  takes: ["low", "high", "rain", "date", "where", "in", "latitude", "at"],
  run,
};
