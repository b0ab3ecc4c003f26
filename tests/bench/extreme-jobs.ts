import { roomIn } from "../../src/engine/beds/room.ts";
import { PRACTICES } from "../../src/engine/practices/all.ts";
import { readPlan } from "../../src/garden/plan/read.ts";
import { differences } from "../../src/host/web/differences.ts";
import { plainFile, stationOf } from "../garden/station/files.ts";
import { isoDay, QUARRY, tellOf } from "../gardens.ts";

const SOURCE = { garden: "bench", file: "plans/bench/2027.yaml", beside: {} };

/** What no gardener writes, each so many times in a row. */
const PIECES = ["k: [", "- ", "a: b\n", "x,", ": ", "'", "{a: b}, ", "*a "];

/** Reads texts of one piece repeated so many times, one text for each piece. */
export function repeatedJob(times: number): () => unknown {
  const texts = PIECES.map((piece) => piece.repeat(times));
  return () => texts.map((text) => readPlan(text, SOURCE, PRACTICES));
}

/** Reads a station's file of so many years. */
export function stationJob(years: number): () => unknown {
  const [head, ...rows] = plainFile().trim().split("\n").slice(0, 366);
  const common = rows.filter((row) => !row.includes("-02-29"));
  const all = Array.from({ length: years }, (_, y) =>
    common.map((row) => row.replace("2020", `${1901 + y}`)),
  );
  const text = [head, ...all.flat()].join("\n");
  return () => stationOf(text);
}

/** What still fits a bed of the canonical garden, asked on so many days. */
export function roomJob(days: number): () => unknown {
  const { year } = tellOf(QUARRY, { on: "2027-01-01" });
  const on = ["2027-03-01", "2027-05-20", "2027-06-20", "2027-07-20", "2027-08-20"].slice(0, days);
  return () => on.map((day) => roomIn(year, "salad-bed", isoDay(day)));
}

/** Compares texts of so many lines, all of them different. */
export function differencesJob(lines: number): () => unknown {
  const text = (letter: string) =>
    Array.from({ length: lines }, (_, at) => `#${letter}${at}\n`).join("");
  const [mine, theirs] = [text("a"), text("b")];
  return () => differences(mine, theirs);
}
