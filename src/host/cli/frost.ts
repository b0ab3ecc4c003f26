import { type FrostTonightText, frostNight } from "../../app/index.ts";
import { isoOf, temperatureFrom } from "../../base/index.ts";
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
  const { day } = today(call, loaded);
  const { report, text } = frostNight(yearOn(call, loaded), day, low.si);
  const { out } = call.terminal;
  if (call.options.json) out(`${JSON.stringify({ ...report, day: isoOf(report.day) }, null, 2)}\n`);
  else out(formatFrostText(text));
  return 0;
}

const LIKE = "tonight's low by the forecast, like 29, 29 °F or -2 °C";

function formatFrostText({ head, sections, foot }: FrostTonightText): string {
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
