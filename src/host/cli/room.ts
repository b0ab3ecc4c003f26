import { isoOf } from "../../base/days/day.ts";
import { type BedSpace, roomIn } from "../../engine/beds/room.ts";
import type { Bed } from "../../garden/model/plan.ts";
import { joinWords, nearest } from "../../garden/plan/nearest.ts";
import { type RoomText, roomText } from "../../views/events/room.ts";
import {
  atMost,
  type Call,
  type Command,
  type Exit,
  load,
  seasonOn,
  today,
  WrongUsage,
} from "./call.ts";

function run(call: Call): Exit {
  atMost(1, call);
  const { bed: said, json } = call.options;
  if (said === undefined) throw new WrongUsage("--bed: which bed?");
  const loaded = load(call);
  if (!loaded) return 1;
  const beds = loaded.garden.plans.flatMap((plan) => plan.beds);
  const bed = named(beds, said);
  const room = bed && roomIn(seasonOn(call, loaded), bed.key, today(call, loaded).day);
  if (!room) {
    call.terminal.err(`sowbell: ${noBed(beds, said)}\n`);
    return 1;
  }
  const text = json ? asJson(room) : written(roomText(room, loaded.newest.measures));
  call.terminal.out(`${text}\n`);
  return 0;
}

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();

const named = (beds: readonly Bed[], said: string): Bed | undefined =>
  beds.findLast(({ name, key }) => same(name, said) || same(key, said));

function noBed(beds: readonly Bed[], said: string): string {
  const names = [...new Set(beds.map(({ name }) => name))];
  const near = nearest(said, names);
  const offered =
    near === null ? `The plan has ${joinWords(names) || "no bed"}.` : `Did you mean ${near}?`;
  return `there is no bed called ${said}. ${offered}`;
}

/** Keys that hold days of the calendar, whatever they stand in. */
const DAYS = ["day", "from", "ends", "gone", "freeFrom", "opens", "warm", "usual", "cold"];

/** The report with its days in ISO 8601. */
function asJson(room: BedSpace): string {
  const asDay = (key: string, value: unknown) =>
    DAYS.includes(key) && typeof value === "number" ? isoOf(value as BedSpace["day"]) : value;
  return JSON.stringify(room, asDay, 2);
}

/** Letters to a line of a terminal. */
const WIDE = 96;

function written({ head, sections }: RoomText): string {
  const told = sections.map(({ name, lines }) =>
    [name, ...lines.flatMap((line) => wrapped(line))].join("\n"),
  );
  return [head.join("\n"), ...told].join("\n\n");
}

/** A line broken between words, two spaces in and what goes on four. */
function wrapped(line: string): readonly string[] {
  const lines: string[] = [];
  let now = "  ";
  for (const word of line.split(/(?<=\S) (?=\S)/)) {
    if (now.trim() !== "" && now.length + word.length + 1 > WIDE) {
      lines.push(now);
      now = "    ";
    }
    now += now.trim() === "" ? word : ` ${word}`;
  }
  return [...lines, now];
}

/** `room PLAN --bed NAME`: what can still be started in a bed that day, what is a gamble and what is too late. */
export const ROOM: Command = { takes: ["bed", "on", "json"], run };
