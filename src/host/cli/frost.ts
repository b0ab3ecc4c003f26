import { isoOf } from "../../base/days/day.ts";
import type { Measures } from "../../base/quantities/quantity.ts";
import { temperatureFrom } from "../../base/quantities/read.ts";
import { type FrostTonight, frostTonight } from "../../engine/beds/frost-tonight.ts";
import { frostTonightText } from "../../views/events/frost-tonight.ts";
import {
  type Call,
  type Command,
  type Exit,
  load,
  rejectExtraWords,
  today,
  WrongUsage,
  yearOn,
} from "./call.ts";

function run(call: Call): Exit {
  rejectExtraWords(1, call);
  const lowText = call.options.low;
  if (lowText === undefined) throw new WrongUsage(`--low: ${LIKE}`);
  const loaded = load(call);
  if (!loaded) return 1;
  const low = temperatureFrom(lowText, loaded.newest.measures);
  if (low === null) throw new WrongUsage(`--low ${lowText}: ${LIKE}`);
  const report = frostTonight(yearOn(call, loaded), today(call, loaded).day, low.si);
  const { out } = call.terminal;
  if (call.options.json) out(`${JSON.stringify({ ...report, day: isoOf(report.day) }, null, 2)}\n`);
  else out(formatFrostReport(report, loaded.newest.measures));
  return 0;
}

const LIKE = "tonight's low by the forecast, like 29, 29 °F or -2 °C";

function formatFrostReport(report: FrostTonight, measures: Measures): string {
  const { head, sections, foot } = frostTonightText(report, measures);
  const parts = [
    head,
    ...sections.map(({ name, lines }) => [name, ...lines.map((line) => `  ${line}`)]),
    foot,
  ];
  return `${parts
    .filter((lines) => lines.length > 0)
    .map((lines) => lines.join("\n"))
    .join("\n\n")}\n`;
}

/** `frost PLAN --low 29`: bed by bed what to cover, bury, pick or bring in tonight, what to leave alone, and when to uncover. */
export const FROST: Command = { takes: ["low", "on", "json"], run };
