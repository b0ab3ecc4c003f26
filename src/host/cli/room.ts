import { type BedSpace, bedRoom, type Plan, type RoomText } from "../../app/index.ts";
import { isoOf, joinWords, nearest } from "../../base/index.ts";
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
  const { bed: bedName, json } = call.options;
  if (bedName === undefined) throw new WrongUsage("--bed: which bed?");
  const loaded = load(call);
  if (!loaded) return 1;
  const beds = loaded.garden.plans.flatMap((plan) => plan.beds);
  const bed = findBed(beds, bedName);
  const { day } = today(call, loaded);
  const room = bed && bedRoom(yearOn(call, loaded), bed.key, day);
  if (!room) {
    call.terminal.err(`sowbell: ${noBed(beds, bedName)}\n`);
    return 1;
  }
  const text = json ? asJson(room.space) : formatRoomText(room.text);
  call.terminal.out(`${text}\n`);
  return 0;
}

type BedOfPlan = Plan["beds"][number];

const same = (a: string, b: string) => a.trim().toLowerCase() === b.trim().toLowerCase();

const findBed = (beds: readonly BedOfPlan[], bedName: string): BedOfPlan | undefined =>
  beds.findLast(({ name, key }) => same(name, bedName) || same(key, bedName));

function noBed(beds: readonly BedOfPlan[], bedName: string): string {
  const names = [...new Set(beds.map(({ name }) => name))];
  const near = nearest(bedName, names);
  const offered =
    near === null ? `The plan has ${joinWords(names) || "no bed"}.` : `Did you mean ${near}?`;
  return `there is no bed called ${bedName}. ${offered}`;
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

function formatRoomText({ head, sections }: RoomText): string {
  const paragraphs = sections.map(({ name, lines }) =>
    [name, ...lines.flatMap((line) => wrapLine(line))].join("\n"),
  );
  return [head.join("\n"), ...paragraphs].join("\n\n");
}

/** A line broken between words, two spaces in and what goes on four. */
function wrapLine(line: string): readonly string[] {
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
