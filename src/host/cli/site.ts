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
  yearsTable,
} from "../../app/index.ts";
import { fetchAnswer } from "../weather/fetch-answer.ts";
import { SOURCES, userAgentOf, yearsUrl } from "../weather/sources.ts";
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

/** Years that are asked for of a place. Source: WMO's usual length of a record of normals. */
const YEARS = 30;

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
  const place = placeOf(at);
  const last = new Date(now()).getUTCFullYear() - 1;
  const url = yearsUrl({ ...place, clock: "UTC" }, last - YEARS + 1, last);
  const request = { url, userAgent: userAgentOf(null), knownSince: null };
  const answer = await fetchAnswer(request, { fetch, now: now() });
  const table = answer.kind === "text" ? yearsTable(answer.text, place) : null;
  if (table === null) {
    const why = answer.kind === "failed" ? answer.fault : "not the answer it documents";
    err(`Open-Meteo's archive could not be read: ${why}.\n`);
    return 1;
  }
  err(`${SOURCES["Open-Meteo"].attribution}\n`);
  const file = { file: "Open-Meteo", columns: {}, where: [], unit: "°C" } as const;
  return write(call, table, file, { name: "Open-Meteo", latitude: place.latitude });
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
  return write(call, text, asked, { name: basename(file), latitude: given });
}

/** The weather file to standard output, what was assumed and left out to standard error. */
function write(
  call: Call,
  text: string,
  asked: StationRequest,
  site: Parameters<typeof siteWeather>[2],
): Exit {
  const { terminal } = call;
  const { weather, notes, problems } = siteWeather(text, asked, site);
  for (const line of notes) terminal.err(`${line}\n`);
  if (weather === null) return fail(problems, call);
  terminal.out(weather);
  return 0;
}

/** `site STATION.csv`: a weather file from a station's own days, or from the years behind a place (`--at 46.6,-112.0`), on standard output; what was used, guessed and left out on standard error. */
export const SITE: Command = {
  takes: ["low", "high", "rain", "date", "where", "in", "latitude", "at"],
  run,
};
