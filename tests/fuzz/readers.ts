import { readFileSync } from "node:fs";
import { readPlan, readWeather, reportDiary, siteWeather } from "../../src/app/index.ts";
import { dayOrThrow } from "../../src/base/days/day.ts";
import { readArchive } from "../../src/host/backup/read-archive.ts";
import { BadArchive } from "../../src/host/backup/unpack.ts";
import { readEventPath, readFeed } from "../../src/host/links/feeds.ts";
import {
  decodePathPart,
  encodePathPart,
  readSegment,
  writeSegment,
} from "../../src/host/links/segment.ts";
import { planIn } from "../../src/host/web/plan-page.ts";
import { codingFor, heldBy, isNotModified } from "../../src/host/web/validators.ts";
import type { Kind } from "./inputs.ts";

const AT = { garden: "lane", file: "2027.yaml" };
const FIRST = readFileSync(new URL("../../plans/first-steps/2027.yaml", import.meta.url), "utf8");
const TODAY = dayOrThrow(2027, 5, 8);

/** Throws where what was read is half read: a plan beside a problem, or neither; a path of two spellings; and so on. */
function must(holds: boolean, what: string): void {
  if (!holds) throw new Error(`half read: ${what}`);
}

function plan(text: string, beside: Readonly<Record<string, string>> = {}): void {
  const read = readPlan(text, { ...AT, beside });
  const stopped = read.problems.some(({ weight }) => weight === "problem");
  must((read.plan === null) === stopped, "a plan is there exactly where no problem is");
  must(
    read.problems.every(({ at }) => at.line >= 1 && at.column >= 1),
    "every problem has its place",
  );
}

function diary(text: string): void {
  plan(`${FIRST}\ndiary:\n${text}\n`);
  const days = text
    .split("\n")
    .map((line, i) => ({ day: TODAY, text: line, at: { file: "diary", line: i + 1, column: 1 } }));
  const { plan: read } = readPlan(FIRST, AT);
  if (read) reportDiary([{ ...read, diary: days }], TODAY);
}

function path(text: string): void {
  const link = { garden: "lane", role: "helper", person: null, serial: 1 } as const;
  readFeed(link, text);
  readEventPath(text);
  for (const part of text.split("/")) {
    const name = decodePathPart(part);
    must(name === null || encodePathPart(name) === part, "a path has one spelling");
    const read = readSegment("lane", part);
    must(read === null || writeSegment(read) === part, "a link has one spelling");
  }
}

function header(text: string): void {
  codingFor(text);
  isNotModified({ tags: text, since: null }, { etag: '"a"', lastModified: 0, now: 0 });
  isNotModified({ tags: null, since: text }, { etag: '"a"', lastModified: 0, now: 0 });
  heldBy(new Headers({ "if-none-match": text.replaceAll(/[^\x20-\x7e]/g, "") }));
}

function archive(text: string): void {
  try {
    readArchive(Uint8Array.from(Buffer.from(text, "latin1")));
  } catch (error) {
    if (!(error instanceof BadArchive)) throw error;
  }
}

const QUESTION = { latitude: 46.6, longitude: -111.5, clock: "America/Denver", today: TODAY };

/** What reads each kind of input. Throws where a reader throws, or reads half. */
export const READERS: Readonly<Record<Kind, (text: string) => void>> = {
  plan,
  diary,
  station: (text) => {
    const request = { file: "station.csv", columns: {}, where: [], unit: null };
    const read = siteWeather(text, request, { latitude: null, name: "station.csv" });
    must(
      read.weather !== null || read.problems.length > 0,
      "a station without weather has a problem",
    );
  },
  absences: (text) =>
    plan(`${FIRST}\npeople: { Oda: {} }\naway:\n  - Oda, oda.ics\n`, { "oda.ics": text }),
  weather: (text) => {
    for (const source of ["Open-Meteo", "MET Norway"] as const) {
      const { weather, fault } = readWeather(source, text, QUESTION);
      must((weather === null) === (fault !== null), "weather is there exactly where no fault is");
    }
  },
  form: (text) => {
    planIn(new URLSearchParams(text));
  },
  ...{ path, header, archive },
};
